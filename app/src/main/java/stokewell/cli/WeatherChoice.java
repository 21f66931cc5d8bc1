package stokewell.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stokewell.file.Quantity;
import stokewell.file.QuantityFault;
import stokewell.file.UnitSystem;
import stokewell.file.WeatherFile;
import stokewell.network.Compiler;
import stokewell.rig.Dimension;
import stokewell.rig.Outdoors;
import stokewell.rig.Place;
import stokewell.rig.Rig;
import stokewell.rig.RigFault;
import stokewell.run.NightRun;
import stokewell.weather.DayRange;
import stokewell.weather.Hourly;
import stokewell.weather.Site;
import stokewell.weather.Surface;
import stokewell.weather.Weather;

/**
 * The weather of a run: what the rig file names, or what the person asked for instead.
 *
 * @param told   one line that says what weather it is
 * @param day    the day that a night begins on where none is asked for
 * @param hourly the record, where it is one
 * @param notes  what the reader had to say about the file
 */
record WeatherChoice(Weather weather, String told, LocalDate day, Optional<Hourly> hourly, List<String> notes) {

    private static final String RIGHT = "Write a weather file, low / high such as \"-12 C / -3 C\", "
            + "or a cold snap such as \"snap: -25 C / -16 C for 3 days\".";
    /** A year without a 29 February; plain days have no year of their own. */
    private static final int SOME_YEAR = 2025;
    /** Normal days before a snap: what settling and the days lived through look back on. */
    private static final int BEFORE_SNAP = NightRun.REMEMBERED_DAYS + NightRun.LIVED_DAYS;

    private static final int LONGEST_SNAP = 60;
    private static final int MOST_NOTES = 5;
    private static final double EARTH = 6371;
    /** Beyond this the weather is another place's, km. */
    private static final double FAR = 150;

    /**
     * Makes the weather of a rig.
     *
     * @param asked as the person wrote it; null for what the rig file names
     * @param beside the rig file, for a weather file named in it
     */
    static WeatherChoice of(String asked, Rig rig, Path beside, UnitSystem units) {
        return of(asked, rig, beside, units, WeatherMemory.NONE);
    }

    /** As above, with files remembered. */
    static WeatherChoice of(String asked, Rig rig, Path beside, UnitSystem units, WeatherMemory memory) {
        List<Surface> surfaces = Compiler.surfaces(rig);
        Outdoors own = rig.weather();
        if (asked == null) {
            if (own.file().isEmpty()) return plain(new DayRange(own.low(), own.high()), rig, surfaces, units);
            Path file = beside.toAbsolutePath().resolveSibling(own.file());
            return file(InFile.check(beside.getFileName() + "  weather.file", file), rig, surfaces, memory);
        }
        String text = asked.strip();
        Path file = text.toLowerCase(Locale.ROOT).startsWith("snap:") ? null : path(text);
        return file != null && Files.exists(file)
                ? file(InFile.check("--weather", file), rig, surfaces, memory)
                : words(text, rig, units);
    }

    /** Makes the weather that words tell: a low and a high, or a cold snap; never that of a file. */
    static WeatherChoice words(String text, Rig rig, UnitSystem units) {
        List<Surface> surfaces = Compiler.surfaces(rig);
        if (text.toLowerCase(Locale.ROOT).startsWith("snap:")) return snap(text, rig, surfaces, units);
        DayRange range = range(text, units);
        if (range == null) {
            throw Complaint.usage("--weather \"" + text + "\" is neither a file here nor a low and a high.", RIGHT);
        }
        return plain(range, rig, surfaces, units);
    }

    /** Makes the weather that a file holds. */
    static WeatherChoice file(Path file, Rig rig, WeatherMemory memory) {
        return file(file, rig, Compiler.surfaces(rig), memory);
    }

    private static WeatherChoice plain(DayRange range, Rig rig, List<Surface> surfaces, UnitSystem units) {
        Outdoors own = rig.weather();
        LocalDate date = dateOf(own);
        Weather weather = Weather.day(range, own.wind(), own.sun(), site(rig.place()), date, surfaces);
        String told =
                "plain day, " + told(range, units) + ", wind " + Quantity.write(own.wind(), Dimension.SPEED, units, 2);
        return new WeatherChoice(weather, told, date, Optional.empty(), List.of());
    }

    private static WeatherChoice snap(String text, Rig rig, List<Surface> surfaces, UnitSystem units) {
        String rest = text.substring(5).strip();
        int days = 3;
        int at = rest.toLowerCase(Locale.ROOT).indexOf(" for ");
        if (at >= 0) {
            String count = rest.substring(at + 5).strip().replaceFirst("\\s*days?$", "");
            days = count.matches("\\d{1,3}") ? Integer.parseInt(count) : 0;
            rest = rest.substring(0, at);
        }
        DayRange cold = range(rest, units);
        if (cold == null || days < 1 || days > LONGEST_SNAP) {
            throw Complaint.usage("--weather \"" + text + "\" is not a cold snap.", RIGHT);
        }
        Outdoors own = rig.weather();
        DayRange normal = new DayRange(own.low(), own.high());
        LocalDate first = dateOf(own).minusDays(BEFORE_SNAP + days);
        Weather weather = Weather.coldSnap(
                normal, cold, BEFORE_SNAP, days, 1, own.wind(), own.sun(), site(rig.place()), first, surfaces);
        String told = "cold snap, day " + days + " of " + days + ": " + told(cold, units) + ", after days of "
                + told(normal, units);
        // the night that counts is the last of the snap: it ends on the snap's last morning
        LocalDate last = first.plusDays(BEFORE_SNAP + Math.max(1, days - 1));
        return new WeatherChoice(weather, told, last, Optional.empty(), List.of());
    }

