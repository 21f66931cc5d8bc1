package stokewell.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import stokewell.file.RigFile;
import stokewell.file.WeatherFile;
import stokewell.fit.Knob;
import stokewell.fit.Rehearsal;
import stokewell.fit.Series;
import stokewell.fit.Spot;
import stokewell.network.Compiler;
import stokewell.rig.Habit;
import stokewell.rig.Rig;
import stokewell.run.Replay;
import stokewell.run.Simulation;
import stokewell.weather.Site;
import stokewell.weather.Weather;

/**
 * Writes the readings of an invented shop: the rig of a file with some of its numbers turned, run through real weather, with
 * noise. For the examples and for trying a fit; nobody measured them.
 *
 * <p>Arguments: rig file, weather file, first moment, days, seed, file to write, then knob=factor as many as wanted.
 */
public final class InventedReadings {

    private InventedReadings() {}

    public static void main(String[] args) throws Exception {
        Rig filed = RigFile.read(Path.of(args[0]), List.of()).rig();
        Rig rig = filed;
        double heat = 1;
        for (int i = 6; i < args.length; i++) {
            String[] pair = args[i].split("=");
            Knob knob = Knob.valueOf(pair[0].toUpperCase(Locale.ROOT));
            double factor = Double.parseDouble(pair[1]);
            rig = knob.turned(rig, factor);
            if (knob == Knob.WOOD) heat = factor;
        }
        Site site = Compiler.site(rig);
        LocalDateTime begin = LocalDateTime.parse(args[2]);
        int days = Integer.parseInt(args[3]);
        long seed = Long.parseLong(args[4]);
        Weather weather =
                Weather.of(WeatherFile.read(Path.of(args[1]), site).hourly(), site, Compiler.surfaces(rig), begin);
        Simulation settled = Replay.settled(rig, weather.meanDay(begin, begin.plusDays(days)), false);
        List<Replay.Load> loads = loads(rig, begin, days, new Random(seed));
        Rehearsal.Invented invented = Rehearsal.readings(
                rig,
                weather,
                settled,
                loads,
                heat,
                List.of(Spot.ROOM, Spot.STORE_TOP, Spot.STORE_BOTTOM, Spot.OUTDOOR, Spot.STOVE),
                0,
                days * 86400.0,
                new Rehearsal.Spoilt(0.1, 0.3, 3 * 3600, 0.3, 300, 0.07, seed));
        write(Path.of(args[5]), begin, invented, loads);
    }

    /** The habit as a person keeps it: some minutes early or late, a load left out now and then. */
    static List<Replay.Load> loads(Rig rig, LocalDateTime begin, int days, Random dice) {
        List<Replay.Load> loads = new ArrayList<>();
        for (int d = 0; d < days; d++) {
            for (Habit.Load l : ((Habit.Clock) rig.habit()).loads()) {
                if (dice.nextDouble() < 0.15) continue;
                double t = d * 86400 + l.at() - begin.toLocalTime().toSecondOfDay() + 1200 * dice.nextGaussian();
                double mass = l.mass() * (0.8 + 0.4 * dice.nextDouble());
                if (t > 600) loads.add(new Replay.Load(60 * Math.round(t / 60), 0.1 * Math.round(10 * mass)));
            }
        }
        return loads;
    }

    private static void write(Path file, LocalDateTime begin, Rehearsal.Invented invented, List<Replay.Load> loads)
            throws IOException {
        Map<Spot, Series> at = invented.readings().at();
        TreeMap<Long, String[]> rows = new TreeMap<>();
        int columns = at.size() + 1;
        StringBuilder head = new StringBuilder("time");
        int c = 0;
        for (Map.Entry<Spot, Series> e : at.entrySet()) {
            head.append(',').append(e.getKey().words).append(" (C)");
            for (int i = 0; i < e.getValue().size(); i++) {
                long t = Math.round(e.getValue().time()[i]);
                rows.computeIfAbsent(t, k -> new String[columns])[c] =
                        String.format(Locale.ROOT, "%.1f", e.getValue().value()[i] - 273.15);
            }
            c++;
        }
        head.append(",wood (kg)\n");
        for (Replay.Load l : loads) {
            rows.computeIfAbsent(Math.round(l.time()), k -> new String[columns])[columns - 1] =
                    String.format(Locale.ROOT, "%.1f", l.mass());
        }
        StringBuilder out = new StringBuilder(head);
        for (Map.Entry<Long, String[]> row : rows.entrySet()) {
            out.append(begin.plusSeconds(row.getKey()).toString().replace('T', ' '));
            for (String cell : row.getValue()) out.append(',').append(cell == null ? "" : cell);
            out.append('\n');
        }
        Files.writeString(file, out, StandardCharsets.UTF_8);
    }
}
