package stokewell.rig;

import static stokewell.rig.Dimension.AIR_CHANGE;
import static stokewell.rig.Dimension.ANGLE;
import static stokewell.rig.Dimension.AREA;
import static stokewell.rig.Dimension.CLOCK;
import static stokewell.rig.Dimension.COUNT;
import static stokewell.rig.Dimension.HEAT_CAPACITY;
import static stokewell.rig.Dimension.LENGTH;
import static stokewell.rig.Dimension.POWER;
import static stokewell.rig.Dimension.SHARE;
import static stokewell.rig.Dimension.THERMAL_RESISTANCE;
import static stokewell.rig.Dimension.TIME;
import static stokewell.rig.Dimension.TRANSMITTANCE;

import java.util.List;

/** The heated room and what holds it together. */
public record Room(
        @Entry(is = LENGTH, low = 1, high = 100, says = "Inside length.")
        double length,

        @Entry(is = LENGTH, low = 1, high = 100, says = "Inside width.")
        double width,

        @Entry(is = LENGTH, low = 1.5, high = 15, says = "Mean inside height.")
        double height,

        @Entry(says = "The walls, windows and doors cut out.")
        Covering walls,

        @Entry(says = "The roof or ceiling to the cold.") Covering roof,
        @Entry(orElse = "slab", says = "What you stand on.") Floor floor,
        @Entry(orElse = Entry.ABSENT, says = "Windows.") List<Window> windows,
        @Entry(orElse = Entry.ABSENT, says = "Doors.") List<Door> doors,
        @Entry(orElse = "{}", says = "Air that leaks in.") Leakage leakage,

        @Entry(
                is = HEAT_CAPACITY,
                low = 1e4,
                high = 1e8,
                orElse = "600 Wh/K",
                says = "Heat held by tools, timber and benches for each degree.")
        double contents,

        @Entry(orElse = "{}", says = "People and machines that warm it.")
        Gains gains) {

    public Room {
        Entries.check(Room.class, "room", length, width, height, walls, roof, floor, windows, doors, leakage, contents);
        windows = List.copyOf(windows);
        doors = List.copyOf(doors);
        double openings = windows.stream().mapToDouble(Window::area).sum()
                + doors.stream().mapToDouble(Door::area).sum();
        if (openings > 0.9 * (grossWallArea(length, width, height) + length * width)) {
            throw new RigFault("room", "windows", "windows and doors are larger than the walls", "check their areas");
        }
    }

    private static double grossWallArea(double length, double width, double height) {
        return 2 * (length + width) * height;
    }

    /** Inside floor area, m2. */
    public double floorArea() {
        return length * width;
    }

    /** Inside air volume, m3. */
    public double volume() {
        return length * width * height;
    }

    /** Wall area with windows and doors cut out, m2; never below a tenth of the gross area. */
    public double wallArea() {
        double gross = grossWallArea(length, width, height);
        double cut = windows.stream()
                        .filter(w -> w.tilt() > 0.7)
                        .mapToDouble(Window::area)
                        .sum()
                + doors.stream().mapToDouble(Door::area).sum();
        return Math.max(0.1 * gross, gross - cut);
    }

    /** Roof area with its windows cut out, m2. */
    public double roofArea() {
        double cut = windows.stream()
                .filter(w -> w.tilt() <= 0.7)
                .mapToDouble(Window::area)
                .sum();
        return Math.max(0.1 * floorArea(), floorArea() * roof.areaFactor() - cut);
    }

    /** Layers from the room outwards, with the wood that bridges the insulation. */
    public record Covering(
            @Entry(says = "Layers from the room outwards, such as 12 mm plywood, 90 mm mineral wool, 20 mm softwood.")
            List<Layer> layers,

            @Entry(is = SHARE, low = 0, high = 0.6, orElse = "12 %", says = "Share of the area that is framing timber.")
            double framing,

            @Entry(is = SHARE, low = 0, high = 1, orElse = "60 %", says = "Share of the sun that the outside takes up.")
            double absorptance,

            @Entry(
                    is = Dimension.NONE,
                    low = 1,
                    high = 2,
                    orElse = "1",
                    says = "Area over plan area, for a sloped roof.")
            double areaFactor,

            @Entry(
                    is = Dimension.NONE,
                    low = 0.2,
                    high = 6,
                    orElse = "1",
                    says = "Real loss over the reckoned loss: gaps, damp, nails; a fit to your readings tells it.")
            double realLoss) {

        public Covering {
            layers = List.copyOf(layers);
            Entries.check(Covering.class, "covering", layers, framing, absorptance, areaFactor, realLoss);
            if (layers.isEmpty()) throw new RigFault("covering", "layers", "no layer", "name at least one layer");
        }

        /** Loses what is reckoned. */
        public Covering(List<Layer> layers, double framing, double absorptance, double areaFactor) {
            this(layers, framing, absorptance, areaFactor, 1);
        }
    }

    /** What the room stands on. */
    public sealed interface Floor permits Floor.Slab, Floor.Boards {

        /** Concrete on the ground. */
        record Slab(
                @Entry(is = LENGTH, low = 0.03, high = 0.6, orElse = "100 mm", says = "Concrete thickness.")
                double thickness,

                @Entry(
                        is = THERMAL_RESISTANCE,
                        low = 0,
                        high = 10,
                        orElse = "0 m2.K/W",
                        says = "Insulation under the whole slab.")
                double under,

                @Entry(
                        is = THERMAL_RESISTANCE,
                        low = 0,
                        high = 10,
                        orElse = "0 m2.K/W",
                        says = "Insulation round its edge.")
                double edge,

                @Entry(is = LENGTH, low = 0, high = 2, orElse = "0.6 m", says = "How deep the edge insulation reaches.")
                double edgeDepth,

                @Entry(orElse = "clay", says = "The ground below: clay, sand or rock.")
                Soil soil,

                @Entry(
                        is = Dimension.NONE,
                        low = 0.2,
                        high = 6,
                        orElse = "1",
                        says =
                                "Real loss over the reckoned loss: wet ground, a bare edge; a fit to your readings tells it.")
                double realLoss)
                implements Floor {

            public Slab {
                Entries.check(Slab.class, "floor", thickness, under, edge, edgeDepth, soil, realLoss);
            }

            /** Loses what is reckoned. */
            public Slab(double thickness, double under, double edge, double edgeDepth, Soil soil) {
                this(thickness, under, edge, edgeDepth, soil, 1);
            }
        }

        /** Boards over a cold crawl space. */
        record Boards(
                @Entry(says = "Layers from the room downwards.")
                List<Layer> layers) implements Floor {

            public Boards {
                layers = List.copyOf(layers);
                if (layers.isEmpty()) throw new RigFault("floor", "layers", "no layer", "name at least one layer");
            }
        }
    }

    /** The ground's kind, with the three pairs of values that ISO 13370 gives: conductivity W/(m K), capacity J/(m3 K). */
    public enum Soil {
        CLAY(1.5, 3.0e6),
        SAND(2.0, 2.0e6),
        ROCK(3.5, 2.0e6);

        public final double conductivity;
        public final double capacity;

        Soil(double conductivity, double capacity) {
            this.conductivity = conductivity;
            this.capacity = capacity;
        }
    }

    /** A window. */
    public record Window(
            @Entry(is = AREA, low = 0.01, high = 200, says = "Whole opening.")
            double area,

            @Entry(
                    is = TRANSMITTANCE,
                    low = 0.4,
                    high = 8,
                    orElse = "2.8 W/m2.K",
                    says = "Heat loss of glass and frame.")
            double u,

            @Entry(is = SHARE, low = 0, high = 0.95, orElse = "65 %", says = "Share of the sun that gets in.")
            double sunShare,

            @Entry(is = ANGLE, low = -6.3, high = 6.3, orElse = "south", says = "Which way it looks.")
            double facing,

            @Entry(
                    is = ANGLE,
                    low = 0,
                    high = 1.571,
                    orElse = "90 deg",
                    says = "90 degrees stands upright, 0 lies flat.")
            double tilt) {

        public Window {
            Entries.check(Window.class, "window", area, u, sunShare, facing, tilt);
        }
    }

    /** A door, and when it stands open. */
    public record Door(
            @Entry(is = AREA, low = 0.1, high = 60, says = "Whole opening.")
            double area,

            @Entry(is = TRANSMITTANCE, low = 0.2, high = 8, orElse = "2.5 W/m2.K", says = "Heat loss when shut.")
            double u,

            @Entry(orElse = Entry.ABSENT, says = "When it stands open each day.")
            List<Opening> opens) {

        public Door {
            Entries.check(Door.class, "door", area, u);
            opens = List.copyOf(opens);
        }
    }

    /** A door that stands open for a while each day. */
    public record Opening(
            @Entry(is = CLOCK, low = 0, high = 86400, says = "From when.")
            double at,

            @Entry(is = TIME, low = 1, high = 86400, orElse = "5 min", says = "For how long.")
            double lasting) {

        public Opening {
            Entries.check(Opening.class, "opening", at, lasting);
        }
    }

    /** How leaky the room is. */
    public record Leakage(
            @Entry(
                    is = AIR_CHANGE,
                    low = 0,
                    high = 0.03,
                    orElse = "15 1/h",
                    says = "Air changes an hour at 50 Pa: 5 tight, 15 an ordinary shed, 40 a board barn.")
            double at50Pa,

            @Entry(orElse = "suburb", says = "Shelter from the wind: open, farm, suburb, sheltered or walled.")
            Shelter shelter) {

        public Leakage {
            Entries.check(Leakage.class, "leakage", at50Pa, shelter);
        }
    }

    /** Shelter from the wind, from open ground to walled in. */
    public enum Shelter {
        OPEN,
        FARM,
        SUBURB,
        SHELTERED,
        WALLED
    }

    /** Heat from people and machines at work. */
    public record Gains(
            @Entry(is = COUNT, low = 0, high = 100, orElse = "1", says = "People at work.")
            int people,

            @Entry(
                    is = POWER,
                    low = 0,
                    high = 50000,
                    orElse = "200 W",
                    says = "Mean power of lights and machines at work.")
            double machines,

            @Entry(is = CLOCK, low = 0, high = 86400, orElse = "8:00", says = "Work begins.")
            double from,

            @Entry(is = CLOCK, low = 0, high = 86400, orElse = "17:00", says = "Work ends.")
            double until) {

        public Gains {
            Entries.check(Gains.class, "gains", people, machines, from, until);
        }

        /** Heat given at work, W: 120 W a person at light work (common practice, no source) and the machines. */
        public double power() {
            return 120 * people + machines;
        }
    }
}
