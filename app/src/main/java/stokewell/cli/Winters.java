package stokewell.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoublePredicate;
import picocli.CommandLine.Option;
import stokewell.file.UnitSystem;
import stokewell.fit.ModelSaving;
import stokewell.fit.Saving;
import stokewell.fit.Series;
import stokewell.fit.Spot;
import stokewell.fit.WoodLoad;
import stokewell.fit.WoodPeriod;
import stokewell.rig.Rig;
import stokewell.shop.RigVersion;
import stokewell.show.SavedFacts;

/** The two periods of a comparison: where their loads and temperatures come from, and from when to when. */
final class Winters {

    @Option(
            names = "--change",
            paramLabel = "MOMENT",
            description = "When the rig was changed: all before against all after. Default: the day from which the "
                    + "latest rig of the shop holds.")
    String change;

    @Option(
            names = "--before",
            paramLabel = "FROM..UNTIL|FILE",
            description = "Days of the shop such as \"1 Nov 2024..31 Mar 2025\", or another shop's file, or a "
                    + "logger's table with a column of weights.")
    String before;

    @Option(names = "--after", paramLabel = "FROM..UNTIL|FILE", description = "The same for the period after.")
    String after;

    @Option(
            names = "--shop",
            paramLabel = "FILE",
            defaultValue = "shop.stokewell",
            description = "The shop's own file. Default: ${DEFAULT-VALUE}.")
    Path shop;

    @Option(
            names = "--weather",
            paramLabel = "FILE",
            description = "Hourly weather of those days: its temperatures where no sensor was outdoors, and its sun. "
                    + "Repeatable.")
    List<Path> weather = new ArrayList<>();

    @Option(
            names = "--sensor",
            paramLabel = "NAME=PLACE",
            description = "Where a sensor sits: room, outdoor, stove, flue, store top, or nothing. Repeatable.")
    Map<String, String> sensors = new LinkedHashMap<>();

    @Option(names = "--zone", paramLabel = "ZONE", description = "Of times that carry none. Default: the shop's.")
    String zone;

    /** Both periods, and what is to be said of how they were put together. */
    record Found(WoodPeriod before, WoodPeriod after, boolean room, SavedFacts.Source source, List<String> told) {

        /** @param base of the degree-days, K; NaN for the one that fits best */
        Saving compared(boolean comfort, double base) {
            try {
                return Saving.of(before, after, comfort, base);
            } catch (IllegalArgumentException few) {
                throw Complaint.usage(
                        "Nothing can be compared: " + few.getMessage() + ".",
                        "A day counts with 18 hours of temperatures and all its loads noted.");
            }
        }
    }

    /** One side: a source and its span; the file that it came from, null for the shop's own. */
    private record Side(WinterSource source, Path file, double from, double until) {}

    private Side first;
    private Side second;

    private final List<String> told = new ArrayList<>();
    private final Map<Path, WinterSource> read = new LinkedHashMap<>();

    Found read() throws IOException {
        Double cut = cut();
        first = side("--before", before, cut == null ? null : new double[] {Double.NEGATIVE_INFINITY, cut});
        second = side("--after", after, cut == null ? null : new double[] {cut, Double.POSITIVE_INFINITY});
        Side a = first;
        Side b = second;
        for (WinterSource s : read.values()) {
            told.addAll(s.told());
            for (String name : s.unplaced()) told.add("it is not clear where \"" + name + "\" sits: not used");
        }
        List<WoodLoad> early = loads(a);
        List<WoodLoad> late = loads(b);
        double knownFirst = WoodLoad.measured(early);
        double knownSecond = WoodLoad.measured(late);
        boolean moisture = knownFirst >= 0.5 && knownSecond >= 0.5;
        if (!moisture) {
            early = weighed(early);
            late = weighed(late);
        }
        boolean room = a.source.at(Spot.ROOM) != null && b.source.at(Spot.ROOM) != null;
        WoodPeriod one = period("before", a, early, room);
        WoodPeriod two = period("after", b, late, room);
        SavedFacts.Source source = new SavedFacts.Source(
                moisture,
                knownFirst,
                knownSecond,
                WoodLoad.meanMoisture(early),
                WoodLoad.meanMoisture(late),
                watch(a.source),
                watch(b.source));
        return new Found(one, two, room, source, told);
    }

    /** What a fit asks of the days of a period that were compared. */
    private FitReadings asked(boolean later, WoodPeriod period) throws IOException {
        Side side = later ? second : first;
        FitReadings ask = new FitReadings();
        Path file = side.file == null ? shop : side.file;
        boolean table = !WinterSource.isShop(file);
        ask.source = table ? file.toString() : "shop";
        ask.shop = file;
        ask.sensors.putAll(sensors);
        ask.zone = zone;
        ask.from = period.days().get(0).date() + " 05:00";
        ask.until = period.days().get(period.days().size() - 1).date() + " 23:00";
        if (!weather.isEmpty())
            ask.weather = weather.get(later ? weather.size() - 1 : 0).toString();
        return ask;
    }

    /**
     * What the model of the rig as it was says of both periods.
     *
     * @param beside the rig's file
     * @param goOn   told how far it is; false ends it
     */
    SavedFacts.Model modelled(Found found, Rig rig, Path beside, UnitSystem units, DoublePredicate goOn)
            throws IOException {
        if (!found.room()) {
            throw Complaint.usage(
                    "--model needs a sensor in the room in both periods.",
                    "Say which one it is with --sensor NAME=room.");
        }
        try {
            FitReadings.Found one = asked(false, found.before()).read(rig, beside, units);
            FitReadings.Found two = asked(true, found.after()).read(rig, beside, units);
            ModelSaving said = ModelSaving.of(rig, one.weather(), one.readings(), two.weather(), two.readings(), goOn);
            return new SavedFacts.Model(
                    rig.name(),
                    Optional.ofNullable(said),
                    !one.weather().sunModelled() && !two.weather().sunModelled());
        } catch (IllegalStateException e) {
            throw Complaint.failed(
                    "The model could not be fitted: " + e.getMessage() + ".",
                    "Leave --model out: the line stands by itself.");
        }
    }

