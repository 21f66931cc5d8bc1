package stokewell.file;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stokewell.rig.Dimension;
import stokewell.rig.Entry;
import stokewell.rig.RigFault;

/**
 * Makes records of a tree, by their entries alone. Never stops at a fault: what cannot be made becomes a hole, a record
 * with a hole is not made, and everything else is still looked at.
 */
final class Binder {

    /** Stands for a value that could not be made. */
    static final Object HOLE = new Object();

    private final String file;
    private final Map<Class<?>, LeafReader<?>> leaves;
    private final List<Fault> faults;
    private final List<DefaultUsed> defaults;
    /** Every value read, in the order of the entries. */
    final List<RigValue> values = new ArrayList<>();

    Binder(String file, Map<Class<?>, LeafReader<?>> leaves, List<Fault> faults, List<DefaultUsed> defaults) {
        this.file = file;
        this.leaves = leaves;
        this.faults = faults;
        this.defaults = defaults;
    }

    /** What is being made: its type, its entry, its path in the file, and whether a default stands in for it. */
    private record Place(Type type, Entry entry, String path, boolean standIn) {

        Class<?> raw() {
            return Shape.raw(type);
        }

        String key() {
            return path.substring(path.lastIndexOf('.') + 1);
        }

        Place as(Type other) {
            return new Place(other, entry, path, standIn);
        }

        Place inside(String step, Type other) {
            return new Place(other, entry, join(path, step), standIn);
        }
    }

    /** The root record, or {@link #HOLE}. */
    Object root(Class<?> type, Tree tree) {
        return value(tree, new Place(type, null, "", false));
    }

    private Object value(Tree tree, Place place) {
        Class<?> type = place.raw();
        if (Shape.optional(place.type)) {
            Object held = none(tree) ? null : value(tree, place.as(Shape.held(place.type)));
            return held == HOLE ? HOLE : Optional.ofNullable(held);
        }
        if (Shape.list(place.type)) return list(tree, place);
        if (place.entry != null && place.entry.orElse().equals(Entry.ABSENT) && none(tree) && type != String.class) {
            return absent(place.type);
        }
        if (tree instanceof Tree.Word word) {
            LeafReader<?> leaf = leaves.get(type);
            if (leaf != null && !word.empty()) return leaf(leaf, word, place);
            if (!type.isRecord() && !Shape.kinds(type)) return scalar(word, place);
        } else if (!type.isRecord() && !Shape.kinds(type)) {
            return fault(tree, place.path, "Here must be one value, not several.", "Write " + example(place) + ".");
        }
        if (Shape.kinds(type)) return kind(tree, place);
        if (tree instanceof Tree.Branch branch) return record(branch, place);
        if (tree instanceof Tree.Word word && word.empty()) return record(Tree.Branch.empty(tree.spot), place);
        if (tree instanceof Tree.Word word && Shape.clockSpan(type)) return clockSpan(word, place);
        RecordComponent alone = Shape.shortForm(type);
        if (alone != null && (tree instanceof Tree.Word || Shape.list(alone.getGenericType()))) {
            return record(Tree.Branch.of(alone.getName(), tree), place);
        }
        String entries = String.join(", ", Shape.keys(type));
        return fault(
                tree, place.path, "Here belong the entries of " + name(place) + ".", "Its entries: " + entries + ".");
    }

    private static boolean none(Tree tree) {
        return tree instanceof Tree.Word word
                && word.plain
                && Key.plain(word.text).equals("none");
    }

    private Object list(Tree tree, Place place) {
        Type held = Shape.held(place.type);
        if (tree instanceof Tree.Items items) {
            List<Object> made = new ArrayList<>();
            boolean holes = false;
            for (int i = 0; i < items.list.size(); i++) {
                Object each = value(items.list.get(i), element(place, held, i));
                holes |= each == HOLE;
                made.add(each);
            }
            return holes ? HOLE : List.copyOf(made);
        }
        if (tree instanceof Tree.Word word && (word.empty() || none(word))) return List.of();
        Class<?> type = Shape.raw(held);
        if (tree instanceof Tree.Word word && (leaves.containsKey(type) || !type.isRecord() && !Shape.kinds(type))) {
            return list(new Tree.Items(word.spot, split(word), true), place);
        }
        return fault(
                tree, place.path, "Here belongs a list.", "Begin each of its entries with a dash: - " + first(type));
    }

    private static Place element(Place place, Type held, int index) {
        return place.inside(Integer.toString(index), held);
    }

    private static String first(Class<?> type) {
        return Shape.kinds(type)
                ? Shape.kindNames(type).get(0) + ":"
                : type.isRecord() ? Shape.keys(type).get(0) + ":" : "…";
    }

