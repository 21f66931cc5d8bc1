package stokewell.fit;

import java.util.ArrayList;
import java.util.List;
import stokewell.rig.Rig;

/** One thing that may have changed in a shop. */
public sealed interface Cause {

    /** Short, for programs. */
    String name();

    /** Standard deviation of the size of such a change: common practice, no source. */
    double spread();

    /** Size with which its effect is tried. */
    double step();

    /** A size inside what can be. */
    double held(double size);

    /** A number of the rig, or the heat of the wood, times e to the size. */
    record Turned(Knob knob) implements Cause {
        @Override
        public String name() {
            return knob.name().toLowerCase(java.util.Locale.ROOT);
        }

        @Override
        public double spread() {
            return 0.7;
        }

        @Override
        public double step() {
            return 0.2;
        }

        @Override
        public double held(double size) {
            return Math.max(-2.5, Math.min(2.5, size));
        }
    }

    /** A sensor that hangs partly in the room's air; the size is the share of the way from its place to the room. */
    record Loose(Spot spot) implements Cause {
        @Override
        public String name() {
            return spot.words + " sensor loose";
        }

        @Override
        public double spread() {
            return 0.5;
        }

        @Override
        public double step() {
            return 0.2;
        }

        @Override
        public double held(double size) {
            return Math.max(-0.3, Math.min(0.9, size));
        }
    }

    /** A sensor that reads so much too high, K. */
    record Drifted(Spot spot) implements Cause {
        @Override
        public String name() {
            return spot.words + " sensor shifted";
        }

        @Override
        public double spread() {
            return 3;
        }

        @Override
        public double step() {
            return 1;
        }

        @Override
        public double held(double size) {
            return Math.max(-30, Math.min(30, size));
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
