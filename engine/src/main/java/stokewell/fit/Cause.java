package stokewell.fit;

import java.util.ArrayList;
import java.util.List;
import stokewell.rig.Rig;

/** One thing that may have changed in a shop. */
public sealed interface Cause {

    /** Short, for programs. */
    String name();

    /** Sizes that it can have. */
    Sizes sizes();

    /** Standard deviation of the size of such a change: common practice, no source. */
    default double spread() {
        return sizes().spread();
    }

    /** Size with which its effect is tried. */
    default double step() {
        return sizes().step();
    }

    /** A size inside what can be. */
    default double held(double size) {
        return Math.max(sizes().low(), Math.min(sizes().high(), size));
    }

    /**
     * A smaller one is not told, however surely it shows: over a month the errors of a model alone look like a change of a
     * tenth in something.
     */
    default double least() {
        return sizes().least();
    }

    /** How large a change is, how large a one is tried, its ends, and the least that is told. */
    record Sizes(double spread, double step, double low, double high, double least) {}

    /** A number of the rig, or the heat of the wood, times e to the size. */
    record Turned(Knob knob) implements Cause {
        private static final Sizes SIZES = new Sizes(0.7, 0.2, -2.5, 2.5, 0.2);
        // a tenth of the wood is a change of moisture that a person feels
        private static final Sizes WOOD = new Sizes(0.7, 0.2, -2.5, 2.5, 0.08);

        @Override
        public String name() {
            return knob.name().toLowerCase(java.util.Locale.ROOT);
        }

        @Override
        public Sizes sizes() {
            return knob == Knob.WOOD ? WOOD : SIZES;
        }
    }

    /** A sensor that hangs partly in the room's air; the size is the share of the way from its place to the room. */
    record Loose(Spot spot) implements Cause {
        private static final Sizes SIZES = new Sizes(0.5, 0.2, -0.3, 0.9, 0.08);

        @Override
        public String name() {
            return spot.words + " sensor loose";
        }

        @Override
        public Sizes sizes() {
            return SIZES;
        }
    }

    /** A sensor that reads so much too high, K. */
    record Drifted(Spot spot) implements Cause {
        private static final Sizes SIZES = new Sizes(3, 1, -30, 30, 0.7);

        @Override
        public String name() {
            return spot.words + " sensor shifted";
        }

        @Override
        public Sizes sizes() {
            return SIZES;
        }
    }

    /** What can change in a rig, with sensors at some places. */
    static List<Cause> of(Rig rig, List<Spot> spots) {
        List<Cause> all = new ArrayList<>();
        List<Knob> has = Knob.of(rig);
        for (Knob k : List.of(
                Knob.WOOD, Knob.BURN, Knob.PICKUP, Knob.PUMP, Knob.EMITTER, Knob.JACKET, Knob.BASE, Knob.LEAKAGE)) {
            if (has.contains(k)) all.add(new Turned(k));
        }
        for (Spot s : spots) {
            if (s != Spot.ROOM && spots.contains(Spot.ROOM)) all.add(new Loose(s));
            if (s == Spot.ROOM) all.add(new Drifted(s));
        }
        return all;
    }
}
