package stokewell.file;

import java.util.ArrayList;
import java.util.List;

/** What is told of a file while it is read: its faults, the defaults that it leans on, and every value. */
final class Told {

    /** Stands for a value that could not be made. */
    static final Object HOLE = new Object();

    private final String file;
    private final List<Fault> faults;
    private final List<DefaultUsed> defaults;
    /** Every value read, in the order of the entries. */
    final List<RigValue> values = new ArrayList<>();

    Told(String file, List<Fault> faults, List<DefaultUsed> defaults) {
        this.file = file;
        this.faults = faults;
        this.defaults = defaults;
    }

    /** How many faults there are so far. */
    int faults() {
        return faults.size();
    }

    void note(String text, Place place, Object value) {
        lean(text, place);
        if (place.entry() == null) return;
        values.add(new RigValue(place.path(), place.entry(), place.raw(), value, place.standIn() ? null : text));
    }

    void lean(String text, Place place) {
        if (place.standIn() && place.entry() != null) defaults.add(new DefaultUsed(place.path(), text, place.entry()));
    }

    Object fault(Tree at, String path, String what, String right) {
        String source = at.spot.source().isEmpty() ? file : at.spot.source();
        faults.add(new Fault(source, at.spot.line(), path, what, right));
        return HOLE;
    }

    static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 39) + "…";
    }

    static String sentence(String words) {
        if (words.isEmpty()) return "";
        String upper = Character.toUpperCase(words.charAt(0)) + words.substring(1);
        return upper.endsWith(".") || upper.endsWith("?") ? upper : upper + ".";
    }
}
