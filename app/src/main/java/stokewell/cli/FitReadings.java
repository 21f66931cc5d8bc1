package stokewell.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;
import stokewell.file.ReadingsAsk;
import stokewell.file.ReadingsFault;
import stokewell.file.ReadingsFile;
import stokewell.file.ReadingsSeries;
import stokewell.file.SensorKind;
import stokewell.file.UnitSystem;
import stokewell.fit.Placing;
import stokewell.fit.Probing;
import stokewell.fit.Readings;
import stokewell.fit.Series;
import stokewell.fit.Spot;
import stokewell.network.Compiler;
import stokewell.rig.Rig;
import stokewell.run.Replay;
import stokewell.shop.Load;
import stokewell.shop.Sensor;
import stokewell.shop.Shop;
import stokewell.weather.Hourly;
import stokewell.weather.Site;
import stokewell.weather.Weather;

/** Readings for a fit, from a logger's file or from the shop, each sensor in its place, and the weather of those days. */
final class FitReadings {

    @Option(
            names = "--readings",
            paramLabel = "FILE|shop",
            defaultValue = "shop",
            description = "A logger's file, or what the shop holds. Default: ${DEFAULT-VALUE}.")
    String source;

    @Option(
            names = "--loads",
            paramLabel = "FILE",
            description = "A table of loads: time, and weight with its unit. Default: what --readings holds.")
    Path loads;

    @Option(
            names = "--shop",
            paramLabel = "FILE",
            defaultValue = "shop.stokewell",
            description = "The shop's own file.")
    Path shop;

    @Option(
            names = "--sensor",
            paramLabel = "NAME=PLACE",
            description = "Where a sensor sits: room, store top, store middle, store bottom, outdoor, flow, return, "
                    + "stove, flue, slab, or nothing to leave it out. Repeatable.")
    Map<String, String> sensors = new LinkedHashMap<>();

    @Option(
            names = "--zone",
            paramLabel = "ZONE",
            description = "Of times in files that carry none: Europe/Oslo if the logger's clock shifts for summer, "
                    + "+01:00 if it does not. Default: the rig's standard time.")
    String zone;

    @Option(names = "--from", paramLabel = "MOMENT", description = "Default: where the readings begin.")
    String from;

    @Option(names = "--until", paramLabel = "MOMENT", description = "Default: where they end.")
    String until;

    @Option(
            names = "--weather",
            paramLabel = "FILE",
            description = "Hourly weather of those days; an outdoor sensor goes over its temperature.")
    String weather;

    /** Whether the shop's file is what is read. */
    boolean ofShop() {
        return source.equalsIgnoreCase("shop");
    }

    /** What was found: ready for a fit. */
    record Found(Weather weather, Readings readings, Placing placing, List<String> told) {}

    private final List<Series> series = new ArrayList<>();
    private final List<Replay.Load> noted = new ArrayList<>();
    private final Map<String, Spot> placed = new LinkedHashMap<>();
    private final List<String> told = new ArrayList<>();

    /** Reads everything; times count from the first hour of the readings, local standard time of the rig. */
    Found read(Rig rig, Path rigFile, UnitSystem units) throws IOException {
        ZoneOffset clock =
                ZoneOffset.ofTotalSeconds((int) (60 * Math.round(rig.place().utcOffset() / 60)));
        if (ofShop()) fromShop(clock);
        else fromFile(InFile.check("--readings", Path.of(source)), clock, true);
        if (loads != null) {
            noted.clear();
            fromFile(InFile.check("--loads", loads), clock, false);
        }
        if (series.isEmpty()) {
            throw Complaint.usage(
                    "There are no temperatures in " + source + ".", "Import some, or name a file with --readings.");
        }
        double first = series.stream().mapToDouble(s -> s.time()[0]).max().orElseThrow();
        double last =
                series.stream().mapToDouble(s -> s.time()[s.size() - 1]).min().orElseThrow();
        LocalDateTime begin = moment("--from", from, 3600 * Math.ceil(first / 3600));
        LocalDateTime end = moment("--until", until, last);
        if (!begin.plusHours(36).isBefore(end)) {
            throw Complaint.usage(
                    "The readings that all sensors share reach from " + begin + " to " + end + ".",
                    "A fit needs 36 hours or more; a week is better.");
        }
        Placing placing = place(rig);
        double zero = begin.toEpochSecond(ZoneOffset.UTC);
        double length = Duration.between(begin, end).toSeconds();
        Map<Spot, Series> at = new EnumMap<>(Spot.class);
        Series outdoor = null;
        for (Map.Entry<Spot, String> e : placing.byPlace().entrySet()) {
            Series s = series.stream()
                    .filter(x -> x.name().equals(e.getValue()))
                    .findFirst()
                    .orElseThrow();
            Series shifted = shifted(s, zero);
            if (e.getKey() == Spot.OUTDOOR) outdoor = shifted;
            at.put(e.getKey(), shifted.between(0, length));
        }
        List<Replay.Load> wood = noted.stream()
                .map(l -> new Replay.Load(l.time() - zero, l.mass()))
                .sorted((a, b) -> Double.compare(a.time(), b.time()))
                .toList();
        long within =
                wood.stream().filter(l -> l.time() >= 0 && l.time() < length).count();
        if (within == 0 && !at.containsKey(Spot.STOVE) && !at.containsKey(Spot.FLUE))
            told.add(
                    "no load of wood is noted in those days: the rig file's habit is taken for what was burnt, and wood, burn and "
                            + "losses are as wrong as it is. Note loads with ./stokewell diary load, or give a column of weights");
        Weather outside = outside(rig, rigFile, units, begin, length, outdoor);
        return new Found(outside, new Readings(at, wood, 0, length), placing, told);
    }

