package stokewell.check;

import java.util.List;
import java.util.function.UnaryOperator;
import stokewell.run.Simulation;

/** What stands between a fault and its end: protections of the rig, and what a hand can still do. */
final class Guards {

    /** A person who is there shuts the air so soon, s: common practice, no source. */
    private static final double HAND = 2 * Stage.MINUTE;
    /** Drawing a fire takes so long to begin, s, and gets so much of it: common practice, no source. */
    private static final double DRAWN_AFTER = 5 * Stage.MINUTE;

    private static final double DRAWN = 0.8;

    /** What the name of a hand on the air begins with. */
    static final String AIR_SHUT = "air shut";

    private Guards() {}

    /** A protection: the same drill without it and with it. */
    static Drill.Guard of(String name, Watch without, Watch with) {
        return new Drill.Guard(
                name,
                without.firstBoil(),
                with.firstBoil(),
                Math.max(0, without.waterLost - with.waterLost),
                without.hottestWater,
                with.hottestWater,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                without.course(),
                false);
    }

    /**
     * A way out for pressure: it does not keep the water from boiling, but from bursting what holds it.
     *
     * @param without most pressure over the air's without it, Pa; infinite where nothing holds it
     * @param holds   the same with it, Pa
     */
    static Drill.Guard outlet(String name, Watch with, double without, double holds) {
        return new Drill.Guard(
                name,
                with.firstBoil(),
                with.firstBoil(),
                0,
                with.hottestWater,
                with.hottestWater,
                without,
                holds,
                Double.NaN,
                with.course(),
                false);
    }

    /** What a hand buys where the water boils: the air shut, and the fire drawn out. Never water on it. */
    static void hands(Stage stage, List<Drill.Guard> guards, Watch with, UnaryOperator<Simulation> fault) {
        if (with.firstBoil() == Double.POSITIVE_INFINITY) return;
        guards.add(hand(AIR_SHUT + " after 2 min", with, shut(stage, fault, HAND, 0)));
        guards.add(hand("fire drawn out after 5 min", with, shut(stage, fault, DRAWN_AFTER, DRAWN)));
    }

    private static Watch shut(Stage stage, UnaryOperator<Simulation> fault, double after, double drawn) {
        Simulation burning = fault.apply(stage.fork(stage.unfed()));
        Follow follow = Follow.of(stage, burning, 8 * Stage.HOUR).until(after);
        Simulation shut = stage.simulation(stage.shut(), stage.weather);
        shut.take(burning.moment(), burning.time());
        if (drawn > 0) Stage.draw(shut, drawn);
        return follow.shutNow().onto(fault.apply(shut)).out(true);
    }

    private static Drill.Guard hand(String name, Watch without, Watch with) {
        return new Drill.Guard(
                name,
                without.firstBoil(),
                with.firstBoil(),
                Math.max(0, without.waterLost - with.waterLost),
                without.hottestWater,
                with.hottestWater,
                Double.NaN,
                Double.NaN,
                with.energyAfterShut / Stage.HOUR,
                with.course(),
                true);
    }
}
