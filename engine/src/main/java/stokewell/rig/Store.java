package stokewell.rig;

import static stokewell.rig.Dimension.COUNT;
import static stokewell.rig.Dimension.LENGTH;
import static stokewell.rig.Dimension.NONE;
import static stokewell.rig.Dimension.SHARE;

import java.util.List;

/** The insulated store of hot water. */
public record Store(
        @Entry(says = "round, square or lying, with its inside sizes.")
        Shape shape,

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

    public Store {
        Entries.check(
                Store.class,
                "store",
                shape,
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
    }

    /** The shape of the water. */
    public sealed interface Shape permits Shape.Round, Shape.Square, Shape.Lying {

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

            @Entry(is = LENGTH, low = 0.006, high = 0.1, orElse = "20 mm", says = "Bore of the tube.")
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
