package stokewell.file;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stokewell.rig.Entry;
import stokewell.rig.RigFault;

/**
 * Makes records of a tree, by their entries alone. Never stops at a fault: what cannot be made becomes a hole, a record
 * with a hole is not made, and everything else is still looked at.
 */
final class Binder {

    private final Map<Class<?>, LeafReader<?>> leaves;
    private final Told told;
    private final Words words;

    Binder(Map<Class<?>, LeafReader<?>> leaves, Told told) {
        this.leaves = leaves;
        this.told = told;
        words = new Words(leaves, told);
    }

    /** The root record, or {@link Told#HOLE}. */
    Object root(Class<?> type, Tree tree) {
        return value(tree, new Place(type, null, "", false));
    }

    private Object value(Tree tree, Place place) {
        Class<?> type = place.raw();
        if (Shape.optional(place.type())) {
            Object held = none(tree) ? null : value(tree, place.as(Shape.held(place.type())));
            return held == Told.HOLE ? Told.HOLE : Optional.ofNullable(held);
        }
        if (Shape.list(place.type())) return list(tree, place);
        if (place.entry() != null
                && place.entry().orElse().equals(Entry.ABSENT)
                && none(tree)
                && type != String.class) {
            return absent(place.type());
        }
        if (tree instanceof Tree.Word word) {
            LeafReader<?> leaf = leaves.get(type);
            if (leaf != null && !word.empty()) return words.leaf(leaf, word, place);
            if (!type.isRecord() && !Shape.kinds(type)) return words.scalar(word, place);
        } else if (!type.isRecord() && !Shape.kinds(type)) {
            return told.fault(
                    tree, place.path(), "Here must be one value, not several.", "Write " + words.example(place) + ".");
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
        return told.fault(
                tree,
                place.path(),
                "Here belong the entries of " + place.name() + ".",
                "Its entries: " + entries + ".");
    }

    private static boolean none(Tree tree) {
        return tree instanceof Tree.Word word
                && word.plain
                && Key.plain(word.text).equals("none");
    }

    private Object list(Tree tree, Place place) {
        Type held = Shape.held(place.type());
        if (tree instanceof Tree.Items items) {
            List<Object> made = new ArrayList<>();
            boolean holes = false;
            for (int i = 0; i < items.list.size(); i++) {
                Object each = value(items.list.get(i), element(place, held, i));
                // an entry that is none is taken away
                if (each == null) continue;
                holes |= each == Told.HOLE;
                made.add(each);
            }
            return holes ? Told.HOLE : List.copyOf(made);
        }
        if (tree instanceof Tree.Word word && (word.empty() || none(word))) return List.of();
        Class<?> type = Shape.raw(held);
        if (tree instanceof Tree.Word word && (leaves.containsKey(type) || !type.isRecord() && !Shape.kinds(type))) {
            return list(new Tree.Items(word.spot, split(word), true), place);
        }
        return told.fault(
                tree, place.path(), "Here belongs a list.", "Begin each of its entries with a dash: - " + first(type));
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
            told.lean(word.text, place);
            return record(Tree.Branch.empty(tree.spot), place.inside(Key.of(kind), kind));
        }
        if (tree instanceof Tree.Branch branch && branch.keys.size() == 1) {
            Class<?> kind = Shape.kind(family, branch.keys.get(0).text);
            if (kind == null) return noKind(branch.keys.get(0), place);
            return value(branch.values.get(0), place.inside(Key.of(kind), kind));
        }
        String known = "Known: " + String.join(", ", Shape.kindNames(family)) + ".";
        if (tree instanceof Tree.Branch branch && branch.keys.size() > 1) {
            String what = "Here belongs one kind of " + place.name() + ", and its entries two spaces further in.";
            return told.fault(branch.keys.get(1), place.path(), what, known);
        }
        return told.fault(tree, place.path(), "Which kind of " + place.name() + "?", known);
    }

    private Object noKind(Tree.Word word, Place place) {
        List<String> names = Shape.kindNames(place.raw());
        return told.fault(
                word, place.path(), unlike(word.text, names, place.name()), "Known: " + String.join(", ", names) + ".");
    }

    private static String unlike(String word, List<String> names, String name) {
        String near = Key.nearest(word, names);
        return "\"" + Told.shortened(word) + "\" is no kind of " + name + "."
                + (near.isEmpty() ? "" : " Nearest: " + near + ".");
    }

    private Object record(Tree.Branch branch, Place place) {
        Class<?> type = place.raw();
        RecordComponent[] components = Shape.components(type);
        Tree[] given = new Tree[components.length];
        int before = told.faults();
        for (int i = 0; i < branch.keys.size(); i++) {
            Tree.Word key = branch.keys.get(i);
            int index = Shape.indexOf(type, key.text);
            if (index < 0) {
                unknown(key, type, place);
            } else if (given[index] != null) {
                String what = "The entry stands twice, first in line " + given[index].spot.line() + ".";
                told.fault(key, place.at(components[index].getName()), what, "Take one out.");
            } else {
                given[index] = branch.values.get(i);
            }
        }
        Object[] values = new Object[components.length];
        boolean holes = false;
        for (int i = 0; i < components.length; i++) {
            Entry entry = Shape.entry(components[i]);
            boolean standIn = place.standIn() || given[i] == null;
            Place inner = new Place(components[i].getGenericType(), entry, place.at(components[i].getName()), standIn);
            values[i] = given[i] != null ? value(given[i], inner) : missing(branch, inner);
            holes |= values[i] == Told.HOLE;
        }
        if (holes || told.faults() > before) return Told.HOLE;
        return construct(type, values, branch, place, given, components);
    }

    private Object missing(Tree.Branch branch, Place inner) {
        String orElse = inner.entry().orElse();
        if (orElse.equals(Entry.ABSENT)) return absent(inner.type());
        if (orElse.equals(Entry.REQUIRED)) {
            String what = inner.key() + " is missing. " + inner.entry().says();
            return told.fault(branch, inner.path(), what, "Add " + inner.key() + ": " + words.example(inner) + ".");
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

    private void unknown(Tree.Word key, Class<?> type, Place place) {
        List<String> keys = Shape.keys(type);
        String near = Key.nearest(key.text, keys);
        told.fault(
                key,
                place.at(Told.shortened(key.text)),
                "No such entry in " + place.name() + "." + (near.isEmpty() ? "" : " Nearest: " + near + "."),
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
            String path = index >= 0 ? place.at(Shape.keys(type).get(index)) : place.path();
            if (refusal.why.isEmpty()) {
                String value = Quantity.write(refusal.value, refusal.dimension, UnitSystem.SI, 3);
                String what = Words.outside(value, refusal.dimension, UnitSystem.SI, refusal.low, refusal.high);
                return told.fault(at, path, what, "Give a value within that.");
            }
            return told.fault(
                    at,
                    path,
                    Told.sentence(refusal.why),
                    refusal.remedy.isEmpty() ? "" : Told.sentence(refusal.remedy));
        }
        if (cause instanceof Error error) throw error;
        return told.fault(branch, place.path(), "These do not fit together: " + cause.getMessage(), "Check them.");
    }

    private Object clockSpan(Tree.Word word, Place place) {
        Tree.Branch parts = span(word, place.raw());
        if (parts != null) return record(parts, place);
        String what = "\"" + Told.shortened(word.text) + "\" is not a span of the day.";
        return told.fault(word, place.path(), what, "Write 16:00-22:00.");
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
}
