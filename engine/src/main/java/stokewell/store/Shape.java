package stokewell.store;

import java.util.ArrayList;
import java.util.List;

/** The inside of a store. Heights z run from 0 at the inside bottom; beyond the ends they count as the ends. */
public sealed interface Shape {

    /** Inside height, m. */
    double height();

    /** Surface of a level cut, m²: free water, or what two slices share. */
    double areaAt(double z);

    /** Volume below a level, m³. */
    double volumeBelow(double z);

    /** Side wall below a level, m²; the heads of a lying tank are side wall, flat tops and bottoms are not. */
    double sideBelow(double z);

    /** First moment of the volume below a level about the bottom, m⁴. */
    double momentBelow(double z);

    /** Flat top, m²; 0 for a lying tank. */
    double topArea();

    /** Flat bottom, m²; 0 for a lying tank. */
    double bottomArea();

    /** Volume of the metal or board of a closed shell, m³, exact for outward thickness. */
    double wallVolume(double thickness);

    /** Volume brim-full, m³. */
    default double volume() {
        return volumeBelow(height());
    }

    /** The whole inner surface, m². */
    default double surface() {
        return sideBelow(height()) + topArea() + bottomArea();
    }

    /**
     * Mass of the shell, kg.
     *
     * @param thickness m
     * @param density kg/m³
     */
    default double wallMass(double thickness, double density) {
        return wallVolume(thickness) * density;
    }

    /** Level at which the store holds that volume, m; 0 below nothing, the height above brim-full. */
    default double level(double volume) {
        double low = 0;
        double high = height();
        if (volume >= volume()) {
            return high;
        }
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (volumeBelow(middle) < volume) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** The full store cut into slices of equal height, from the bottom. */
    default List<Slice> slices(int count) {
        return slices(count, height());
    }

    /** The store filled to a level, cut into slices of equal height, from the bottom. */
    default List<Slice> slices(int count, double level) {
        if (count < 1 || !(level > 0 && level <= height())) {
            throw new IllegalArgumentException(
                    count + " slices up to " + level + " m in a store " + height() + " m high");
        }
        List<Slice> slices = new ArrayList<>(count);
        double bottom = 0;
        for (int i = 0; i < count; i++) {
            double top = level * (i + 1) / count;
            double volume = volumeBelow(top) - volumeBelow(bottom);
            double centroid = (momentBelow(top) - momentBelow(bottom)) / volume;
            slices.add(new Slice(bottom, top, volume, sideBelow(top) - sideBelow(bottom), centroid));
            bottom = top;
        }
        return List.copyOf(slices);
    }

    /** An upright cylinder. */
    record Round(double diameter, double height) implements Shape {

        public Round {
            positive("round store", diameter, height);
        }

        @Override
        public double areaAt(double z) {
            return Math.PI / 4 * diameter * diameter;
        }

        @Override
        public double volumeBelow(double z) {
            return areaAt(z) * within(z, height);
        }

        @Override
        public double sideBelow(double z) {
            return Math.PI * diameter * within(z, height);
        }

        @Override
        public double momentBelow(double z) {
            return volumeBelow(z) * within(z, height) / 2;
        }

        @Override
        public double topArea() {
            return areaAt(height);
        }

        @Override
        public double bottomArea() {
            return areaAt(0);
        }

        @Override
        public double wallVolume(double thickness) {
            return cylinderShell(diameter, height, thickness);
        }
    }

    /** A box. */
    record Square(double width, double length, double height) implements Shape {

        public Square {
            positive("square store", Math.min(width, length), height);
        }

        @Override
        public double areaAt(double z) {
            return width * length;
        }

        @Override
        public double volumeBelow(double z) {
            return areaAt(z) * within(z, height);
        }

        @Override
        public double sideBelow(double z) {
            return 2 * (width + length) * within(z, height);
        }

        @Override
        public double momentBelow(double z) {
            return volumeBelow(z) * within(z, height) / 2;
        }

        @Override
        public double topArea() {
            return areaAt(height);
        }

        @Override
        public double bottomArea() {
            return areaAt(0);
        }

        @Override
        public double wallVolume(double thickness) {
            double t = 2 * thickness;
            return (width + t) * (length + t) * (height + t) - volume();
        }
    }

    /** A cylinder on its side with flat heads; its level cuts are segments of a circle, exactly. */
    record Lying(double diameter, double length) implements Shape {

        public Lying {
            positive("lying store", diameter, length);
        }

        @Override
        public double height() {
            return diameter;
        }

        @Override
        public double areaAt(double z) {
            double y = within(z, diameter);
            return 2 * Math.sqrt(y * (diameter - y)) * length;
        }

        @Override
        public double volumeBelow(double z) {
            return segment(within(z, diameter)) * length;
        }

        @Override
        public double sideBelow(double z) {
            double y = within(z, diameter);
            return diameter * halfAngle(y) * length + 2 * segment(y);
        }

        @Override
        public double momentBelow(double z) {
            double y = within(z, diameter);
            double half = Math.sqrt(y * (diameter - y));
            return (segment(y) * diameter / 2 - 2.0 / 3 * half * half * half) * length;
        }

        @Override
        public double topArea() {
            return 0;
        }

        @Override
        public double bottomArea() {
            return 0;
        }

        @Override
        public double wallVolume(double thickness) {
            return cylinderShell(diameter, length, thickness);
        }

        private double halfAngle(double y) {
            return 2 * Math.atan2(Math.sqrt(y), Math.sqrt(diameter - y));
        }

        private double segment(double y) {
            double r = diameter / 2;
            return r * r * halfAngle(y) - (r - y) * Math.sqrt(y * (diameter - y));
        }
    }

    private static double within(double z, double height) {
        return Math.max(0, Math.min(height, z));
    }

    private static double cylinderShell(double diameter, double length, double thickness) {
        double d = diameter + 2 * thickness;
        return Math.PI / 4 * (d * d * (length + 2 * thickness) - diameter * diameter * length);
    }

    private static void positive(String what, double across, double along) {
        if (!(across > 0 && along > 0)) {
            throw new IllegalArgumentException("a " + what + " of " + across + " m by " + along + " m holds nothing");
        }
    }
}
