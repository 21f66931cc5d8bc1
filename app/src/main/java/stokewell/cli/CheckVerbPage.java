package stokewell.cli;

import java.util.List;
import stokewell.check.Check;
import stokewell.check.Drill;
import stokewell.check.Drills;
import stokewell.check.Finding;
import stokewell.check.Level;
import stokewell.rig.Rig;
import stokewell.run.Night;
import stokewell.show.DrillChart;

/** The findings on a rig as text: the verdict first, then worst first. */
final class CheckVerbPage {

    private static final int WIDE = 100;
    private static final String INDENT = "      ";

    private CheckVerbPage() {}

    static String text(Rig rig, Drills.Outcome outcome, Check check, boolean all) {
        StringBuilder b = new StringBuilder();
        b.append(rig.name()).append(": ").append(verdict(check)).append('\n');
        b.append(minutes(outcome)).append("\n\n");
        section(b, "STOP: do not light a fire", check.at(Level.STOP));
        section(b, "MEND before it is relied on", check.at(Level.MEND));
        section(b, "MIND: open questions, and what to watch", check.at(Level.MIND));
        List<Finding> fine = check.at(Level.FINE);
        if (all) {
            section(b, "In order", fine);
        } else if (!fine.isEmpty()) {
            b.append(fine.size()).append(" more looked at and in order; --all lists them.\n");
        }
        b.append("A reckoning, not an approval: local code and a licensed person decide.\n");
        return b.toString();
    }

    static String verdict(Check check) {
        int stop = check.at(Level.STOP).size();
        int mend = check.at(Level.MEND).size();
        int mind = check.at(Level.MIND).size();
        if (stop > 0) return "STOP. " + check.findings().get(0).what();
        if (mend > 0)
            return mend + " to mend, " + mind + " to mind. "
                    + check.findings().get(0).what();
        return mind > 0 ? "nothing to mend, " + mind + " to mind." : "nothing found.";
    }

    /** Minutes to boil, which stand on page one. */
    private static String minutes(Drills.Outcome outcome) {
        StringBuilder b = new StringBuilder("If the flow stops at the worst moment: ");
        for (Night.ToBoil t : outcome.day().minutesToBoil()) {
            b.append(t.pickup())
                    .append(" boils in ")
                    .append(DrillChart.span(60 * t.minutes()))
                    .append("; ");
        }
        for (Drill d : outcome.drills()) {
            if (d.fault() == stokewell.check.Fault.POWER_OUT && d.possible()) {
                b.append("in a power cut: ")
                        .append(DrillChart.span(d.firstBoil()))
                        .append('.');
                return b.toString();
            }
        }
        return "There is no water to boil.";
    }

    private static void section(StringBuilder b, String title, List<Finding> findings) {
        if (findings.isEmpty()) return;
        b.append(title).append('\n');
        for (Finding f : findings) {
            wrap(b, "  - ", f.what() + "  [" + f.id() + "]");
            wrap(b, INDENT, f.why());
            if (!f.remedy().isEmpty()) wrap(b, INDENT + "-> ", f.remedy());
            wrap(b, INDENT, "(" + f.basis() + ")");
        }
        b.append('\n');
    }

    /** Words in lines of at most {@link #WIDE} signs, the later ones under the first. */
    static void wrap(StringBuilder b, String lead, String text) {
        String indent = " ".repeat(lead.length());
        StringBuilder line = new StringBuilder(lead);
        boolean begun = false;
        for (String word : text.split(" ", -1)) {
            if (begun && line.length() + 1 + word.length() > WIDE) {
                b.append(line).append('\n');
                line = new StringBuilder(indent);
                begun = false;
            }
            if (begun) line.append(' ');
            line.append(word);
            begun = true;
        }
        b.append(line).append('\n');
    }
}
