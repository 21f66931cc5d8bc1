package stokewell.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Findings being gathered. */
final class Findings {

    private final List<Finding> list = new ArrayList<>();

    void add(Level level, String id, String what, String why, String remedy, String basis) {
        list.add(new Finding(id, level, what, why, remedy, basis));
    }

    void stop(String id, String what, String why, String remedy, String basis) {
        add(Level.STOP, id, what, why, remedy, basis);
    }

    void mend(String id, String what, String why, String remedy, String basis) {
        add(Level.MEND, id, what, why, remedy, basis);
    }

    void mind(String id, String what, String why, String remedy, String basis) {
        add(Level.MIND, id, what, why, remedy, basis);
    }

    void fine(String id, String what, String why, String basis) {
        add(Level.FINE, id, what, why, "", basis);
    }

    /** An open question: not known is not fine. */
    void ask(String id, String entry, String question, String why, String basis) {
        ask(Level.MIND, id, entry, question, why, basis);
    }

    /** An open question that weighs as much as what would happen. */
    void ask(Level level, String id, String entry, String question, String why, String basis) {
        add(level, id, question, why, "Answer it in the rig file: " + entry + ".", basis);
    }

    List<Finding> list() {
        return list;
    }

    /** A nought that rounding left with a sign. */
    private static final Pattern UNSIGNED = Pattern.compile("(?<![\\w.])-(0(?:\\.0+)?)(?![\\w.])");

    /** A text with numbers; a nought has no sign. */
    static String say(String format, Object... values) {
        return UNSIGNED.matcher(String.format(Locale.ROOT, format, values)).replaceAll("$1");
    }
}
