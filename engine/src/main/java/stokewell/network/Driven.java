package stokewell.network;

import java.util.List;
import stokewell.balance.Gated;
import stokewell.balance.Supply;
import stokewell.control.Latch;
import stokewell.loop.Circuit;
import stokewell.loop.SealedLoop;
import stokewell.rig.Switch;

/**
 * Something that a switch drives: the loop's pump, or an emitter with its fan and pump.
 *
 * @param name      pump, or the emitter's
 * @param circuit   whose pump it is, or null
 * @param blown     what its fan blows past, or null
 * @param motor     its electric power as heat in the room
 * @param watts     that power when running
 * @param allow     latches that must all call
 * @param highLimit latch that calls over everything, or null
 * @param hours     span of the day in which it may run, or null
 * @param always    runs with no latch at all: false where nothing drives it
 * @param relief    the closed loop whose relief valve this is, or null: no motor, and nothing that a power cut stops
 */
public record Driven(
        String name,
        Circuit circuit,
        Gated blown,
        Supply motor,
        double watts,
        List<Latch> allow,
        Latch highLimit,
        Switch.Hours hours,
        boolean always,
        SealedLoop relief) {

    /** Whether it starts and stops at all: what circulates by itself does not. */
    public boolean moved() {
        return relief != null || blown != null || circuit != null && circuit.hasPump();
    }

    /** Whether it should run at this second of the day. */
    public boolean called(double secondOfDay) {
        if (highLimit != null && highLimit.closed()) return true;
        if (!always) return false;
        if (hours != null && !within(hours.from(), hours.until(), secondOfDay)) return false;
        for (Latch latch : allow) if (!latch.closed()) return false;
        return true;
    }

    /** Whether a second of the day lies in a span that may run over midnight. */
    public static boolean within(double from, double until, double second) {
        return from <= until ? second >= from && second < until : second >= from || second < until;
    }

    /** Runs or stops it. */
    public void run(boolean on) {
        if (circuit != null) circuit.pump(on);
        if (blown != null) blown.run(on);
        if (motor != null) motor.power(on ? watts : 0);
        if (relief != null) relief.open(on);
    }
}