    /** {@code 12 mm plywood, 90 mm mineral wool}: a comma, a blank and a number part two layers. */
    static List<Tree> split(Tree.Word word) {
        List<Tree> parts = new ArrayList<>();
        String text = word.text;
        int from = 0;
        for (int i = text.indexOf(", "); i >= 0; i = text.indexOf(", ", i + 1)) {
            int next = i + 1;
            while (next < text.length() && text.charAt(next) == ' ') next++;
            if (next == text.length() || text.charAt(next) == 'k' && text.indexOf('=', next) > 0) continue;
            parts.add(new Tree.Word(word.spot, text.substring(from, i).strip(), true));
            from = next;
        }
        parts.add(new Tree.Word(word.spot, text.substring(from).strip(), true));
        return parts;
    }

    private Object kind(Tree tree, Place place) {
        Class<?> family = place.raw();
        if (tree instanceof Tree.Word word && !word.empty()) {
            Class<?> kind = Shape.kind(family, word.text);
            if (kind == null) return noKind(word, place);
            lean(word.text, place);
            return record(Tree.Branch.empty(tree.spot), place.inside(Key.of(kind), kind));
        }
        if (tree instanceof Tree.Branch branch && branch.keys.size() == 1) {
            Class<?> kind = Shape.kind(family, branch.keys.get(0).text);
            if (kind == null) return noKind(branch.keys.get(0), place);
            return value(branch.values.get(0), place.inside(Key.of(kind), kind));
        }
        String known = "Known: " + String.join(", ", Shape.kindNames(family)) + ".";
        if (tree instanceof Tree.Branch branch && branch.keys.size() > 1) {
            String what = "Here belongs one kind of " + name(place) + ", and its entries two spaces further in.";
            return fault(branch.keys.get(1), place.path, what, known);
        }
        return fault(tree, place.path, "Which kind of " + name(place) + "?", known);
    }

    private Object noKind(Tree.Word word, Place place) {
        List<String> names = Shape.kindNames(place.raw());
        return fault(
                word, place.path, unlike(word.text, names, name(place)), "Known: " + String.join(", ", names) + ".");
    }

    private static String unlike(String word, List<String> names, String name) {
        String near = Key.nearest(word, names);
        return "\"" + shortened(word) + "\" is no kind of " + name + "."
                + (near.isEmpty() ? "" : " Nearest: " + near + ".");
    }

    private Object record(Tree.Branch branch, Place place) {
        Class<?> type = place.raw();
        RecordComponent[] components = Shape.components(type);
        Tree[] given = new Tree[components.length];
        int before = faults.size();
        for (int i = 0; i < branch.keys.size(); i++) {
            Tree.Word key = branch.keys.get(i);
            int index = Shape.indexOf(type, key.text);
            if (index < 0) {
                unknown(key, type, place);
            } else if (given[index] != null) {
                String what = "The entry stands twice, first in line " + given[index].spot.line() + ".";
                fault(key, join(place.path, components[index].getName()), what, "Take one out.");
            } else {
                given[index] = branch.values.get(i);
            }
        }
        Object[] values = new Object[components.length];
        boolean holes = false;
        for (int i = 0; i < components.length; i++) {
            Entry entry = Shape.entry(components[i]);
            boolean standIn = place.standIn || given[i] == null;
            Place inner = new Place(
                    components[i].getGenericType(), entry, join(place.path, components[i].getName()), standIn);
            values[i] = given[i] != null ? value(given[i], inner) : missing(branch, inner);
            holes |= values[i] == HOLE;
        }
        if (holes || faults.size() > before) return HOLE;
        return construct(type, values, branch, place, given, components);
    }

    private Object missing(Tree.Branch branch, Place inner) {
        String orElse = inner.entry.orElse();
        if (orElse.equals(Entry.ABSENT)) return absent(inner.type);
        if (orElse.equals(Entry.REQUIRED)) {
            String what = inner.key() + " is missing. " + inner.entry.says();
            return fault(branch, inner.path, what, "Add " + inner.key() + ": " + example(inner) + ".");
        }
        return value(standIn(orElse), inner);
    }

    /** The tree of a default's text. */
    static Tree standIn(String orElse) {
        Tree.Spot spot = Tree.Spot.NOWHERE;
        if (orElse.equals("{}")) return Tree.Branch.empty(spot);
        if (orElse.startsWith("{") || orElse.startsWith("[")) {
            List<Fault> broken = new ArrayList<>();
            Tree tree = TreeReader.read("default", orElse, broken);
            if (tree == null) throw new IllegalStateException("default cannot be read: " + orElse + " " + broken);
            return tree;
        }
        return new Tree.Word(spot, orElse, !orElse.isEmpty());
    }

