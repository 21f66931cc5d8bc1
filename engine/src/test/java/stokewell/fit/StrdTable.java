package stokewell.fit;

import java.util.Locale;

/** Prints how near the optimiser and the whole estimator come to NIST's certified values, problem by problem. */
final class StrdTable {

    private StrdTable() {}

    public static void main(String[] args) {
        for (String name : Strd.MODELS.keySet()) {
            Strd s = Strd.read(name);
            StringBuilder row =
                    new StringBuilder("| " + name + " | " + s.level().toLowerCase(Locale.ROOT) + " |");
            for (double[] start : s.starts()) {
                double digits = s.digits(s.optimised(start));
                row.append(digits < 1 ? " none |" : String.format(Locale.ROOT, " %.1f |", digits));
            }
            Estimate e = s.estimated(s.starts()[1]);
            row.append(
                    e == null
                            ? " none |"
                            : String.format(
                                    Locale.ROOT, " %.2f%s |", s.away(e.value()), e.settled() ? "" : ", not at rest"));
            System.out.println(row);
        }
    }
}
