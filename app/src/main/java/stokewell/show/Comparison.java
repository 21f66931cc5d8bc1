package stokewell.show;

import java.util.ArrayList;
import java.util.List;
import stokewell.file.UnitSystem;
import stokewell.run.Night;

/** Two nights beside each other, with what changed. */
final class Comparison {

    /** One line: a value of each night, and by how much they differ. */
    record Row(String what, String before, String now, String change) {}

    private final Night before;
    private final Night now;
    private final Measure as;
    private final List<Row> rows = new ArrayList<>();

    private Comparison(Night before, Night now, Measure as) {
        this.before = before;
        this.now = now;
        this.as = as;
    }

    static List<Row> rows(Night before, Night now, CardFacts facts, Measure as) {
        Comparison both = new Comparison(before, now, as);
        both.fill(facts);
        return both.rows;
    }

    static void write(Plain out, Night before, Night now, CardFacts facts, UnitSystem units) {
        out.raw(line("", Plain.name(facts.beforeName(), 13), "now", "change"));
        for (Row r : rows(before, now, facts, Measure.plain(units))) {
            out.raw(line(r.what(), r.before(), r.now(), r.change()));
        }
    }

    private static String line(String what, String before, String now, String change) {
        return (Plain.left(Plain.name(what, 34), 35) + Plain.right(before, 14) + "  " + Plain.right(now, 13) + "  "
                        + Plain.right(change, 13))
                .stripTrailing();
    }

    private void fill(CardFacts facts) {
        temperature(
                "room at " + Clock.hour(now.at(now.morning().time())),
                1,
                before.morning().room(),
                now.morning().room());
        temperature(
                "lowest room of the night",
                1,
                before.lowestRoom().room(),
                now.lowestRoom().room());
        temperature("store mean", 0, before.morning().storeMean(), now.morning().storeMean());
        temperature("store top", 0, before.morning().storeTop(), now.morning().storeTop());
        number("hours above " + as.setting(now.limit()), before.hoursAbove(), now.hoursAbove(), 1, "h");
        number("hours carried after the fire", before.hoursCarried(), now.hoursCarried(), 1, "h");
        double a = before.boil().margin();
        double b = now.boil().margin();
        number("least margin to boiling", as.differenceNumber(a), as.differenceNumber(b), 0, as.differenceUnit());
        number("boiling", before.boilingMinutes(), now.boilingMinutes(), 0, "min");
        for (Night.ToBoil was : before.minutesToBoil()) {
            for (Night.ToBoil is : now.minutesToBoil()) {
                if (!was.pickup().equals(is.pickup())) continue;
                number("minutes to boil, " + is.pickup(), was.minutes(), is.minutes(), 0, "min");
            }
        }
        number("wood", as.massNumber(before.wood()), as.massNumber(now.wood()), 0, as.massUnit());
        double density = facts.stackedDensity();
        Stack stack = facts.stack();
        number("", stack.count(before.wood(), density), stack.count(now.wood(), density), 3, stack.word);
        number("fire's heat into water", 100 * before.waterShare(), 100 * now.waterShare(), 0, "%");
        for (Night.Drive was : before.drives()) {
            for (Night.Drive is : now.drives()) {
                if (!was.name().equals(is.name())) continue;
                number(is.name() + ", starts", was.starts(), is.starts(), 0, "");
                number(is.name() + ", runs", was.hours(), is.hours(), 1, "h");
            }
        }
    }

    private void temperature(String what, int decimals, double a, double b) {
        if (!Double.isFinite(a) && !Double.isFinite(b)) return;
        String change = signed(as.differenceNumber(b - a), decimals, as.differenceUnit());
        rows.add(new Row(what, as.temperature(a, decimals), as.temperature(b, decimals), change));
    }

    private void number(String what, double a, double b, int decimals, String unit) {
        if (!Double.isFinite(a) && !Double.isFinite(b) && Double.compare(a, b) == 0) return;
        rows.add(new Row(what, told(a, decimals, unit), told(b, decimals, unit), signed(b - a, decimals, unit)));
    }

    private static String told(double value, int decimals, String unit) {
        if (Double.isInfinite(value)) return "all";
        if (Double.isNaN(value)) return "-";
        return (Numbers.of(value, decimals) + " " + unit).strip();
    }

    private static String signed(double change, int decimals, String unit) {
        if (!Double.isFinite(change)) return "";
        String number = Numbers.of(change, decimals);
        if (number.equals(Numbers.of(0, decimals))) return "same";
        return ((change > 0 ? "+" : "") + number + " " + unit).strip();
    }
}