    private static WeatherChoice file(Path file, Rig rig, List<Surface> surfaces, WeatherMemory memory) {
        Site home = site(rig.place());
        WeatherFile.Reading reading = memory.reading(file, home);
        List<String> notes = new ArrayList<>();
        Site site = reading.site().orElse(home);
        // a rig file that gives no longitude has 0: what is far then, no one knows
        Site near = home.longitude() == 0 ? new Site(home.latitude(), site.longitude(), 0, 0) : home;
        double away = distance(site, near);
        if (away > FAR) {
            notes.add(String.format(Locale.ROOT, "the weather was measured %.0f km from where the rig stands", away));
        }
        for (WeatherFile.Note note : reading.notes()) {
            notes.add((note.row() > 0 ? "row " + note.row() + ": " : "") + note.what());
        }
        Hourly hourly = reading.hourly();
        Weather weather = memory.weather(reading, site, surfaces);
        return new WeatherChoice(weather, reading.source(), coldest(hourly), Optional.of(hourly), List.copyOf(notes));
    }

    /** Tells the first remarks on the file, and how many more there are. */
    void remark(PrintWriter err) {
        int shown = notes.size() > MOST_NOTES ? MOST_NOTES - 1 : notes.size();
        for (String note : notes.subList(0, shown)) err.println("weather: " + note);
        if (shown < notes.size()) err.println("weather: " + (notes.size() - shown) + " more such remarks");
        err.flush();
    }

    /** Whether the weather holds all from one moment to another. */
    boolean covers(LocalDateTime from, LocalDateTime until) {
        return weather.covers(seconds(from), seconds(until));
    }

    /** From when to when the record reaches, in words. */
    String reach() {
        return hourly.map(h -> h.start() + " to " + h.end()).orElse("one day, again and again");
    }

    private double seconds(LocalDateTime moment) {
        return Duration.between(weather.start(), moment).toMillis() / 1000.0;
    }

    /** The day whose 24 hours from 8:00 on are the coldest of a record. */
    static LocalDate coldest(Hourly hourly) {
        double[] t = hourly.temperature();
        int n = t.length;
        int lead = hourly.isWrapped() ? 0 : Math.min(24 * (NightRun.LIVED_DAYS + 1), Math.max(0, n - 48));
        LocalDateTime first = hourly.start().plusHours(lead).toLocalDate().atTime(8, 0);
        if (first.isBefore(hourly.start().plusHours(lead))) first = first.plusDays(1);
        LocalDate best = first.toLocalDate();
        double least = Double.POSITIVE_INFINITY;
        int from = (int) Duration.between(hourly.start(), first).toHours();
        for (int day = 0; from + 24 * day + (hourly.isWrapped() ? 0 : 24) <= n; day++) {
            double sum = 0;
            for (int h = 0; h < 24; h++) sum += t[(from + 24 * day + h) % n];
            if (sum < least) {
                least = sum;
                best = first.toLocalDate().plusDays(day);
            }
        }
        return best;
    }

    private static LocalDate dateOf(Outdoors own) {
        return LocalDate.ofYearDay(SOME_YEAR, Math.min(365, own.dayOfYear()));
    }

    private static Site site(Place place) {
        return new Site(place.latitude(), place.longitude(), place.utcOffset(), place.altitude());
    }

    private static String told(DayRange range, UnitSystem units) {
        return Quantity.write(range.low(), Dimension.TEMPERATURE, units, 3) + " to "
                + Quantity.write(range.high(), Dimension.TEMPERATURE, units, 3);
    }

    private static Path path(String text) {
        try {
            return Path.of(text);
        } catch (InvalidPathException e) {
            return null;
        }
    }

    /** A low and a high, in either order; null where it is not that. */
    private static DayRange range(String text, UnitSystem units) {
        int slash = text.indexOf('/');
        if (slash < 0 || text.indexOf('/', slash + 1) >= 0) return null;
        try {
            double a = Quantity.parse(text.substring(0, slash), Dimension.TEMPERATURE);
            double b = Quantity.parse(text.substring(slash + 1), Dimension.TEMPERATURE);
            Outdoors checked = new Outdoors("", Math.min(a, b), Math.max(a, b), 0, 0, 1);
            return new DayRange(checked.low(), checked.high());
        } catch (QuantityFault e) {
            return null;
        } catch (RigFault outside) {
            throw Complaint.usage(
                    "--weather \"" + text + "\": no place is so cold or so hot.",
                    "Between " + Quantity.write(outside.low, Dimension.TEMPERATURE, units, 3) + " and "
                            + Quantity.write(outside.high, Dimension.TEMPERATURE, units, 3) + " it can be reckoned.");
        }
    }

    /** Great circle, km. */
    private static double distance(Site a, Site b) {
        double cos = Math.sin(a.latitude()) * Math.sin(b.latitude())
                + Math.cos(a.latitude()) * Math.cos(b.latitude()) * Math.cos(a.longitude() - b.longitude());
        return EARTH * Math.acos(Math.max(-1, Math.min(1, cos)));
    }
}
