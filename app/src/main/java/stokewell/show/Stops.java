package stokewell.show;

import java.util.ArrayList;
import java.util.List;
import stokewell.check.Check;
import stokewell.check.Finding;
import stokewell.check.Level;

/** How a run says what a check has found: no output shows a rig that must not be lit as fine. */
final class Stops {

    private Stops() {}

    private static List<Finding> of(Check check) {
        return check == null ? List.of() : check.at(Level.STOP);
    }

    /** What forbids a fire, in short; empty if nothing does. */
    static String forbids(Check check) {
        List<Finding> stops = of(check);
        if (stops.isEmpty()) return "";
        return stops.get(0).what() + (stops.size() == 1 ? "" : " And " + (stops.size() - 1) + " more.");
    }

    /** The sentence that leads, after what forbids the fire. */
    static String lead(Check check, String sentence) {
        String forbids = forbids(check);
        if (forbids.isEmpty()) return sentence;
        return "STOP: do not light a fire on this rig. " + forbids + " If it were mended: "
                + Character.toLowerCase(sentence.charAt(0)) + sentence.substring(1);
    }

    /** Each stop in full, for a reader. */
    static List<String> told(Check check) {
        List<String> texts = new ArrayList<>();
        for (Finding f : of(check))
            texts.add("STOP: do not light a fire. " + f.what() + " " + f.why() + " " + f.remedy());
        return texts;
    }

    /** Each stop on a line of its own, for the head of a table. */
    static List<String> lines(Check check) {
        List<String> texts = new ArrayList<>();
        for (Finding f : of(check))
            texts.add("# STOP, do not light a fire on this rig: " + f.what() + " [" + f.id() + "]");
        return texts;
    }

    /** What else the check has found, and where to read it; empty if no check was made. */
    static String rest(Check check) {
        if (check == null) return "";
        int mend = check.at(Level.MEND).size();
        int mind = check.at(Level.MIND).size();
        if (!check.whole() && mend == 0) {
            return "Of this rig itself at least " + mind + (mind == 1 ? " thing is" : " things are")
                    + " to mind or to answer; what must be mended shows when every fault is tried: ./stokewell check RIG tells all.";
        }
        return "Of this rig itself " + (check.whole() ? "" : "at least ") + mend
                + (mend == 1 ? " thing is" : " things are") + " to mend and " + mind + " to mind or to answer"
                + (check.whole() ? "" : ", before every fault is tried") + ": ./stokewell check RIG tells all.";
    }
}
