package stokewell.rig;

import static stokewell.rig.Dimension.COUNT;
import static stokewell.rig.Dimension.LENGTH;
import static stokewell.rig.Dimension.NONE;
import static stokewell.rig.Dimension.SHARE;
import static stokewell.rig.Dimension.VOLUME;

import java.util.List;

/** The insulated store of hot water. */
public record Store(
        @Entry(
                orElse = Entry.ABSENT,
                says =
                        "round, square or lying, with its inside sizes. If only the volume is said: round, twice as high as"
                                + " wide.")
        Shape shape,

        @Entry(
                is = VOLUME,
                low = 0.01,
                high = 100,
                orElse = Entry.ABSENT,
                says = "Water in it, if not by the sizes of its shape; the shape then keeps its proportions.")
        double volume,

        @Entry(is = COUNT, low = 2, high = 60, orElse = "12", says = "Layers that the water is reckoned in.")
        int nodes,

        @Entry(orElse = "4 mm steel", says = "The tank's wall.")
        Layer wall,

        @Entry(orElse = "100 mm mineral wool", says = "Insulation round its sides.")
        Layer jacket,

        @Entry(orElse = "100 mm mineral wool", says = "Insulation over its top.")
        Layer lid,

        @Entry(orElse = "50 mm XPS", says = "What is under it: insulation, or 0 mm for none.")
        Layer base,

        @Entry(orElse = "floor", says = "What that stands on: floor, blocks (air below) or earth.")
        Standing standing,

        @Entry(
                is = NONE,
                low = 0.3,
                high = 6,
                orElse = "1.5",
                says = "Real loss over the reckoned loss: stubs, legs, lid, damp. 1.5 to 3 on home-built ones.")
        double realLoss,

        @Entry(orElse = "sealed", says = "Its cover: sealed, loose, foam (floating) or open.")
        Cover cover,

        @Entry(is = LENGTH, low = -3, high = 6, orElse = "0.1 m", says = "Height of its inside bottom above the floor.")
        double elevation,

        @Entry(
                is = SHARE,
                low = 0,
                high = 1,
                orElse = "95 %",
                says = "Height of the hot inlet, as a share of the water.")
        double supplyPort,

        @Entry(
                is = SHARE,
                low = 0,
                high = 1,
                orElse = "5 %",
                says = "Height of the cool outlet, as a share of the water.")
        double returnPort,

        @Entry(orElse = Entry.ABSENT, says = "A coil in the store that keeps the loop's water apart.")
        Coil coil) {

    /** The volume said is taken up into the shape: {@link #volume} is absent ({@code NaN}) in every store. */
    public Store {
        if (shape == null && Double.isNaN(volume)) {
            throw new RigFault("store", "shape", "is missing, and its volume too", "say one of them");
        }
        if (shape == null) shape = new Shape.Round(1, 2);
        Entries.check(
                Store.class,
                "store",
                shape,
                volume,
                nodes,
                wall,
                jacket,
                lid,
                base,
                standing,
                realLoss,
                cover,
                elevation,
                supplyPort,
                returnPort);
        if (!Double.isNaN(volume)) {
            shape = shape.scaled(Math.cbrt(volume / shape.content()));
            volume = Double.NaN;
        }
    }

    /** A store whose sizes are those of its shape. */
    public Store(
            Shape shape,
            int nodes,
            Layer wall,
            Layer jacket,
            Layer lid,
            Layer base,
            Standing standing,
            double realLoss,
            Cover cover,
            double elevation,
            double supplyPort,
            double returnPort,
            Coil coil) {
        this(
                shape,
                Double.NaN,
                nodes,
                wall,
                jacket,
                lid,
                base,
                standing,
                realLoss,
                cover,
                elevation,
                supplyPort,
                returnPort,
                coil);
    }

    /** The shape of the water. */
    public sealed interface Shape permits Shape.Round, Shape.Square, Shape.Lying {

        /** What it holds, m³. */
        double content();

        /** The same shape with every size multiplied by {@code factor}. */
        Shape scaled(double factor);

        /** A standing cylinder. */
        record Round(
                @Entry(is = LENGTH, low = 0.1, high = 10, says = "Inside diameter.")
                double diameter,

                @Entry(is = LENGTH, low = 0.1, high = 10, says = "Height of the water.")
                double height)
                implements Shape {

            public Round {
                Entries.check(Round.class, "store.shape", diameter, height);
            }

            @Override
            public double content() {
                return Math.PI / 4 * diameter * diameter * height;
            }

            @Override
            public Round scaled(double factor) {
                return new Round(diameter * factor, height * factor);
            }
        }

        /** A box. */
        record Square(
                @Entry(is = LENGTH, low = 0.1, high = 10, says = "Inside width.")
                double width,

                @Entry(is = LENGTH, low = 0.1, high = 20, says = "Inside length.")
                double length,

                @Entry(is = LENGTH, low = 0.1, high = 10, says = "Height of the water.")
                double height)
                implements Shape {

            public Square {
                Entries.check(Square.class, "store.shape", width, length, height);
            }

            @Override
            public double content() {
                return width * length * height;
            }

            @Override
            public Square scaled(double factor) {
                return new Square(width * factor, length * factor, height * factor);
            }
        }

        /** A cylinder lying on its side, full. */
        record Lying(
                @Entry(is = LENGTH, low = 0.1, high = 6, says = "Inside diameter.")
                double diameter,

                @Entry(is = LENGTH, low = 0.1, high = 20, says = "Inside length.")
                double length)
                implements Shape {

            public Lying {
                Entries.check(Lying.class, "store.shape", diameter, length);
            }

            @Override
            public double content() {
                return Math.PI / 4 * diameter * diameter * length;
            }

            @Override
            public Lying scaled(double factor) {
                return new Lying(diameter * factor, length * factor);
            }
        }
    }

    /** What the store stands on. */
    public enum Standing {
        FLOOR,
        BLOCKS,
        EARTH
    }

    /** How the water's surface is covered. */
    public enum Cover {
        SEALED,
        LOOSE,
        FOAM,
        OPEN
    }

    /** A tube coil in the store. */
    public record Coil(
            @Entry(is = LENGTH, low = 1, high = 200, says = "Length of tube.")
            double length,

            @Entry(is = LENGTH, low = 0.006, high = 0.1, orElse = "20 mm", pipe = true, says = "Bore of the tube.")
            double bore,

            @Entry(is = SHARE, low = 0, high = 1, orElse = "10 %", says = "Height of its bottom turn.")
            double bottom,

            @Entry(is = SHARE, low = 0, high = 1, orElse = "90 %", says = "Height of its top turn.")
            double top) {

        public Coil {
            Entries.check(Coil.class, "coil", length, bore, bottom, top);
            if (bottom >= top)
                throw new RigFault("coil", "bottom", "the bottom turn is above the top one", "swap them");
        }
    }

    /** All insulation entries, for listing. */
    public List<Layer> insulation() {
        return List.of(jacket, lid, base);
    }
}
