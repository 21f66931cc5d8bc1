package stokewell.check;

import static stokewell.check.Findings.say;

import stokewell.rig.Emitter;

/** Pipes in a floor: how hot the water is that goes in. */
final class FloorRules {

    private static final String BASIS =
            "EN 1264-4: no more than 55 °C (131 °F) round pipes in cement and calcium sulphate screed, and what its plastic pipe is "
                    + "made for; EN 1264-2: 29 °C (84 °F) at the surface where people stand (from memory)";

    private FloorRules() {}

    static void look(Subject s, Findings f) {
        for (Emitter e : s.rig().emitters()) if (e instanceof Emitter.FloorLoop floor) hot(s, f, floor);
    }

    private static void hot(Subject s, Findings f, Emitter.FloorLoop floor) {
        double drawn = drawn(s, floor);
        double held = floor.mixedTo();
        String second = " A second thermostat behind it, on its pipe, stops the pump at 55 °C (131 °F): valves stick.";
        if (Double.isNaN(held) && drawn > HotLimits.SCREED) {
            f.mend(
                    "floor.hot",
                    say("Water of %s goes straight into the %s.", Telling.degrees(drawn), floor.name()),
                    "It cracks the screed, ages plastic pipe, and the floor is too hot for feet.",
                    say(
                            "A thermostatic mixing valve before its pump, set to 40 to 45 °C (104 to 113 °F): %s, mixed to.%s",
                            floor.name(), second),
                    BASIS);
        } else if (held > HotLimits.SCREED) {
            f.mend(
                    "floor.hot",
                    say("The mixing valve of the %s is set to %s.", floor.name(), Telling.degrees(held)),
                    "Above 55 °C (131 °F) it cracks the screed and ages plastic pipe.",
                    "Set it to 40 to 45 °C (104 to 113 °F)." + second,
                    BASIS);
        } else {
            f.fine(
                    "floor.hot",
                    say("The %s takes no water hotter than its screed bears.", floor.name()),
                    Double.isNaN(held)
                            ? say("The store gives it %s at the most on a normal day.", Telling.degrees(drawn))
                            : say(
                                    "Its valve holds %s where the store gives %s.%s",
                                    Telling.degrees(held), Telling.degrees(drawn), second),
                    BASIS);
        }
    }

    /** The hottest water that the store gives it while it runs, or at all where it does not run on that day, K. */
    private static double drawn(Subject s, Emitter.FloorLoop floor) {
        int layers = s.rig().store().nodes();
        int layer = Math.min(layers, 1 + (int) ((1 - floor.circuit().draw()) * layers));
        float[] water = s.day().trace().column("store " + layer);
        String runs = "runs " + floor.name();
        float[] on = s.day().trace().has(runs) ? s.day().trace().column(runs) : new float[water.length];
        double running = Double.NEGATIVE_INFINITY;
        double ever = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < water.length; i++) {
            ever = Math.max(ever, water[i]);
            if (on[i] > 0.5) running = Math.max(running, water[i]);
        }
        return running > 0 ? running : ever;
    }
}
