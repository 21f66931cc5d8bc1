package stokewell.rig;

import static stokewell.rig.Dimension.CLOCK;
import static stokewell.rig.Dimension.MASS;
import static stokewell.rig.Dimension.TEMPERATURE;

import java.util.List;

/** What the person at the stove does. */
public sealed interface Habit permits Habit.Clock, Habit.Rule {

    /** Store top above which no load is laid on, K; NaN: none. */
    double skipAbove();

    /** The warmest room that can be asked for, K: no room is warmer. */
    double WARMEST = 400;

    /** Room above which no load is laid on, K. */
    double skipRoomAbove();

    /** Loads at fixed hours, every day. */
    record Clock(
            @Entry(says = "Hours and weights.") List<Load> loads,

            @Entry(
                    is = TEMPERATURE,
                    low = 280.15,
                    high = 400.15,
                    orElse = Entry.ABSENT,
                    says = "Skip a load when the store's top is hotter than this.")
            double skipAbove,

            @Entry(
                    is = TEMPERATURE,
                    low = 280.15,
                    high = 400.15,
                    orElse = "30 C",
                    says = "Skip a load when the room is warmer than this.")
            double skipRoomAbove)
            implements Habit {

        public Clock {
            loads = List.copyOf(loads);
            Entries.check(Clock.class, "habit", loads, skipAbove, skipRoomAbove);
        }

        /** Loads whatever the room is at. */
        public Clock(List<Load> loads, double skipAbove) {
            this(loads, skipAbove, WARMEST);
        }

        /** Every load so many times as heavy. */
        public Clock times(double factor) {
            List<Load> other =
                    loads.stream().map(l -> new Load(l.at(), factor * l.mass())).toList();
            return new Clock(other, skipAbove, skipRoomAbove);
        }

        /** No load is skipped. */
        public Clock unskipped() {
            return new Clock(loads, Double.NaN);
        }
    }

    /** Loads whenever the stove falls below a temperature, between two hours. */
    record Rule(
            @Entry(is = MASS, low = 0.1, high = 300, says = "Weight of one load.")
            double mass,

            @Entry(
                    is = TEMPERATURE,
                    low = 300.15,
                    high = 700.15,
                    orElse = "150 C",
                    says = "Load when the stove body falls below.")
            double whenBelow,

            @Entry(is = CLOCK, low = 0, high = 86400, orElse = "8:00", says = "First load of the day.")
            double from,

            @Entry(is = CLOCK, low = 0, high = 86400, orElse = "17:00", says = "Last load of the day.")
            double until,

            @Entry(
                    is = TEMPERATURE,
                    low = 280.15,
                    high = 400.15,
                    orElse = Entry.ABSENT,
                    says = "Do not load when the store's top is hotter than this.")
            double skipAbove,

            @Entry(
                    is = TEMPERATURE,
                    low = 280.15,
                    high = 400.15,
                    orElse = "30 C",
                    says = "Do not load when the room is warmer than this.")
            double skipRoomAbove)
            implements Habit {

        public Rule {
            Entries.check(Rule.class, "habit", mass, whenBelow, from, until, skipAbove, skipRoomAbove);
        }

        /** Loads whatever the room is at. */
        public Rule(double mass, double whenBelow, double from, double until, double skipAbove) {
            this(mass, whenBelow, from, until, skipAbove, WARMEST);
        }
    }

    /** One load of wood. */
    record Load(
            @Entry(is = CLOCK, low = 0, high = 86400, says = "When.")
            double at,

            @Entry(is = MASS, low = 0.05, high = 300, says = "Weight as it goes in, water and all.")
            double mass) {

        public Load {
            Entries.check(Load.class, "load", at, mass);
        }
    }
}