    private static List<WoodLoad> weighed(List<WoodLoad> loads) {
        return loads.stream()
                .map(l -> new WoodLoad(l.time(), l.mass(), Double.NaN))
                .toList();
    }

    private List<WoodLoad> loads(Side side) {
        return side.source.loads().stream()
                .filter(l -> l.time() >= side.from && l.time() < side.until)
                .toList();
    }

    /** What would have seen a fire, in words; empty for nothing. */
    private static String watch(WinterSource s) {
        Spot spot = watching(s);
        return spot == null ? "" : spot.words;
    }

    private static Spot watching(WinterSource s) {
        for (Spot spot : new Spot[] {Spot.STOVE, Spot.FLUE, Spot.STORE_TOP}) if (s.at(spot) != null) return spot;
        return null;
    }

    private WoodPeriod period(String which, Side side, List<WoodLoad> loads, boolean room) {
        if (loads.isEmpty()) {
            throw Complaint.usage(
                    "No load of wood is noted in the period " + which + ".",
                    "Note them with ./stokewell diary load, or give a table with a column of weights.");
        }
        double mean = WoodLoad.meanMoisture(loads);
        Spot watch = watching(side.source);
        return WoodPeriod.of(
                Math.max(side.from, side.source.from()),
                Math.min(side.until, side.source.until() + 86400),
                loads,
                WinterWeather.outdoors(which, sensed(side), weather, side.source.offset()),
                room ? side.source.at(Spot.ROOM) : null,
                WinterWeather.sun(weather, side.source.offset()),
                watch == null ? null : side.source.at(watch),
                watch == Spot.STORE_TOP,
                Double.isNaN(mean) ? WoodLoad.TOLD_MOISTURE : mean);
    }

    /** The sensor outdoors over a side's days; null where it was not there. */
    private static Series sensed(Side side) {
        Series sensor = side.source.at(Spot.OUTDOOR);
        return sensor != null && sensor.between(side.from, side.until).size() > 0 ? sensor : null;
    }

    private WinterSource source(Path file) throws IOException {
        WinterSource known = read.get(file);
        if (known != null) return known;
        ZoneId said = zone == null ? null : ShopChoice.zone(zone);
        WinterSource fresh = WinterSource.of(file, said, sensors);
        read.put(file, fresh);
        return fresh;
    }

    private Side side(String option, String what, double[] span) throws IOException {
        if (what == null) {
            if (span == null) {
                throw Complaint.usage(
                        "It is not said what is compared with what.",
                        "Give --change \"12 Oct 2025\", or --before and --after, each as days or a file.");
            }
            return new Side(source(shop), null, span[0], span[1]);
        }
        Path file = path(what);
        if (file != null && Files.exists(file)) {
            return new Side(
                    source(InFile.check(option, file)), file, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        }
        int dots = what.indexOf("..");
        if (dots < 0) {
            throw Complaint.usage(
                    option + " \"" + what + "\" is neither a file here nor days.",
                    "Write days as \"1 Nov 2024..31 Mar 2025\".");
        }
        WinterSource source = source(shop);
        LocalDate first = LocalDateTime.ofEpochSecond(Math.round(source.from()), 0, ZoneOffset.UTC)
                .toLocalDate();
        LocalDateTime from = moment(option, what.substring(0, dots), first, false);
        LocalDateTime until = moment(option, what.substring(dots + 2), from.toLocalDate(), true);
        if (!until.isAfter(from)) {
            throw Complaint.usage(option + " \"" + what + "\" ends before it begins.", "Write the earlier day first.");
        }
        return new Side(source, null, from.toEpochSecond(ZoneOffset.UTC), until.toEpochSecond(ZoneOffset.UTC));
    }

    /** A day as an end is counted to its last hour. */
    private static LocalDateTime moment(String option, String text, LocalDate earliest, boolean end) {
        Moments m = Moments.read(option, text, earliest);
        if (end && m.time() == null) return m.or(earliest, LocalTime.MIDNIGHT).plusDays(1);
        return m.or(earliest, LocalTime.MIDNIGHT);
    }

    private static Path path(String text) {
        try {
            return Path.of(text);
        } catch (InvalidPathException e) {
            return null;
        }
    }

    /** When the rig was changed, s; null where both sides are said. */
    private Double cut() throws IOException {
        if (before != null && after != null) {
            if (change != null) {
                throw Complaint.usage("--change is given with both --before and --after.", "Leave it out.");
            }
            return null;
        }
        WinterSource source = source(shop);
        if (change != null) {
            LocalDate first = LocalDateTime.ofEpochSecond(Math.round(source.from()), 0, ZoneOffset.UTC)
                    .toLocalDate();
            return (double) moment("--change", change, first, false).toEpochSecond(ZoneOffset.UTC);
        }
        if (source.rigs().size() < 2) return null;
        RigVersion latest = source.rigs().get(source.rigs().size() - 1);
        double since = (double) latest.since() + source.offset();
        told.add(String.format(
                Locale.ROOT,
                "the change is %s, from when on the shop keeps the rig %s",
                LocalDateTime.ofEpochSecond(Math.round(since), 0, ZoneOffset.UTC)
                        .toLocalDate(),
                latest.name()));
        return since;
    }
}