    private LocalDateTime moment(String option, String text, double otherwise) {
        LocalDateTime usual = LocalDateTime.ofEpochSecond(Math.round(otherwise), 0, ZoneOffset.UTC);
        if (text == null) return usual;
        return Moments.read(option, text, usual.toLocalDate().minusYears(1).plusDays(1))
                .or(usual.toLocalDate(), LocalTime.MIDNIGHT);
    }

    private void fromFile(Path file, ZoneOffset clock, boolean all) throws IOException {
        Optional<ZoneId> said = Optional.ofNullable(zone).map(ShopChoice::zone);
        ReadingsFile read;
        try {
            read = ReadingsFile.read(file, ReadingsAsk.plain(said, clock, Instant.now()));
        } catch (ReadingsFault fault) {
            throw Complaint.usage(fault.getMessage(), "./stokewell help readings import tells how a table is read.");
        }
        told.addAll(read.told());
        for (ReadingsSeries s : read.series()) {
            long[] times = s.times();
            double[] values = s.values();
            if (s.unit().kind() == SensorKind.MASS) {
                for (int i = 0; i < times.length; i++) load(times[i], values[i], clock);
            } else if (all && s.unit().kind() == SensorKind.TEMPERATURE) {
                add(s.name(), times, values, clock);
            }
        }
    }

    private void fromShop(ZoneOffset clock) {
        if (!Files.exists(shop)) {
            throw Complaint.usage(
                    "There is no shop's file " + shop + ".",
                    "Import readings with ./stokewell readings import, or name a logger's file with --readings.");
        }
        try (Shop open = Shop.openExisting(shop)) {
            long first = Long.MAX_VALUE;
            for (Sensor sensor : open.sensors()) {
                if (sensor.kind() != SensorKind.TEMPERATURE) continue;
                stokewell.shop.Readings r = open.readings(sensor);
                if (r.size() == 0) continue;
                add(sensor.name(), r.times(), r.values(), clock);
                first = Math.min(first, r.time(0));
                Spot spot = sensor.place().isEmpty() ? null : Spot.named(sensor.place());
                if (spot != null) placed.put(sensor.name(), spot);
            }
            for (Load load : WoodNoted.of(open)) load(load.time(), load.mass(), clock);
            if (first < Long.MAX_VALUE && open.zone().isPresent())
                clocks(open.zone().get(), Instant.ofEpochSecond(first), clock);
        }
    }

    /** Readings that were taken in by a wrong zone stand shifted against sun and weather, and nothing else shows it. */
    private void clocks(ZoneId home, Instant when, ZoneOffset clock) {
        ZoneOffset standard = home.getRules().getStandardOffset(when);
        if (standard.equals(clock)) return;
        String its = home.getId() + (home.getId().equals(standard.getId()) ? "" : " (" + standard + " in winter)");
        told.add("the shop's clock is " + its + ", the rig's standard time is " + clock
                + ": one of them is wrong, or the shop is not where the rig is. Hours are told by the rig's. If "
                + "place.utcOffset of the rig file is wrong, mend it; if the readings were taken in by a wrong zone, they "
                + "stand shifted against sun and weather: take them in anew with --zone, into a new shop's file");
    }

    private void load(long time, double mass, ZoneOffset clock) {
        if (mass > 0) noted.add(new Replay.Load(time + clock.getTotalSeconds(), mass));
    }

    private void add(String name, long[] times, double[] values, ZoneOffset clock) {
        double[] local = new double[times.length];
        for (int i = 0; i < local.length; i++) local[i] = times[i] + clock.getTotalSeconds();
        series.add(new Series(name, local, values));
    }

    private static Series shifted(Series s, double zero) {
        double[] time = s.time().clone();
        for (int i = 0; i < time.length; i++) time[i] -= zero;
        return new Series(s.name(), time, s.value());
    }