    private static Object absent(Type type) {
        Class<?> raw = Shape.raw(type);
        if (raw == List.class) return List.of();
        if (raw == Optional.class) return Optional.empty();
        return raw == double.class ? (Object) Double.NaN : null;
    }

    private void note(String text, Place place, Object value) {
        lean(text, place);
        if (place.entry == null) return;
        values.add(new RigValue(place.path, place.entry, place.raw(), value, place.standIn ? null : text));
    }

    private void lean(String text, Place place) {
        if (place.standIn && place.entry != null) defaults.add(new DefaultUsed(place.path, text, place.entry.says()));
    }

    private void unknown(Tree.Word key, Class<?> type, Place place) {
        List<String> keys = Shape.keys(type);
        String near = Key.nearest(key.text, keys);
        fault(
                key,
                join(place.path, shortened(key.text)),
                "No such entry in " + name(place) + "." + (near.isEmpty() ? "" : " Nearest: " + near + "."),
                "Known: " + String.join(", ", keys) + ".");
    }

    private Object construct(
            Class<?> type,
            Object[] values,
            Tree.Branch branch,
            Place place,
            Tree[] given,
            RecordComponent[] components) {
        try {
            Class<?>[] types = new Class<?>[components.length];
            for (int i = 0; i < types.length; i++) types[i] = components[i].getType();
            Constructor<?> constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            return refused(e.getCause(), type, branch, place, given);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot make " + type, e);
        }
    }

    private Object refused(Throwable cause, Class<?> type, Tree.Branch branch, Place place, Tree[] given) {
        if (cause instanceof RigFault refusal) {
            int index = Shape.indexOf(type, refusal.entry);
            Tree at = index >= 0 && given[index] != null ? given[index] : branch;
            String path = index >= 0 ? join(place.path, Shape.keys(type).get(index)) : place.path;
            if (refusal.why.isEmpty()) {
                String value = Quantity.write(refusal.value, refusal.dimension, UnitSystem.SI, 3);
                String what = outside(value, refusal.dimension, UnitSystem.SI, refusal.low, refusal.high);
                return fault(at, path, what, "Give a value within that.");
            }
            return fault(at, path, sentence(refusal.why), refusal.remedy.isEmpty() ? "" : sentence(refusal.remedy));
        }
        if (cause instanceof Error error) throw error;
        return fault(branch, place.path, "These do not fit together: " + cause.getMessage(), "Check them.");
    }

    private Object leaf(LeafReader<?> leaf, Tree.Word word, Place place) {
        try {
            Object value = leaf.read(word.text);
            note(word.text, place, value);
            return value;
        } catch (QuantityFault fault) {
            return fault(word, place.path, fault.what, fault.right);
        } catch (RigFault refusal) {
            String value = Quantity.write(refusal.value, refusal.dimension, UnitSystem.SI, 3);
            String what = refusal.why.isEmpty()
                    ? refusal.entry + " " + outside(value, refusal.dimension, UnitSystem.SI, refusal.low, refusal.high)
                    : sentence(refusal.why);
            return fault(word, place.path, "\"" + word.text + "\": " + what, "Write " + leaf.example() + ".");
        }
    }

    private Object clockSpan(Tree.Word word, Place place) {
        Tree.Branch parts = span(word, place.raw());
        if (parts != null) return record(parts, place);
        String what = "\"" + shortened(word.text) + "\" is not a span of the day.";
        return fault(word, place.path, what, "Write 16:00-22:00.");
    }

    /** {@code 16:00-22:00} as the two entries of its record, or {@code null}. */
    static Tree.Branch span(Tree.Word word, Class<?> type) {
        String text = word.text.replace('–', '-');
        int dash = text.indexOf('-');
        if (dash < 0) dash = text.indexOf(" to ");
        if (dash <= 0) return null;
        List<String> keys = Shape.keys(type);
        String second =
                text.substring(dash + (text.charAt(dash) == '-' ? 1 : 4)).strip();
        List<Tree.Word> names =
                List.of(new Tree.Word(word.spot, keys.get(0), true), new Tree.Word(word.spot, keys.get(1), true));
        List<Tree> values = List.of(
                new Tree.Word(word.spot, text.substring(0, dash).strip(), true),
                new Tree.Word(word.spot, second, true));
        return new Tree.Branch(word.spot, names, values, true);
    }

