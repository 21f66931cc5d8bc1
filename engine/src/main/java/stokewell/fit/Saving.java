package stokewell.fit;

import java.util.List;

/**
 * What was saved between two periods, for the same weather and, where the room was measured, the same warmth.
 *
 * <p>Whole-facility comparison (IPMVP option C, ASHRAE Guideline 14): a line is fitted to the period before, carried to the
 * days of the period after, and what was really burnt is taken from it. The error of the line in the mean of those days is
 * that of least squares with all its parameters, the scatter of what was burnt comes from the period after, pooled with
 * that of the period before, which counts as at most 10 degrees of freedom, both with
 * neighbouring rows' likeness in them ({@link WoodLine}) and 1 + 2/n' for few rows, as the guideline has it; degrees of freedom
 * after Welch and Satterthwaite.
 *
 * @param before     the first period
 * @param after      the second
 * @param line       of the period before
 * @param afterLine  of the period after by itself, for the picture
 * @param length     days in a row
 * @param rowsBefore that the line was fitted to
 * @param rowsAfter  that were compared
 * @param comfort    whether the room's temperature counts
 * @param adjusted   wood a day that the old rig would have burnt on the days after, J
 * @param burnt      wood a day that was burnt, J
 * @param share      saved of the adjusted, with its 90 % interval
 * @param lineShare  standard error of the share by the line alone: it stays however long one logs
 * @param dayShare   standard error of the share by the scatter of one day: it shrinks with the square root of the days
 * @param freedomLine of the line
 * @param freedomDays of the scatter, for the days there are
 * @param published  half the interval by the short formula of the guideline, for comparison
 * @param outside    share of the days after that are colder or milder than any before
 * @param drift      what the first two thirds of the period before say too much of its last third, as a share
 */
