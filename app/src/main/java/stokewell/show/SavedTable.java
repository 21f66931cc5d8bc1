package stokewell.show;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import stokewell.fit.Saving;
import stokewell.fit.WoodDay;
import stokewell.fit.WoodLine;
import stokewell.fit.WoodLoad;
import stokewell.fit.WoodPeriod;
import stokewell.fit.WoodRow;

/** The numbers behind a comparison, as rows of words. */
final class SavedTable {

    private final SavedFacts facts;
    private final Saving s;
    private final Measure as;
    private final String plusMinus;

    SavedTable(SavedFacts facts, Measure as, String plusMinus) {
        this.facts = facts;
        s = facts.saving();
        this.as = as;
        this.plusMinus = plusMinus;
    }

    /** Both periods side by side: what, before, after. */
    List<String[]> periods() {
        List<String[]> rows = new ArrayList<>();
        rows.add(new String[] {"from", date(s.before(), 0), date(s.after(), 0)});
        rows.add(new String[] {"to", date(s.before(), -1), date(s.after(), -1)});
        rows.add(new String[] {
            "days used of",
            s.daysBefore() + " of " + s.before().days().size(),
            s.daysAfter() + " of " + s.after().days().size()
        });
        rows.add(new String[] {"wood a day", wood(mean(s.before())), wood(mean(s.after()))});
        rows.add(new String[] {
            "outdoors", as.temperature(outdoors(s.before()), 1), as.temperature(outdoors(s.after()), 1)
        });
        if (facts.room()) {
            rows.add(new String[] {
                "room", as.temperature(SavedWords.room(s.before()), 1), as.temperature(SavedWords.room(s.after()), 1)
            });
        }
        if (s.sunMeasured()) {
            rows.add(new String[] {"sun a day", sun(s.rowsBefore()), sun(s.rowsAfter())});
        }
        if (s.comfort()) {
            rows.add(new String[] {"for each degree", perDegree(s.rowsBefore()), perDegree(s.rowsAfter())});
        }
        return rows;
    }

    /** How the line fits and how the interval comes about. */
    List<NightFacts.Fact> figures() {
        WoodLine l = s.line();
        List<NightFacts.Fact> all = new ArrayList<>();
        all.add(new NightFacts.Fact("line before", line(l)));
        if (s.afterLine() != null) all.add(new NightFacts.Fact("line after", line(s.afterLine())));
        all.add(new NightFacts.Fact(
                "fits",
                "CV(RMSE) " + Numbers.percent(l.cvRmse()) + ", R2 " + Numbers.of(l.explained(), 2) + ", " + l.rows()
                        + " rows of " + s.length() + (s.length() == 1 ? " day" : " days")));
        all.add(new NightFacts.Fact(
                "neighbours alike",
                "rho " + Numbers.of(l.rho(), 2) + ": " + l.rows() + " rows are worth " + Numbers.of(l.effective(), 0)));
        if (Double.isFinite(s.drift())) {
            all.add(new NightFacts.Fact(
                    "last third before",
                    "predicted from the rest " + Numbers.of(100 * s.drift(), 0) + " % off (NMBE)"));
        }
        all.add(new NightFacts.Fact("saved", share(s.share().value(), s.share().half()) + ", 90 % interval"));
        all.add(new NightFacts.Fact(
                "by the short formula",
                plusMinus + " " + Numbers.of(100 * s.published(), 0) + " % (ASHRAE Guideline 14, Reddy and Claridge)"));
        all.add(new NightFacts.Fact("the guideline's test", guideline()));
        return all;
    }

    /** Guideline 14 asks for an uncertainty below half the saving, at 68 %. */
    private String guideline() {
        double ratio = s.share().half() * 0.994 / 1.645 / Math.abs(s.share().value());
        if (!(s.share().value() > 0)) return "not met: nothing was saved";
        boolean met = ratio <= 0.5;
        return (met ? "met" : "not met") + ": at 68 % the uncertainty is "
                + (ratio > 9.995 ? "over ten times" : Numbers.percent(ratio) + " of") + " the saving; 50 % is asked";
    }

    private String share(double value, double half) {
        return Numbers.of(100 * value, 1) + " " + plusMinus + " " + Numbers.of(100 * half, 1) + " %";
    }

    private static String sun(List<WoodRow> rows) {
        double mean = rows.stream().mapToDouble(r -> r.days() * r.sun()).sum()
                / rows.stream().mapToInt(WoodRow::days).sum();
        return Numbers.of(SavedWords.SUN_DAY * mean, 1) + " kWh/m2";
    }

    private String line(WoodLine l) {
        if (!l.sunny()) return bare(l);
        return bare(l) + (l.sun() < 0 ? "; less " : "; more ")
                + as.mass(Math.abs(l.sun()) / SavedWords.SUN_DAY / WoodLoad.TOLD_HEAT, 2)
                + " a day for each kWh/m2 of sun a day";
    }

    private String bare(WoodLine l) {
        String x = s.comfort() ? "room less outdoors" : "cold outdoors";
        if (Double.isInfinite(l.bend())) return flat(l.flat()) + slope(l) + " of " + x + ", no bend";
        String bend = s.comfort()
                ? "beyond " + as.difference(l.bend(), 1)
                : "below " + as.temperature(273.15 - l.bend(), 1) + " outdoors";
        return wood(l.flat()) + " a day, and " + slope(l) + " " + bend;
    }

    /** What a straight line has at no degree; nothing where it shows as none. */
    private String flat(double joules) {
        double shown = as.massNumber(joules / WoodLoad.TOLD_HEAT);
        return Math.abs(shown) < 0.05 ? "" : Numbers.of(shown, 1) + " " + as.massUnit() + " a day, and ";
    }

    /** All the wood over all the degrees, flat part and slope together: what was burnt, not how a line leans. */
    private String perDegree(List<WoodRow> rows) {
        double wood = rows.stream().mapToDouble(r -> r.days() * r.perDay()).sum();
        double degrees = rows.stream().mapToDouble(r -> r.days() * r.mean()).sum();
        return perDegree(wood / degrees);
    }

    private String slope(WoodLine l) {
        return perDegree(l.slope());
    }

    private String perDegree(double joules) {
        double perKelvin = joules / WoodLoad.TOLD_HEAT;
        double shown = as.massNumber(perKelvin) / as.differenceNumber(1);
        return Numbers.of(shown, 2) + " " + as.massUnit() + "/" + as.differenceUnit() + " a day";
    }

    private String wood(double joules) {
        return as.mass(joules / WoodLoad.TOLD_HEAT, 1);
    }

    private static double mean(WoodPeriod p) {
        return good(p).stream().mapToDouble(WoodDay::heat).average().orElse(Double.NaN);
    }

    private static double outdoors(WoodPeriod p) {
        return good(p).stream().mapToDouble(WoodDay::outdoor).average().orElse(Double.NaN);
    }

    private static List<WoodDay> good(WoodPeriod p) {
        return p.days().stream().filter(d -> d.flaw() == WoodDay.Flaw.NONE).toList();
    }

    private static String date(WoodPeriod p, int place) {
        List<WoodDay> days = p.days();
        LocalDate date = days.get(place < 0 ? days.size() - 1 : place).date();
        return Clock.date(date.atStartOfDay());
    }
}
