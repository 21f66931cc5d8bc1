package stokewell.bench;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TreeMap;
import stokewell.file.RigFile;
import stokewell.file.WeatherFile;
import stokewell.network.Compiler;
import stokewell.rig.Rig;
import stokewell.run.Event;
import stokewell.run.Night;
import stokewell.run.NightRun;
import stokewell.run.Simulation;
import stokewell.weather.Site;
import stokewell.weather.Weather;

/**
 * Writes what a logger and a diary would hold of an invented winter: a rig with some entries set over its file, loaded by its
 * habit, in real weather; readings with noise, weights off by a scale's error, a load forgotten now and then. Prints what was
 * truly burnt.
 *
 * <p>Arguments: rig file, weather file, first day, days, seed, file to write or -, then entries to set.
 */
public final class InventedWinters {

    private static final double STEP = 1800;
    private static final double FORGOTTEN = 0.02;
    private static final double SCALE = 0.05;

    private InventedWinters() {}

    public static void main(String[] args) throws Exception {
        List<String> settings = Arrays.asList(args).subList(6, args.length);
        Rig rig = RigFile.read(Path.of(args[0]), settings).rig();
        Site site = Compiler.site(rig);
        LocalDateTime begin = LocalDateTime.parse(args[2]).withHour(5);
        int days = Integer.parseInt(args[3]);
        Random dice = new Random(Long.parseLong(args[4]));
        Weather weather = Weather.of(WeatherFile.read(Path.of(args[1]), site).hourly(), site, Compiler.surfaces(rig));
        Night winter = NightRun.run(
                rig,
                weather,
                new NightRun.Ask(
                        begin,
                        begin.plusDays(days),
                        LocalTime.of(7, 30),
                        LocalTime.of(16, 0),
                        283.15,
                        STEP,
                        5 * Simulation.TOLERANCE));
        float[] room = winter.trace().column("room");
        double mean = 0;
        for (float r : room) mean += r / room.length;
        System.out.printf(Locale.ROOT, "%.1f kg a day, room %.1f C in the mean%n", winter.wood() / days, mean - 273.15);
        if (args[5].equals("-")) return;
        TreeMap<Long, String[]> rows = new TreeMap<>();
        float[] outdoors = winter.trace().column("outdoors");
        float[] body = winter.trace().column("stove");
        for (int i = 0; i < room.length; i++) {
            rows.put(
                    60 * Math.round(winter.trace().time(i) / 60),
                    new String[] {read(outdoors[i], 0.2, dice), read(room[i], 0.2, dice), read(body[i], 1, dice), ""});
        }
        for (Event e : winter.events()) {
            if (!(e instanceof Event.Loaded l) || dice.nextDouble() < FORGOTTEN) continue;
            String kg = String.format(Locale.ROOT, "%.1f", l.mass() * (1 + SCALE * dice.nextGaussian()));
            rows.computeIfAbsent(60 * Math.round(l.time() / 60), k -> new String[] {"", "", "", ""})[3] = kg;
        }
        List<String> lines = new ArrayList<>(List.of("time,outdoor (C),room (C),stove (C),wood (kg)"));
        rows.forEach(
                (t, cells) -> lines.add(winter.at(t).toString().replace('T', ' ') + "," + String.join(",", cells)));
        Files.write(Path.of(args[5]), lines, StandardCharsets.UTF_8);
    }

    private static String read(double kelvin, double noise, Random dice) {
        return String.format(Locale.ROOT, "%.1f", kelvin - 273.15 + noise * dice.nextGaussian());
    }
}
