package stokewell.file;

import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * One value set by its path, such as {@code emitters.fan.count}. Makes a new tree and leaves the old one as it is; what
 * the change does not touch is shared between them.
 */
final class Change {

    private final String[] steps;
    private final Tree value;
    private final Tree.Spot spot;
    private final Map<Class<?>, LeafReader<?>> leaves;

    Change(String path, String text, String source, Map<Class<?>, LeafReader<?>> leaves) {
        this.steps = path.strip().split("\\.", -1);
        this.spot = Tree.Spot.of(source);
        this.value = value(text.strip(), spot);
        this.leaves = leaves;
        for (String step : steps) {
            if (step.isBlank())
                throw new QuantityFault("\"" + path + "\" is not a key.", "Write store.volume or the like.");
        }
        if (steps.length > 40) throw new QuantityFault("The key is too long.", "Write store.volume or the like.");
    }

    static Tree value(String text, Tree.Spot spot) {
        boolean quoted = text.startsWith("\"") && text.endsWith("\"") || text.startsWith("'") && text.endsWith("'");
        if (!text.startsWith("{") && !text.startsWith("[") && !(quoted && text.length() > 1)) {
            return new Tree.Word(spot, text, !text.isEmpty());
        }
        List<Fault> faults = new ArrayList<>();
        Tree tree = TreeReader.read(spot.source(), text, faults);
        if (tree == null)
            throw new QuantityFault(faults.get(0).what(), faults.get(0).right());
        return placed(tree, spot);
    }

    /** The same tree, all of it from one place. */
    private static Tree placed(Tree tree, Tree.Spot spot) {
        if (tree instanceof Tree.Word word) return new Tree.Word(spot, word.text, word.plain);
        if (tree instanceof Tree.Items items) {
            List<Tree> list = new ArrayList<>();
            for (Tree each : items.list) list.add(placed(each, spot));
            return new Tree.Items(spot, list, true);
        }
        Tree.Branch branch = (Tree.Branch) tree;
        List<Tree.Word> keys = new ArrayList<>();
        List<Tree> values = new ArrayList<>();
        for (Tree.Word key : branch.keys) keys.add((Tree.Word) placed(key, spot));
        for (Tree each : branch.values) values.add(placed(each, spot));
        return new Tree.Branch(spot, keys, values, true);
    }

    /** The changed tree. @throws QuantityFault where the path leads nowhere */
    Tree in(Tree root, Class<?> type) {
        return set(root, type, 0);
    }

    private Tree set(Tree here, Type type, int step) {
        if (step == steps.length) return value;
        if (Shape.optional(type)) return set(here, Shape.held(type), step);
        if (Shape.list(type)) return inList(here, type, step);
        Class<?> raw = Shape.raw(type);
        if (Shape.kinds(raw)) return inKind(here, raw, step);
        if (raw.isRecord()) return inRecord(here, raw, step);
        throw new QuantityFault("Nothing is inside " + upTo(step) + ".", "Set " + upTo(step) + " itself.");
    }

    private Tree inRecord(Tree here, Class<?> type, int step) {
        int index = Shape.indexOf(type, steps[step]);
        if (index < 0) {
            List<String> keys = Shape.keys(type);
            String near = Key.nearest(steps[step], keys);
            throw new QuantityFault(
                    "No such entry in " + (step == 0 ? Key.words(type.getSimpleName()) : upTo(step)) + "."
                            + (near.isEmpty() ? "" : " Nearest: " + near + "."),
                    "Known: " + String.join(", ", keys) + ".");
        }
        RecordComponent component = Shape.components(type)[index];
        Tree.Branch branch = branch(here, type, step);
        int at = branch.find(component.getName());
        if (at >= 0) return branch.with(at, set(branch.values.get(at), component.getGenericType(), step + 1));
        String orElse = Shape.entry(component).orElse();
        boolean none = orElse.startsWith("(");
        Tree from = none || step + 1 == steps.length ? null : placed(Binder.standIn(orElse), spot);
        Tree made = set(from, component.getGenericType(), step + 1);
        return branch.plus(component.getName(), made, place(branch, type, index));
    }

    /** Behind the last entry that the record names before it. */
    private static int place(Tree.Branch branch, Class<?> type, int index) {
        int place = 0;
        for (int i = 0; i < branch.keys.size(); i++) {
            int other = Shape.indexOf(type, branch.keys.get(i).text);
            if (other >= 0 && other < index) place = i + 1;
        }
        return place;
    }