    private Placing place(Rig rig) {
        for (Map.Entry<String, String> e : sensors.entrySet()) {
            if (series.stream().noneMatch(s -> s.name().equals(e.getKey()))) {
                throw Complaint.usage(
                        "--sensor: there is no sensor \"" + e.getKey() + "\".",
                        "There are: " + series.stream().map(Series::name).collect(Collectors.joining(", ")) + ".");
            }
            Spot spot = Spot.named(e.getValue());
            if (spot == null) {
                throw Complaint.usage(
                        "--sensor: \"" + e.getValue() + "\" is no place.", "Places: " + places(rig) + ".");
            }
            placed.put(e.getKey(), spot);
        }
        Placing placing = Placing.of(series, placed, rig);
        List<String> unsure = placing.unsure();
        if (!unsure.isEmpty()) {
            StringBuilder what = new StringBuilder("It is not clear where these sensors sit:");
            for (int i = 0; i < placing.names().size(); i++) {
                if (placing.spots().get(i) == null) {
                    what.append("\n    ")
                            .append(placing.names().get(i))
                            .append(": ")
                            .append(placing.why().get(i));
                }
            }
            throw Complaint.usage(
                    what.toString(),
                    "Say it with --sensor \"" + unsure.get(0) + "=PLACE\". Places: " + places(rig) + ".");
        }
        boolean inside = placing.byPlace().keySet().stream().anyMatch(Spot::compared);
        if (!inside) throw Complaint.usage("No sensor is in the room or the store.", "Say where with --sensor.");
        return placing;
    }

    private static String places(Rig rig) {
        return Probing.spotsOf(rig).stream().map(s -> s.words).collect(Collectors.joining(", "));
    }

    /** The weather of those days: the outdoor sensor, else the file; wind and sun from the file, else as the rig says. */
    private Weather outside(Rig rig, Path rigFile, UnitSystem units, LocalDateTime begin, double length, Series outdoor)
            throws IOException {
        Site site = Compiler.site(rig);
        boolean named = weather != null || !rig.weather().file().isEmpty();
        WeatherChoice choice = named ? WeatherChoice.of(weather, rig, rigFile, units) : null;
        LocalDateTime end = begin.plusSeconds((long) length);
        if (choice != null && !choice.covers(begin, end)) {
            if (outdoor == null || weather != null) {
                throw Complaint.usage(
                        "The weather file does not reach from " + begin + " to " + end + ".",
                        "It holds " + choice.reach() + ".");
            }
            choice = null;
        }
        if (outdoor == null) {
            if (choice == null) {
                throw Complaint.usage(
                        "There is no outdoor sensor and no weather of those days.", "Give --weather FILE.");
            }
            return choice.weather().from(begin);
        }
        int hours = (int) Math.ceil(length / 3600) + 2;
        double[] temperature = new double[hours];
        double[] wind = new double[hours];
        for (int h = 0; h < hours; h++) {
            double mean = 0;
            // the instant, smoothed over the half hours beside it
            for (int k = -2; k <= 2; k++) mean += outdoor.at(h * 3600.0 + k * 600) / 5;
            temperature[h] = mean;
            wind[h] = rig.weather().wind();
        }
        if (choice == null) {
            told.add(
                    "no wind or sun was measured: the wind is the rig file's, the sun is taken from the warmth of the days");
            return Weather.of(new Hourly(begin, temperature, wind), site, Compiler.surfaces(rig));
        }
        Hourly file = choice.hourly().orElse(null);
        if (file == null || file.isWrapped()) {
            return Weather.of(new Hourly(begin, temperature, wind), site, Compiler.surfaces(rig));
        }
        return Weather.of(part(file, begin, temperature), site, Compiler.surfaces(rig));
    }

    /** The file's hours with the sensor's temperatures. */
    private static Hourly part(Hourly file, LocalDateTime begin, double[] temperature) {
        int first = (int) Duration.between(file.start(), begin).toHours();
        int hours = Math.min(temperature.length, file.hours() - first);
        double[] own = java.util.Arrays.copyOf(temperature, hours);
        Hourly part = new Hourly(begin, own, cut(file.wind(), first, hours));
        if (file.sun().isPresent()) {
            Hourly.Sun sun = file.sun().get();
            part = part.withSun(new Hourly.Sun(
                    cut(sun.global(), first, hours),
                    sun.beam().map(b -> cut(b, first, hours)),
                    sun.diffuse().map(d -> cut(d, first, hours)),
                    sun.centre()));
        }
        if (file.dewPoint().isPresent())
            part = part.withDewPoint(cut(file.dewPoint().get(), first, hours));
        return part;
    }

    private static double[] cut(double[] values, int first, int count) {
        return java.util.Arrays.copyOfRange(values, first, first + count);
    }
}
