package stokewell.show;

import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stokewell.run.Event;
import stokewell.run.Ledger;
import stokewell.run.Night;
import stokewell.run.Season;
import stokewell.run.Trace;
import stokewell.solve.Counters;

/** Runs made up by hand, the same for ever, so that what is told of them can be held to the letter. */
final class FakeRuns {

    private static final double K = 273.15;
    private static final double KWH = 3.6e6;
    private static final LocalDateTime START = LocalDateTime.of(2023, 1, 16, 0, 0);
    private static final double FROM = 8 * 3600;
    private static final double UNTIL = 32 * 3600;
    private static final Counters COUNTERS = new Counters(991, 74, 6970, 994, 1196, 7172, 128);

    private FakeRuns() {}

    /** The room falls from 20 °C at 18:00 to 8 °C at 08:00, so it is below 10 °C from 05:40 on. */
    static Night cold() {
        return night("Tern Ledge & Sons", wetTrace(), K + 10, ledger(true), true);
    }

    /** The same, held to a limit that it keeps. */
    static Night warm() {
        return night("Tern Ledge & Sons", wetTrace(), K + 5, ledger(true), true);
    }

    /** A name that would like to be markup, and one that would like to steer a terminal. */
    static Night hostile() {
        return night("<script>alert(\"a&b\")</script>\u001b[31m\nred", wetTrace(), K + 5, ledger(true), true);
    }

    /** No water at all. */
    static Night dry() {
        return night("dry", dryTrace(), K + 10, ledger(false), false);
    }

    private static Night night(String name, Trace trace, double limit, Ledger ledger, boolean wet) {
        return new Night(
                name,
                START,
                FROM,
                UNTIL,
                "settled: this day and habit repeated until nothing changes",
                new Night.Morning(31.5 * 3600, K + 8.43, wet ? K + 33 : Double.NaN, wet ? K + 43 : Double.NaN),
                new Night.Lowest(UNTIL, K + 8),
                limit,
                21.25,
                wet ? 11.5 : Double.POSITIVE_INFINITY,
                new Night.Boil(wet ? 6.4 : Double.POSITIVE_INFINITY, wet ? 17 * 3600 : Double.NaN, wet ? "coil" : ""),
                0,
                0,
                wet ? 1.25 : 0,
                wet ? 18.6 : Double.NaN,
                25,
                5,
                wet ? 0.152 : 0,
                wet ? new Night.Charge(16 * 3600, 12 * KWH, 10.5 * KWH, K + 92, 15.25 * 3600) : null,
                wet
                        ? List.of(
                                new Night.ToBoil("coil", 6.2, 16.4 * 3600),
                                new Night.ToBoil("box", Double.POSITIVE_INFINITY, Double.NaN))
                        : List.of(),
                0.34,
                K + 171,
                wet ? List.of(new Night.Drive("pump", 59, 3.4), new Night.Drive("fan", 1, 13.3)) : List.of(),
                ledger,
                trace,
                events(wet),
                COUNTERS,
                12.5);
    }

    private static List<Event> events(boolean wet) {
        List<Event> all = new ArrayList<>();
        for (int h = 8; h <= 16; h += 2) all.add(new Event.Loaded(h * 3600, 5));
        if (wet) {
            all.add(new Event.Switched(9 * 3600, "pump", true));
            all.add(new Event.Switched(9.5 * 3600, "fan", false));
            all.add(new Event.Switched(12.4 * 3600, "pump", false));
            all.add(new Event.Switched(18.2 * 3600, "fan", true));
        }
        return all;
    }

    private static Ledger ledger(boolean wet) {
        Map<String, Double> accounts = new LinkedHashMap<>();
        accounts.put("walls", 26 * KWH);
        accounts.put("sun", -15 * KWH);
        accounts.put("roofs", 17 * KWH);
        accounts.put("floor", 18 * KWH);
        accounts.put("air", 21.5 * KWH);
        accounts.put("flue gas", 6 * KWH);
        accounts.put("smoke", 21 * KWH);
        accounts.put("electricity", -0.5 * KWH);
        if (wet) accounts.put("evaporation", 0.8 * KWH);
        Map<String, Double> meters = new LinkedHashMap<>();
        meters.put("heat released", 100 * KWH);
        if (wet) meters.put("fire to water", 15.2 * KWH);
        double out = 94 + (wet ? 0.8 : 0);
        return new Ledger(100 * KWH, accounts, meters, (100 - out - 0.2) * KWH, 0.2 * KWH);
    }

    private static Trace wetTrace() {
        List<String> names = List.of(
                "room",
                "outdoors",
                "contents",
                "stove",
                "collar",
                "flue top",
                "draft",
                "air",
                "bed",
                "boil margin",
                "store 1",
                "store 2",
                "store mean",
                "water coil",
                "minutes to boil coil",
                "loop flow",
                "runs pump",
                "runs fan",
                "power heat released",
                "power fire to water",
                "power store's heat to room",
                "power store to room",
                "power store to floor");
        return trace(names);
    }