    private Tree.Branch branch(Tree here, Class<?> type, int step) {
        if (here instanceof Tree.Branch branch) return branch;
        if (here == null) return Tree.Branch.empty(spot);
        if (here instanceof Tree.Word word
                && (word.empty() || Key.plain(word.text).equals("none"))) {
            return Tree.Branch.empty(spot);
        }
        if (here instanceof Tree.Word word && Shape.clockSpan(type)) {
            Tree.Branch span = Binder.span(word, type);
            if (span != null) return new Tree.Branch(spot, span.keys, span.values, true);
        }
        RecordComponent alone = Shape.shortForm(type);
        boolean words = here instanceof Tree.Word && leaves.containsKey(type);
        if (words || alone == null) {
            throw new QuantityFault(upTo(step) + " is written in words.", "Set " + upTo(step) + " itself.");
        }
        return new Tree.Branch(spot, List.of(new Tree.Word(spot, alone.getName(), true)), List.of(here), true);
    }

    private Tree inKind(Tree here, Class<?> family, int step) {
        Class<?> named = Shape.kind(family, steps[step]);
        Class<?> present = null;
        Tree inside = null;
        Tree.Branch branch = here instanceof Tree.Branch b && b.keys.size() == 1 ? b : null;
        if (branch != null) {
            present = Shape.kind(family, branch.keys.get(0).text);
            inside = branch.values.get(0);
        } else if (here instanceof Tree.Word word) {
            present = Shape.kind(family, word.text);
        }
        if (named == null && present == null) {
            throw new QuantityFault(
                    "Which kind of " + upTo(step) + "?", "Known: " + String.join(", ", Shape.kindNames(family)) + ".");
        }
        int next = named == null ? step : step + 1;
        Class<?> kind = named == null ? present : named;
        Tree made = set(kind == present ? inside : null, kind, next);
        return kind == present && branch != null ? branch.with(0, made) : Tree.Branch.of(Key.of(kind), made);
    }

    private Tree inList(Tree here, Type type, int step) {
        Tree.Items items = here instanceof Tree.Items list
                ? list
                : here instanceof Tree.Word word && !word.empty()
                        ? new Tree.Items(spot, Binder.split(word), true)
                        : new Tree.Items(spot, List.of(), true);
        int index = index(items, Shape.raw(Shape.held(type)), steps[step]);
        if (index < 0) {
            List<String> names = new ArrayList<>();
            for (int i = 0; i < items.list.size(); i++) {
                String name = name(items.list.get(i), Shape.raw(Shape.held(type)));
                names.add(name.isEmpty() ? Integer.toString(i) : name);
            }
            throw new QuantityFault(
                    "Nothing in " + upTo(step) + " is called " + steps[step] + ".",
                    names.isEmpty() ? "The list is empty." : "Known: " + String.join(", ", names) + ".");
        }
        return items.with(index, set(items.list.get(index), Shape.held(type), step + 1));
    }

    private static int index(Tree.Items items, Class<?> held, String step) {
        boolean digits = !step.isEmpty() && step.length() < 6;
        for (int i = 0; i < step.length(); i++) digits &= Numeral.digit(step.charAt(i));
        if (digits && Integer.parseInt(step) < items.list.size()) return Integer.parseInt(step);
        for (int i = 0; i < items.list.size(); i++) {
            if (Key.plain(name(items.list.get(i), held)).equals(Key.plain(step))) return i;
        }
        return -1;
    }

    /** What an element of a list is called, its default name included, or empty. */
    private static String name(Tree element, Class<?> type) {
        if (Shape.kinds(type)) {
            if (!(element instanceof Tree.Branch branch) || branch.keys.size() != 1) return "";
            Class<?> kind = Shape.kind(type, branch.keys.get(0).text);
            return kind == null ? "" : name(branch.values.get(0), kind);
        }
        if (!type.isRecord()) return "";
        int index = Shape.indexOf(type, "name");
        if (index < 0) return "";
        if (element instanceof Tree.Branch branch) {
            int at = branch.find("name");
            if (at >= 0) return branch.values.get(at) instanceof Tree.Word word ? word.text : "";
        }
        String orElse = Shape.entry(Shape.components(type)[index]).orElse();
        return orElse.startsWith("(") ? "" : orElse;
    }

    private String upTo(int step) {
        return step == 0 ? "the rig" : String.join(".", List.of(steps).subList(0, step));
    }
}