public record Saving(
        WoodPeriod before,
        WoodPeriod after,
        WoodLine line,
        WoodLine afterLine,
        int length,
        List<WoodRow> rowsBefore,
        List<WoodRow> rowsAfter,
        boolean comfort,
        double adjusted,
        double burnt,
        Figure share,
        double lineShare,
        double dayShare,
        double freedomLine,
        double freedomDays,
        double published,
        double outside,
        double drift) {

    /** Probability of every interval. */
    public static final double SURE = 0.9;

    /** Scatter about the line beyond which longer rows are taken: Guideline 14 for short steps. */
    public static final double CV_SHORT = 0.30;

    /** The same for months. */
    public static final double CV_MONTH = 0.15;

    /** Rows that each period must give before it is put to longer ones. */
    static final int ROWS_BEFORE = 10;

    static final int ROWS_AFTER = 6;

    private static final int[] LENGTHS = {1, 3, 7};
    /** Days in each period without which nothing is compared. */
    public static final int LEAST_BEFORE = 10;

    public static final int LEAST_AFTER = 5;

    /** Nobody logs longer than that for one question, days. */
    public static final int LONGEST = 240;

    /** What follows. */
    public enum Verdict {
        LESS,
        MORE,
        NOT_PROVEN
    }

    /**
     * Compares.
     *
     * @param base of the degree-days, K; NaN to fit it or to take the room's temperature
     * @throws IllegalArgumentException where there are too few days, or too mild ones
     */
    public static Saving of(WoodPeriod before, WoodPeriod after, boolean comfort, double base) {
        double bend = comfort || Double.isNaN(base) ? Double.NaN : 273.15 - base;
        int length = 1;
        for (int tried : LENGTHS) {
            List<WoodRow> rows = before.rows(tried, comfort);
            if (tried > 1
                    && (rows.size() < ROWS_BEFORE || after.rows(tried, comfort).size() < ROWS_AFTER)) break;
            length = tried;
            if (rows.size() > 4 && line(rows, bend, Double.NaN).cvRmse() <= CV_SHORT) break;
        }
        List<WoodRow> a = before.rows(length, comfort);
        List<WoodRow> b = after.rows(length, comfort);
        enough("before", days(a), LEAST_BEFORE);
        enough("after", days(b), LEAST_AFTER);
        return told(before, after, comfort, bend, length, a, b);
    }

    private static int days(List<WoodRow> rows) {
        return rows.stream().mapToInt(WoodRow::days).sum();
    }

    private static void enough(String which, int days, int least) {
        if (days < least) {
            throw new IllegalArgumentException("the period " + which + " has " + days + (days == 1 ? " day" : " days")
                    + " that can be used, and needs " + least);
        }
    }

    private static WoodLine line(List<WoodRow> rows, double bend, double moreSun) {
        if (Double.isFinite(moreSun)) return WoodLine.withSun(rows, bend, moreSun);
        return Double.isNaN(bend) ? WoodLine.of(rows) : WoodLine.of(rows, bend);
    }

    private static Saving told(
            WoodPeriod before,
            WoodPeriod after,
            boolean comfort,
            double bend,
            int length,
            List<WoodRow> a,
            List<WoodRow> b) {
        // not a number where the sun of some row was not measured
        double moreSun = sun(b) - sun(a);
        WoodLine line = line(a, bend, moreSun);
        WoodLine own = b.size() < 5 ? null : line.alike(b);
        int days = days(b);
        double adjusted = 0;
        double burnt = 0;
        for (WoodRow r : b) {
            adjusted += r.days() * line.at(r) / days;
            burnt += r.days() * r.perDay() / days;
        }
        if (!(adjusted > 0)) {
            throw new IllegalArgumentException(
                    "the days after are milder than the line of the days before reaches: it would burn nothing on them");
        }
        double fraction = 1 - burnt / adjusted;
        // the ratio of two means with independent errors
        double lineShare = burnt / adjusted * Math.sqrt(few(line) * line.variance(b)) / adjusted;
        Scatter s = Scatter.of(line, own, b, burnt);
        double scatterShare = s.error() / adjusted;
        double total = Math.hypot(lineShare, scatterShare);
        double freedom = together(lineShare, line.freedom(), scatterShare, s.freedom());
        double half = WoodLine.quantile(freedom, SURE) * total;
        double n = line.rows();
        double m = b.size();
        double published = WoodLine.quantile(line.freedom(), SURE)
                * 1.26
                * line.cvRmse()
                * Math.sqrt(n / line.effective() * few(line) / m);
        return new Saving(
                before,
                after,
                line,
                own,
                length,
                a,
                b,
                comfort,
                adjusted,
                burnt,
                new Figure(fraction, half),
                lineShare,
                scatterShare * Math.sqrt(days),
                line.freedom(),
                s.freedom(),
                published,
                outside(a, b),
                drift(a, bend, line.showsSun() ? moreSun : Double.NaN));
    }

    /** What few rows add, as in the guideline's formula: that rho is an estimate, too, is covered by it. */
    private static double few(WoodLine line) {
        return 1 + 2 / line.effective();
    }

    /**
     * The scatter of what was burnt.
     *
     * @param error   standard error of the mean of the days after
     * @param freedom of that
     */
    private record Scatter(double error, double freedom) {

        /** Pooled from both periods; with few rows after, as large for its mean as in the period before. */
        static Scatter of(WoodLine line, WoodLine own, List<WoodRow> b, double burnt) {
            double m = b.size();
            double lean = line.error() * burnt / line.mean();
            double borrowed = few(line) * lean * lean * line.rows() / line.effective();
            if (own == null) return new Scatter(Math.sqrt(borrowed / m), line.freedom());
            double found = few(own) * own.error() * own.error() * own.rows() / own.effective();
            // few rows tell little of their own scatter: both are weighed by what they know
            double mine = own.freedom();
            double lent = Math.min(line.freedom(), 10);
            double pooled = (mine * found + lent * borrowed) / (mine + lent);
            return new Scatter(Math.sqrt(pooled / m), mine + lent);
        }
    }

    /** Welch and Satterthwaite. */
    private static double together(double one, double freedomOne, double other, double freedomOther) {
        double a = one * one;
        double b = other * other;
        double below = a * a / freedomOne + b * b / freedomOther;
        return below == 0 ? 1e6 : Math.max(1, (a + b) * (a + b) / below);
    }

    private static double outside(List<WoodRow> a, List<WoodRow> b) {
        double low = a.stream().mapToDouble(WoodRow::mean).min().orElse(Double.NaN);
        double high = a.stream().mapToDouble(WoodRow::mean).max().orElse(Double.NaN);
        long n = b.stream().filter(r -> r.mean() < low || r.mean() > high).count();
        return n / (double) b.size();
    }

    private static double drift(List<WoodRow> a, double bend, double moreSun) {
        int cut = (2 * a.size()) / 3;
        if (cut < 5) return Double.NaN;
        WoodLine first = line(a.subList(0, cut), bend, moreSun);
        double said = 0;
        double was = 0;
        for (WoodRow r : a.subList(cut, a.size())) {
            said += r.days() * first.at(r);
            was += r.days() * r.perDay();
        }
        return said / was - 1;
    }

    /** Whether the sun of both periods was measured. */
    public boolean sunMeasured() {
        return WoodLine.hasSun(rowsBefore) && WoodLine.hasSun(rowsAfter);
    }

    /** Mean sun of rows, W/m2. */
    static double sun(List<WoodRow> rows) {
        return rows.stream().mapToDouble(r -> r.days() * r.sun()).sum() / days(rows);
    }

    /** How much more sun the days after had, W/m2 in the mean. */
    public double moreSun() {
        return sun(rowsAfter) - sun(rowsBefore);
    }

    /** Days of the period after that were compared. */
    public int daysAfter() {
        return days(rowsAfter);
    }

    /** Days of the period before that were used. */
    public int daysBefore() {
        return days(rowsBefore);
    }

    public Verdict verdict() {
        if (share.low() > 0) return Verdict.LESS;
        return share.high() < 0 ? Verdict.MORE : Verdict.NOT_PROVEN;
    }

    /** Half the interval of the share once so many days after can be compared, if scatter and share stay as they are. */
    public double halfAfter(int days) {
        double scatter = dayShare / Math.sqrt(days);
        double freedom = freedomDays + Math.max(0, days - daysAfter()) / (double) length;
        return WoodLine.quantile(together(lineShare, freedomLine, scatter, freedom), SURE)
                * Math.hypot(lineShare, scatter);
    }

    /**
     * Days to log on until the interval leaves out 0, if all stays as it now looks: then it is as likely as not that it does.
     * 0 where it does already, -1 where no number up to {@link #LONGEST} is enough.
     */
    public int daysToGo() {
        if (verdict() != Verdict.NOT_PROVEN) return 0;
        for (int more = 1; more <= LONGEST; more++) {
            if (halfAfter(daysAfter() + more) < Math.abs(share.value())) return more;
        }
        return -1;
    }
}