    private static Trace dryTrace() {
        return trace(List.of(
                "room",
                "outdoors",
                "contents",
                "stove",
                "collar",
                "flue top",
                "draft",
                "air",
                "bed",
                "boil margin",
                "power heat released",
                "power stove to room"));
    }

    private static Trace trace(List<String> names) {
        List<double[]> rows = new ArrayList<>();
        for (int i = 0; i <= 288; i++) {
            double hour = 8 + i / 12.0;
            double[] row = new double[names.size()];
            for (int c = 0; c < row.length; c++) row[c] = value(names.get(c), hour);
            rows.add(row);
        }
        return trace(FROM, 300, names, rows);
    }

    private static double value(String name, double hour) {
        boolean burning = hour < 18;
        double fire = burning ? Math.abs(Math.sin(Math.PI * (hour - 8) / 4)) : 0;
        double room = K + (burning ? 8 + 1.2 * (hour - 8) : 20 - 12 * (hour - 18) / 14);
        return switch (name) {
            case "room", "contents" -> room;
            case "outdoors" -> K - 8 + 4 * Math.cos(Math.PI * (hour - 15) / 12);
            case "stove", "collar", "flue top" -> room + 150 * fire;
            case "draft" -> 4;
            case "air" -> 0.005;
            case "bed" -> 5 * fire;
            case "boil margin" -> Double.POSITIVE_INFINITY;
            case "store 1" -> K + (burning ? 40 + hour : 58 - (hour - 18));
            case "store 2" -> K + (burning ? 20 + hour : 38 - 0.5 * (hour - 18));
            case "store mean" -> K + (burning ? 30 + hour : 48 - 0.75 * (hour - 18));
            case "water coil" -> K + 20 + 60 * fire;
            case "minutes to boil coil" -> fire > 0.1 ? 6.2 / fire : Double.POSITIVE_INFINITY;
            case "loop flow" -> 0.1 * fire;
            case "runs pump" -> fire > 0.3 ? 1 : 0;
            case "runs fan" -> burning ? 0 : 1;
            case "power heat released" -> 12000 * fire;
            case "power fire to water" -> 2000 * fire;
            default -> 150;
        };
    }

    /** Traces are made by runs alone; here one is filled as a run would. */
    static Trace trace(double from, double step, List<String> names, List<double[]> rows) {
        try {
            Constructor<Trace> maker =
                    Trace.class.getDeclaredConstructor(double.class, double.class, int.class, List.class);
            maker.setAccessible(true);
            Method add = Trace.class.getDeclaredMethod("add", double[].class);
            add.setAccessible(true);
            Trace trace = maker.newInstance(from, step, rows.size(), names);
            for (double[] row : rows) add.invoke(trace, (Object) row);
            return trace;
        } catch (ReflectiveOperationException e) {
            throw new AssertionError("a trace is made differently now", e);
        }
    }

    /** Sixty days from the first of December. */
    static Season season() {
        LocalDateTime start = LocalDateTime.of(2022, 12, 1, 0, 0);
        List<String> names = List.of("room", "outdoors", "store mean", "stove");
        List<double[]> rows = new ArrayList<>();
        for (int i = 0; i < 60 * 24; i++) {
            double day = i / 24.0;
            double swing = 4 * Math.cos(2 * Math.PI * (day - 0.7));
            double cold = -8 - 6 * Math.sin(day / 6);
            rows.add(new double[] {
                K + 14 + swing + 0.3 * cold, K + cold + swing, K + 50 + cold + swing, K + 100 + 20 * swing
            });
        }
        List<Season.Month> months = List.of(
                new Season.Month(YearMonth.of(2022, 12), 31, 700, 40, K + 11, K - 8, 800),
                new Season.Month(YearMonth.of(2023, 1), 29, 760, 96, K + 10, K - 10, 812));
        List<Season.Morning> mornings = List.of(
                new Season.Morning(45.3125 * 86400, K + 4.8, K - 18, K + 27),
                new Season.Morning(44.3125 * 86400, K + 5.6, K - 16, K + 28));
        return new Season(
                "Tern Ledge & Sons",
                start,
                0,
                60 * 86400,
                "settled to the mean day of the 21 days before, then the last 3 days as they were",
                months,
                mornings,
                K + 10,
                136,
                new Night.Boil(-0.5, 10.7 * 86400, "coil"),
                34,
                0.8,
                12,
                14,
                1460,
                292,
                0.1,
                List.of(new Night.Drive("pump", 800, 300), new Night.Drive("fan", 90, 700)),
                ledger(true),
                trace(0, 3600, names, rows),
                COUNTERS,
                900);
    }
}
