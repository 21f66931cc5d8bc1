package stokewell.cli;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stokewell.file.Quantity;
import stokewell.file.UnitSystem;
import stokewell.rig.Dimension;
import stokewell.run.Night;

/** Two nights beside each other, with what changed between them. */
final class SideBySide {

    /** One line: a value of each night, and how they differ. */
    record Row(String what, String before, String after, String change) {}

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final double JOULES_PER_KWH = 3.6e6;
    /** Signs that a number in the change column must differ by to be told, as a share of a degree. */
    private static final double SAME = 0.005;

    private final UnitSystem units;
    private final Night before;
    private final Night after;
    private final List<Row> rows = new ArrayList<>();

    private SideBySide(Night before, Night after, UnitSystem units) {
        this.before = before;
        this.after = after;
        this.units = units;
    }

    /** The rows. */
    static List<Row> rows(Night before, Night after, UnitSystem units) {
        SideBySide both = new SideBySide(before, after, units);
        both.fill();
        return both.rows;
    }

    /** The rows as a table. */
    static String table(Night before, Night after, String first, String second, UnitSystem units) {
        List<Row> rows = new ArrayList<>();
        rows.add(new Row("", first, second, "change"));
        rows.addAll(rows(before, after, units));
        int[] wide = new int[4];
        for (Row r : rows) {
            wide[0] = Math.max(wide[0], r.what.length());
            wide[1] = Math.max(wide[1], r.before.length());
            wide[2] = Math.max(wide[2], r.after.length());
            wide[3] = Math.max(wide[3], r.change.length());
        }
        StringBuilder out = new StringBuilder();
        String form = "%-" + wide[0] + "s  %" + wide[1] + "s  %" + wide[2] + "s  %" + wide[3] + "s";
        for (Row r : rows) {
            out.append(String.format(form, r.what, r.before, r.after, r.change).stripTrailing())
                    .append('\n');
        }
        return out.toString();
    }

    private void fill() {
        temperature(
                "room at " + clock(before, before.morning().time()),
                before.morning().room(),
                after.morning().room());
        temperature(
                "lowest room of the night",
                before.lowestRoom().room(),
                after.lowestRoom().room());
        number(
                "hours above " + Quantity.write(after.limit(), Dimension.TEMPERATURE, units, 3),
                before.hoursAbove(),
                after.hoursAbove(),
                "h",
                1);
        number("hours carried after the fire", before.hoursCarried(), after.hoursCarried(), "h", 1);
        temperature(
                "store, mean, in the morning",
                before.morning().storeMean(),
                after.morning().storeMean());
        temperature(
                "store, top, in the morning",
                before.morning().storeTop(),
                after.morning().storeTop());
        temperature("hottest store of the run", hottestStore(before), hottestStore(after));
        mass("wood", before.wood(), after.wood());
        number("loads", before.loads(), after.loads(), "", 0);
        number("share of the fire into water", 100 * before.waterShare(), 100 * after.waterShare(), "%", 0);
        energy(
                "fire into water",
                before.ledger().meter("fire to water"),
                after.ledger().meter("fire to water"));
        difference(
                "least margin to boiling", before.boil().margin(), after.boil().margin());
        for (Night.ToBoil b : before.minutesToBoil()) {
            for (Night.ToBoil a : after.minutesToBoil()) {
                if (a.pickup().equals(b.pickup())) {
                    number("least minutes to boil, " + a.pickup(), b.minutes(), a.minutes(), "min", 1);
                }
            }
        }
        for (Night.Drive b : before.drives()) {
            for (Night.Drive a : after.drives()) {
                if (a.name().equals(b.name())) {
                    number(a.name() + ", starts", b.starts(), a.starts(), "", 0);
                    number(a.name() + ", runs", b.hours(), a.hours(), "h", 1);
                }
            }
        }
        number("flue top below its dew point", 100 * before.flueBelowDew(), 100 * after.flueBelowDew(), "%", 0);
    }

    /** Hottest mean of the store over a night, K; NaN without a store. */
    static double hottestStore(Night night) {
        if (!night.trace().has("store mean")) return Double.NaN;
        float most = 0;
        for (float t : night.trace().column("store mean")) most = Math.max(most, t);
        return most;
    }

    private void temperature(String what, double a, double b) {
        if (Double.isNaN(a) && Double.isNaN(b)) return;
        rows.add(new Row(what, degrees(a), degrees(b), step(a, b)));
    }

    private void difference(String what, double a, double b) {
        if (Double.isInfinite(a) && Double.isInfinite(b)) return;
        rows.add(new Row(what, kelvins(a), kelvins(b), step(a, b)));
    }

    private String degrees(double kelvin) {
        if (Double.isNaN(kelvin)) return "-";
        return units == UnitSystem.US
                ? String.format(Locale.ROOT, "%.1f F", (kelvin - 273.15) * 1.8 + 32)
                : String.format(Locale.ROOT, "%.1f C", kelvin - 273.15);
    }

    private String kelvins(double kelvin) {
        if (!Double.isFinite(kelvin)) return "-";
        return units == UnitSystem.US
                ? String.format(Locale.ROOT, "%.1f F", kelvin * 1.8)
                : String.format(Locale.ROOT, "%.1f K", kelvin);
    }

    private String step(double a, double b) {
        double d = b - a;
        if (!Double.isFinite(d)) return "";
        if (Math.abs(d) < SAME) return "same";
        return units == UnitSystem.US
                ? String.format(Locale.ROOT, "%+.1f F", d * 1.8)
                : String.format(Locale.ROOT, "%+.1f K", d);
    }

    private void number(String what, double a, double b, String unit, int decimals) {
        if (Double.isNaN(a) && Double.isNaN(b)) return;
        String plain = "%." + decimals + "f" + (unit.isEmpty() ? "" : " " + unit.replace("%", "%%"));
        String signed = "%+." + decimals + "f" + (unit.isEmpty() ? "" : " " + unit.replace("%", "%%"));
        double d = b - a;
        String change = !Double.isFinite(d)
                ? ""
                : Math.abs(d) < 0.5 * Math.pow(10, -decimals) ? "same" : String.format(Locale.ROOT, signed, d);
        rows.add(new Row(what, shown(plain, a), shown(plain, b), change));
    }

    private static String shown(String form, double value) {
        if (Double.isNaN(value)) return "-";
        return Double.isInfinite(value) ? "all" : String.format(Locale.ROOT, form, value);
    }

    private void mass(String what, double a, double b) {
        if (units == UnitSystem.US) number(what, a / 0.45359237, b / 0.45359237, "lb", 1);
        else number(what, a, b, "kg", 1);
    }

    private void energy(String what, double a, double b) {
        if (units == UnitSystem.US) number(what, a / 1.05505585e6, b / 1.05505585e6, "kBtu", 0);
        else number(what, a / JOULES_PER_KWH, b / JOULES_PER_KWH, "kWh", 1);
    }

    private static String clock(Night night, double time) {
        LocalDateTime at = night.at(time);
        return at == null ? "the end" : CLOCK.format(at);
    }
}
