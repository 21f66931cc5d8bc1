package stokewell.file;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stokewell.loop.PipeSize;
import stokewell.rig.Dimension;
import stokewell.rig.Entry;
import stokewell.rig.RigFault;

/** Reads single words of a rig file: numbers with units, names from a list, yes and no, and what has a reader of its own. */
final class Words {

    private final Map<Class<?>, LeafReader<?>> leaves;
    private final Told told;

    Words(Map<Class<?>, LeafReader<?>> leaves, Told told) {
        this.leaves = leaves;
        this.told = told;
    }

    Object leaf(LeafReader<?> leaf, Tree.Word word, Place place) {
        try {
            Object value = leaf.read(word.text);
            told.note(word.text, place, value);
            return value;
        } catch (QuantityFault fault) {
            return told.fault(word, place.path(), fault.what, fault.right);
        } catch (RigFault refusal) {
            String value = Quantity.write(refusal.value, refusal.dimension, UnitSystem.SI, 3);
            String what = refusal.why.isEmpty()
                    ? refusal.entry + " " + outside(value, refusal.dimension, UnitSystem.SI, refusal.low, refusal.high)
                    : Told.sentence(refusal.why);
            return told.fault(word, place.path(), "\"" + word.text + "\": " + what, "Write " + leaf.example() + ".");
        }
    }

    Object scalar(Tree.Word word, Place place) {
        Class<?> type = place.raw();
        if (word.empty()) {
            return told.fault(
                    word,
                    place.path(),
                    place.key() + " has nothing after it.",
                    "Write " + example(place) + ", or take the line out.");
        }
        if (type == String.class) {
            if (!word.text.isEmpty()) told.note(word.text, place, word.text);
            return word.text;
        }
        if (type.isEnum()) return constant(word, place);
        if (type == boolean.class || type == Boolean.class) return yesOrNo(word, place);
        return number(word, place);
    }

    private Object constant(Tree.Word word, Place place) {
        String plain = Key.plain(word.text);
        List<String> names = new ArrayList<>();
        for (Object each : place.raw().getEnumConstants()) {
            String name = Key.of((Enum<?>) each);
            if (Key.plain(name).equals(plain)) {
                told.note(word.text, place, each);
                return each;
            }
            names.add(name);
        }
        String near = Key.nearest(word.text, names);
        return told.fault(
                word,
                place.path(),
                "\"" + Told.shortened(word.text) + "\" is not known here."
                        + (near.isEmpty() ? "" : " Nearest: " + near + "."),
                "Known: " + String.join(", ", names) + ".");
    }

    private Object yesOrNo(Tree.Word word, Place place) {
        String plain = Key.plain(word.text);
        boolean yes = plain.equals("yes") || plain.equals("true") || plain.equals("on");
        if (!yes && !plain.equals("no") && !plain.equals("false") && !plain.equals("off")) {
            return told.fault(
                    word,
                    place.path(),
                    "\"" + Told.shortened(word.text) + "\" is neither yes nor no.",
                    "Write yes or no.");
        }
        told.note(word.text, place, yes);
        return yes;
    }

    private Object number(Tree.Word word, Place place) {
        Class<?> type = place.raw();
        boolean whole = type == int.class || type == Integer.class || type == long.class || type == Long.class;
        Entry entry = place.entry();
        Dimension is = whole && entry.is() == Dimension.NONE ? Dimension.COUNT : entry.is();
        Quantity read;
        try {
            read = entry.pipe() ? bore(word.text, entry) : Quantity.read(word.text, is, entry.low(), entry.high());
        } catch (QuantityFault fault) {
            return told.fault(word, place.path(), fault.what, fault.right);
        }
        double si = settle(read.si(), entry);
        if (!(si >= entry.low() && si <= entry.high())) return outOfRange(word, read, place);
        told.note(word.text, place, si);
        if (type == int.class || type == Integer.class) return (int) si;
        if (type == long.class || type == Long.class) return (long) si;
        if (type == double.class || type == Double.class) return si;
        throw new IllegalStateException("no way to read a " + type + " for " + place.path());
    }

    /** The bore of a pipe: its width, or the pipe as it is sold. */
    private static Quantity bore(String text, Entry entry) {
        Optional<PipeSize> sold = PipeSize.named(text);
        if (sold.isPresent()) return new Quantity(sold.get().inner(), entry.is(), Double.NaN, null);
        try {
            return Quantity.read(text, entry.is(), entry.low(), entry.high());
        } catch (QuantityFault fault) {
            throw new QuantityFault(
                    fault.what, fault.right + "\nOr name the pipe: 1 in sch 40, 3/4 in type L, 22 x 1 mm copper.");
        }
    }

    /** A limit itself stays within it through the rounding of its unit. */
    private static double settle(double si, Entry entry) {
        if (Math.abs(si - entry.low()) <= 1e-12 * Math.abs(si)) return entry.low();
        if (Math.abs(si - entry.high()) <= 1e-12 * Math.abs(si)) return entry.high();
        return si;
    }

    private Object outOfRange(Tree.Word word, Quantity read, Place place) {
        Entry entry = place.entry();
        UnitSystem system = read.system() == null ? UnitSystem.SI : read.system();
        String other = Quantity.otherUnit(read, entry.low(), entry.high());
        return told.fault(
                word,
                place.path(),
                outside(word.text, entry.is(), system, entry.low(), entry.high()),
                other.isEmpty() ? entry.says() : "Did you mean " + other + "?   " + place.key() + ": " + other);
    }

    static String outside(String text, Dimension is, UnitSystem system, double low, double high) {
        if (high == Double.POSITIVE_INFINITY) return text + " is below " + Quantity.write(low, is, system, 3) + ".";
        if (low == Double.NEGATIVE_INFINITY) return text + " is above " + Quantity.write(high, is, system, 3) + ".";
        return text + " is outside " + Quantity.write(low, is, system, 3) + " to " + Quantity.write(high, is, system, 3)
                + ".";
    }

    /** What could be written in a place. */
    String example(Place place) {
        Class<?> type = place.raw();
        if (leaves.containsKey(type)) return leaves.get(type).example();
        if (Shape.list(place.type())) return "a list";
        if (type == String.class) return "…";
        if (type == boolean.class || type == Boolean.class) return "yes or no";
        if (type.isEnum()) {
            List<String> words = new ArrayList<>();
            for (Object each : type.getEnumConstants()) words.add(Key.of((Enum<?>) each));
            return String.join(", ", words);
        }
        if (Shape.kinds(type)) return String.join(" or ", Shape.kindNames(type));
        if (type.isRecord()) {
            List<String> needed = new ArrayList<>();
            for (RecordComponent each : Shape.components(type)) if (Shape.required(each)) needed.add(each.getName());
            return "with " + String.join(", ", needed.isEmpty() ? Shape.keys(type) : needed);
        }
        return type == int.class && place.entry().is() == Dimension.NONE
                ? "12"
                : Quantity.like(place.entry().is());
    }
}
