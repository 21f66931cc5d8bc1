package stokewell.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import stokewell.file.RigFile;
import stokewell.file.RigFileFault;
import stokewell.file.WeatherFile;
import stokewell.network.Compiler;
import stokewell.rig.Habit;
import stokewell.rig.Rig;
import stokewell.run.NightRun;
import stokewell.run.SeasonRun;
import stokewell.weather.Site;
import stokewell.weather.Weather;

/** What is measured: the example rigs, all moved to one cold coast with a file of real hours. */
final class Cases {

    /** The largest rig: two pickups, three circuits, a store in 24 layers. */
    static final String LARGEST = "joinery";

    /** Share of its own loads that the boat shed burns on this milder coast: the store must not boil. */
    private static final double BOAT_SHED_LOADS = 0.45;

    static final LocalDateTime AUTUMN = LocalDateTime.of(2023, 10, 1, 0, 0);
    static final LocalDateTime WINTER = LocalDateTime.of(2023, 12, 15, 0, 0);
    static final int SEASON = 212;
    static final double HALF_HOUR = 1800;

    private static final List<String> SAND_POINT = List.of(
            "place.latitude=55.32 N",
            "place.longitude=160.52 W",
            "place.utcOffset=-9 h",
            "place.altitude=7 m",
            "place.groundTemperature=4 C");

    private Cases() {}

    /** A rig, moved to Sand Point, Alaska, with other settings besides. */
    static Rig rig(String name, String... settings) {
        List<String> all = new ArrayList<>(SAND_POINT);
        all.addAll(List.of(settings));
        try {
            Rig moved = RigFile.read(examples().resolve(name + ".yaml"), all).rig();
            return name.equals("boat-shed") ? lighter(moved, BOAT_SHED_LOADS) : moved;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (RigFileFault e) {
            throw new IllegalStateException(e);
        }
    }

    /** The same rig with this share of its loads by the clock. */
    static Rig lighter(Rig r, double share) {
        Habit.Clock clock = (Habit.Clock) r.habit();
        List<Habit.Load> loads = clock.loads().stream()
                .map(l -> new Habit.Load(l.at(), share * l.mass()))
                .toList();
        return r.fired(new Habit.Clock(loads, clock.skipAbove()), r.stove().air());
    }

    /** The same rig loaded by rule: whenever the stove has cooled, from eight to five. */
    static Rig byRule(Rig r) {
        Habit.Clock clock = (Habit.Clock) r.habit();
        double mass = clock.loads().get(0).mass();
        return r.fired(
                new Habit.Rule(mass, 413.15, 8 * 3600, 17 * 3600, clock.skipAbove()),
                r.stove().air());
    }

    /** The typical year of Sand Point (TMY3), hour by hour, from the first of September. */
    static Weather weather(Rig rig) {
        Site site = Compiler.site(rig);
        Path file = examples().resolve("weather/tmy3_703165_sand_point_ak.csv");
        return Weather.of(
                WeatherFile.read(file, site).hourly(),
                site,
                Compiler.surfaces(rig),
                LocalDateTime.of(2023, 9, 1, 0, 0));
    }

    static NightRun.Ask night(double tolerance) {
        LocalDateTime from = LocalDateTime.of(2023, 12, 20, 8, 0);
        return new NightRun.Ask(
                from, from.plusDays(1), LocalTime.of(7, 30), LocalTime.of(16, 0), 283.15, 300, tolerance);
    }

    static SeasonRun.Ask season(LocalDateTime from, int days, double tolerance) {
        return new SeasonRun.Ask(from, from.plusDays(days), LocalTime.of(7, 30), 283.15, HALF_HOUR, tolerance);
    }

    private static Path examples() {
        return Path.of(System.getProperty("examples", "examples")).toAbsolutePath();
    }
}
