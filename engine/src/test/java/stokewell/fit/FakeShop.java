package stokewell.fit;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import stokewell.network.Compiler;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.run.Replay;
import stokewell.run.Simulation;
import stokewell.weather.Hourly;
import stokewell.weather.Weather;

/** A shop that is invented whole: rig, weather that swings by day and by week, loads, and what its sensors said. */
public final class FakeShop {

    static final double DAY = 86400;
    private static final LocalDateTime BEGIN = LocalDateTime.of(2024, 1, 15, 7, 0);

    /** The rig as its file tells it. */
    public static final Rig RIG = Rigs.pumped();

    public final Weather weather;
    public final Readings readings;
    public final List<Replay.Load> laid;

    /**
     * @param truth of the rig's file
     * @param fault made from the true rig; gives null for none
     * @param noted of the loads that were laid
     */
    public FakeShop(
            int days,
            long seed,
            UnaryOperator<Rig> truth,
            UnaryOperator<Rehearsal.Fault> fault,
            UnaryOperator<List<Replay.Load>> noted) {
        weather = weather(days);
        Rig right = truth.apply(RIG);
        Random dice = new Random(seed);
        List<Replay.Load> loads = new ArrayList<>();
        for (int d = 0; d < days; d++) {
            for (int k = 0; k < 4; k++) {
                double t = d * DAY + (1.5 + 3 * k) * 3600 + 900 * dice.nextGaussian();
                loads.add(new Replay.Load(t, 5 + 2 * dice.nextDouble()));
            }
        }
        Simulation settled = Replay.settled(right, weather.meanDay(BEGIN, BEGIN.plusDays(days)), false);
        Rehearsal.Invented invented = Rehearsal.readings(
                right,
                weather,
                settled,
                loads,
                1,
                List.of(Spot.ROOM, Spot.STORE_TOP, Spot.STORE_BOTTOM),
                0,
                days * DAY,
                new Rehearsal.Spoilt(0.1, 0.2, 3 * 3600, 0.2, 600, 0.05, seed),
                fault.apply(new Rehearsal.Fault(0, right, 1, null, 0)));
        laid = invented.laid();
        readings = new Readings(invented.readings().at(), noted.apply(loads), 0, days * DAY);
    }

    private static Weather weather(int days) {
        int hours = 24 * days + 2;
        double[] temperature = new double[hours];
        double[] wind = new double[hours];
        for (int h = 0; h < hours; h++) {
            temperature[h] = 266 + 4 * Math.sin(2 * Math.PI * (h - 2) / 24) + 4 * Math.sin(2 * Math.PI * h / 110);
            wind[h] = 2.5 + 1.5 * Math.sin(h / 13.0);
        }
        return Weather.of(new Hourly(BEGIN, temperature, wind), Compiler.site(RIG), Compiler.surfaces(RIG));
    }
}
