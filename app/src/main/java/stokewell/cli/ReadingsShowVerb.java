package stokewell.cli;

import java.io.PrintWriter;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import stokewell.file.SensorKind;
import stokewell.file.SensorUnit;
import stokewell.file.UnitSystem;
import stokewell.shop.Doubts;
import stokewell.shop.Readings;
import stokewell.shop.Sensor;
import stokewell.shop.Shop;

/** Readings of one sensor. */
@Command(name = "show", description = "Show the readings of one sensor.", sortOptions = false)
final class ReadingsShowVerb implements Callable<Integer> {

    @Spec
    CommandSpec spec;

    @Mixin
    ShopChoice choice;

    @Parameters(paramLabel = "SENSOR", description = "Its name, as readings list tells it.")
    String name;

    @Option(names = "--from", paramLabel = "MOMENT", description = "15 Jan, 2026-01-15 18:00. Default: the first.")
    String from;

    @Option(names = "--until", paramLabel = "MOMENT", description = "Default: the last.")
    String until;

    @Option(names = "--units", paramLabel = "si|us", description = "Of temperatures. Default: as they were written.")
    UnitSystem units;

    @Option(names = "--csv", description = "Write a table for programs: times in UTC.")
    boolean csv;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        try (Shop shop = choice.openExisting()) {
            Sensor sensor = find(shop, name);
            ZoneId zone = ShopChoice.zone(shop);
            long first = from == null ? 0 : ShopChoice.moment("--from", from, zone);
            long last = until == null ? Long.MAX_VALUE : ShopChoice.moment("--until", until, zone);
            Readings readings = shop.readings(sensor, first, last);
            SensorUnit unit = unit(sensor);
            String symbol = unit.symbol().isEmpty() ? "" : " " + unit.symbol();
            String[] marks = marks(sensor, readings);
            if (csv) out.println("time,value [" + unit.symbol() + "],doubt");
            for (int i = 0; i < readings.size(); i++) {
                double value = unit.fromSi(readings.value(i));
                if (csv) {
                    out.println(ShopChoice.utc(readings.time(i)) + "," + ReadingsVerbPage.bare(value) + "," + marks[i]);
                } else {
                    out.printf(
                            Locale.ROOT,
                            "%s  %9s%s  %s%n",
                            ShopChoice.wall(readings.time(i), zone),
                            ReadingsVerbPage.bare(value),
                            symbol,
                            marks[i]);
                }
            }
            if (!csv) out.println(summary(readings, unit, symbol));
        }
        return 0;
    }

    /** The sensor of that name, or a complaint that lists those there are. */
    static Sensor find(Shop shop, String name) {
        return shop.sensor(name)
                .orElseThrow(() -> Complaint.usage(
                        "The shop knows no sensor \"" + name + "\".",
                        shop.sensors().isEmpty()
                                ? "It knows none: ./stokewell readings import FILE."
                                : "Known: "
                                        + String.join(
                                                ", ",
                                                shop.sensors().stream()
                                                        .map(Sensor::name)
                                                        .toList())
                                        + "."));
    }

    private SensorUnit unit(Sensor sensor) {
        if (units == null || sensor.kind() != SensorKind.TEMPERATURE) return sensor.unit();
        return SensorUnit.named(units == UnitSystem.US ? "F" : "C").orElseThrow();
    }

    private static String[] marks(Sensor sensor, Readings readings) {
        String[] marks = new String[readings.size()];
        Arrays.fill(marks, "");
        Doubts doubts = Doubts.of(sensor.kind(), readings);
        for (Doubts.Stretch s : doubts.stuck()) Arrays.fill(marks, s.first(), s.last() + 1, "stuck");
        for (Doubts.Stretch s : doubts.spikes()) Arrays.fill(marks, s.first(), s.last() + 1, "spike");
        return marks;
    }

    private static String summary(Readings readings, SensorUnit unit, String symbol) {
        if (readings.size() == 0) return "No readings in that span.";
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double sum = 0;
        for (int i = 0; i < readings.size(); i++) {
            double value = unit.fromSi(readings.value(i));
            low = Math.min(low, value);
            high = Math.max(high, value);
            sum += value;
        }
        return ReadingsVerbPage.count(readings.size(), "reading") + ", " + ReadingsVerbPage.bare(low) + " to "
                + ReadingsVerbPage.bare(high) + symbol + ", mean "
                + ReadingsVerbPage.bare(Math.rint(sum / readings.size() * 10) / 10) + symbol + ".";
    }
}