    private Object scalar(Tree.Word word, Place place) {
        Class<?> type = place.raw();
        if (word.empty()) {
            return fault(
                    word,
                    place.path,
                    place.key() + " has nothing after it.",
                    "Write " + example(place) + ", or take the line out.");
        }
        if (type == String.class) {
            if (!word.text.isEmpty()) note(word.text, place, word.text);
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
                note(word.text, place, each);
                return each;
            }
            names.add(name);
        }
        String near = Key.nearest(word.text, names);
        return fault(
                word,
                place.path,
                "\"" + shortened(word.text) + "\" is not known here."
                        + (near.isEmpty() ? "" : " Nearest: " + near + "."),
                "Known: " + String.join(", ", names) + ".");
    }

    private Object yesOrNo(Tree.Word word, Place place) {
        String plain = Key.plain(word.text);
        boolean yes = plain.equals("yes") || plain.equals("true") || plain.equals("on");
        if (!yes && !plain.equals("no") && !plain.equals("false") && !plain.equals("off")) {
            return fault(
                    word, place.path, "\"" + shortened(word.text) + "\" is neither yes nor no.", "Write yes or no.");
        }
        note(word.text, place, yes);
        return yes;
    }

    private Object number(Tree.Word word, Place place) {
        Class<?> type = place.raw();
        boolean whole = type == int.class || type == Integer.class || type == long.class || type == Long.class;
        Entry entry = place.entry;
        Dimension is = whole && entry.is() == Dimension.NONE ? Dimension.COUNT : entry.is();
        Quantity read;
        try {
            read = Quantity.read(word.text, is, entry.low(), entry.high());
        } catch (QuantityFault fault) {
            return fault(word, place.path, fault.what, fault.right);
        }
        double si = settle(read.si(), entry);
        if (!(si >= entry.low() && si <= entry.high())) return outOfRange(word, read, place);
        note(word.text, place, si);
        if (type == int.class || type == Integer.class) return (int) si;
        if (type == long.class || type == Long.class) return (long) si;
        if (type == double.class || type == Double.class) return si;
        throw new IllegalStateException("no way to read a " + type + " for " + place.path);
    }

    /** A limit itself stays within it through the rounding of its unit. */
    private static double settle(double si, Entry entry) {
        if (Math.abs(si - entry.low()) <= 1e-12 * Math.abs(si)) return entry.low();
        if (Math.abs(si - entry.high()) <= 1e-12 * Math.abs(si)) return entry.high();
        return si;
    }

    private Object outOfRange(Tree.Word word, Quantity read, Place place) {
        Entry entry = place.entry;
        UnitSystem system = read.system() == null ? UnitSystem.SI : read.system();
        String other = Quantity.otherUnit(read, entry.low(), entry.high());
        return fault(
                word,
                place.path,
                outside(word.text, entry.is(), system, entry.low(), entry.high()),
                other.isEmpty() ? entry.says() : "Did you mean " + other + "?   " + place.key() + ": " + other);
    }

    private static String outside(String text, Dimension is, UnitSystem system, double low, double high) {
        if (high == Double.POSITIVE_INFINITY) return text + " is below " + Quantity.write(low, is, system, 3) + ".";
        if (low == Double.NEGATIVE_INFINITY) return text + " is above " + Quantity.write(high, is, system, 3) + ".";
        return text + " is outside " + Quantity.write(low, is, system, 3) + " to " + Quantity.write(high, is, system, 3)
                + ".";
    }

    /** What could be written in a place. */
    private String example(Place place) {
        Class<?> type = place.raw();
        if (leaves.containsKey(type)) return leaves.get(type).example();
        if (Shape.list(place.type)) return "a list";
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
        return type == int.class && place.entry.is() == Dimension.NONE ? "12" : Quantity.like(place.entry.is());
    }

    private static String name(Place place) {
        if (place.path.isEmpty()) return Key.words(place.raw().getSimpleName());
        return Character.isDigit(place.key().charAt(0))
                ? Key.words(place.raw().getSimpleName())
                : Key.words(place.key());
    }

    /** By {@code concat}, since the first {@code +} of a program costs its start some 20 ms. */
    private static String join(String path, String step) {
        return path.isEmpty() ? step : path.concat(".").concat(step);
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 39) + "…";
    }

    private static String sentence(String words) {
        if (words.isEmpty()) return "";
        String upper = Character.toUpperCase(words.charAt(0)) + words.substring(1);
        return upper.endsWith(".") || upper.endsWith("?") ? upper : upper + ".";
    }

    private Object fault(Tree at, String path, String what, String right) {
        String source = at.spot.source().isEmpty() ? file : at.spot.source();
        faults.add(new Fault(source, at.spot.line(), path, what, right));
        return HOLE;
    }
}
