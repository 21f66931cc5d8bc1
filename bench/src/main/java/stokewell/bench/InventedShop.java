package stokewell.bench;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import stokewell.file.RigFile;
import stokewell.file.WeatherFile;
import stokewell.fit.Knob;
import stokewell.fit.Rehearsal;
import stokewell.fit.Spot;
import stokewell.network.Compiler;
import stokewell.rig.Rig;
import stokewell.run.Replay;
import stokewell.run.Simulation;
import stokewell.weather.Site;
import stokewell.weather.Weather;

/**
 * A rig under the weather of some days, and shops drawn at random around it: their numbers are off what the rig's file says
 * within one and a half spreads, their loads badly weighed and sometimes left out, their sensors noisy, off, and under a slow
 * error that no model knows.
 */
record InventedShop(Rig rig, Weather weather, LocalDateTime begin, int days, List<Knob> knobs) {

    static final List<Spot> SPOTS = List.of(Spot.ROOM, Spot.STORE_TOP, Spot.STORE_BOTTOM, Spot.OUTDOOR);

    /** What was drawn: readings, the logarithms of the true factors, the loads as noted. */
    record Drawn(Rehearsal.Invented invented, double[] factor, List<Replay.Load> noted) {}

    static InventedShop of(String rigFile, String weatherFile, String begin, int days) throws Exception {
        Rig rig = RigFile.read(Path.of(rigFile), List.of()).rig();
        Site site = Compiler.site(rig);
        LocalDateTime from = LocalDateTime.parse(begin);
        Weather weather =
                Weather.of(WeatherFile.read(Path.of(weatherFile), site).hourly(), site, Compiler.surfaces(rig), from);
        return new InventedShop(rig, weather, from, days, Knob.of(rig));
    }

    double until() {
        return days * 86400.0;
    }

    /** @param fault made from the true rig; gives null for none */
    Drawn drawn(long seed, double spoil, UnaryOperator<Rehearsal.Fault> fault) {
        Random dice = new Random(seed);
        Rig truth = rig;
        double[] factor = new double[knobs.size()];
        double heat = 1;
        for (int k = 0; k < factor.length; k++) {
            factor[k] = Math.max(-1.5, Math.min(1.5, dice.nextGaussian())) * knobs.get(k).spread;
            truth = knobs.get(k).turned(truth, Math.exp(factor[k]));
            if (knobs.get(k) == Knob.WOOD) heat = Math.exp(factor[k]);
        }
        List<Replay.Load> loads = InventedReadings.loads(rig, begin, days, dice);
        Simulation settled = Replay.settled(truth, weather.meanDay(begin, begin.plusDays(days)), false);
        Rehearsal.Invented invented = Rehearsal.readings(
                truth,
                weather,
                settled,
                loads,
                heat,
                SPOTS,
                0,
                until(),
                new Rehearsal.Spoilt(0.1, 0.3 * spoil, 3 * 3600, 0.3 * spoil, 300, 0.07 * spoil, seed),
                fault.apply(new Rehearsal.Fault(0, truth, 1, null, 0)));
        return new Drawn(invented, factor, loads);
    }
}
