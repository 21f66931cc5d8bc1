package stokewell.file;

import java.util.ArrayList;
import java.util.List;

/**
 * Entries taken out of a rig file's text, and elements put into its lists; comments, order and all other lines stay as they
 * are. What comes out is read again and must be what was meant, or nothing is changed.
 */
public final class RigPart {

    private final String text;
    private final String path;
    private final String[] steps;
    private int cutFrom = -1;
    private int cutTo;
    private String put = "";

    private RigPart(String text, String path) {
        this.text = text;
        this.path = path;
        this.steps = path.strip().split("\\.", -1);
    }

    /**
     * The text without an entry, or without an element of a list.
     *
     * @param path as {@link RigValue#key} tells it: {@code store.lid}, {@code emitters.0}
     * @throws RigFileFault if the text cannot be read or does not hold it
     */
    public static String remove(String yaml, String path) throws RigFileFault {
        RigPart part = new RigPart(yaml, path);
        Tree before = read(yaml);
        try {
            return part.checked(part.without(before, 0));
        } catch (QuantityFault fault) {
            throw part.refused(fault);
        }
    }

    /**
     * The text with one more element at the end of a list.
     *
     * @param path  of the list: {@code emitters}, {@code room.windows}
     * @param value of the element as it would stand on one line
     * @throws RigFileFault if the text cannot be read or there is no such list
     */
    public static String add(String yaml, String path, String value) throws RigFileFault {
        RigPart part = new RigPart(yaml, path);
        Tree before = read(yaml);
        Tree list = part.found(before, 0);
        if (list instanceof Tree.Word word
                && !word.empty()
                && !Key.plain(word.text).equals("none")) {
            return RigText.set(yaml, path, word.text + ", " + value);
        }
        if (!(list instanceof Tree.Items items) || items.list.isEmpty()) {
            return RigText.set(yaml, path, "[" + value + "]");
        }
        try {
            return part.checked(part.with(before, 0, Change.value(value.strip(), Tree.Spot.of("edit"))));
        } catch (QuantityFault fault) {
            throw part.refused(fault);
        }
    }

    private static Tree read(String yaml) throws RigFileFault {
        List<Fault> faults = new ArrayList<>();
        Tree tree = TreeReader.read("text", yaml, faults);
        if (tree == null) throw new RigFileFault(faults);
        return tree;
    }

    private RigFileFault refused(QuantityFault fault) {
        return new RigFileFault(List.of(new Fault("text", 0, path, fault.what, fault.right)));
    }

    private String checked(Tree after) {
        String edited = text.substring(0, cutFrom) + put + text.substring(cutTo);
        List<Fault> faults = new ArrayList<>();
        Tree check = TreeReader.read("text", edited, faults);
        if (check == null || !check.same(after)) {
            throw new QuantityFault(path + " cannot be changed where it stands.", "Change that part by hand.");
        }
        return edited;
    }

    private QuantityFault missing() {
        return new QuantityFault("The file does not hold " + path + ".", "What it leaves out takes its default.");
    }

    /** Where the next step leads, or -1; -2 for through the one kind that stands here without being named. */
    private int next(Tree here, int step) {
        if (here instanceof Tree.Branch branch) {
            int at = branch.find(steps[step]);
            boolean kind = branch.keys.size() == 1 && branch.values.get(0) instanceof Tree.Branch;
            return at >= 0 ? at : kind ? -2 : -1;
        }
        if (here instanceof Tree.Items items && steps[step].matches("\\d{1,5}")) {
            int at = Integer.parseInt(steps[step]);
            return at < items.list.size() ? at : -1;
        }
        return -1;
    }

    private Tree found(Tree here, int step) {
        if (step == steps.length) return here;
        int at = next(here, step);
        if (at == -1) return null;
        if (at == -2) return found(((Tree.Branch) here).values.get(0), step);
        return found(child(here, at), step + 1);
    }

    private static Tree child(Tree here, int at) {
        return here instanceof Tree.Branch branch ? branch.values.get(at) : ((Tree.Items) here).list.get(at);
    }

    private static Tree replaced(Tree here, int at, Tree by) {
        return here instanceof Tree.Branch branch ? branch.with(at, by) : ((Tree.Items) here).with(at, by);
    }

    private Tree with(Tree here, int step, Tree value) {
        if (step < steps.length) {
            int at = next(here, step);
            int child = Math.max(0, at);
            return replaced(here, child, with(child(here, child), at == -2 ? step : step + 1, value));
        }
        Tree.Items items = (Tree.Items) here;
        Tree last = items.list.get(items.list.size() - 1);
        int end = trimmed(last.realEnd());
        StringBuilder out = new StringBuilder();
        value.flow(out, items.flow);
        if (items.flow) {
            put = ", " + out;
            cutFrom = end;
        } else {
            int line = text.indexOf('\n', end);
            String margin = " ".repeat(items.spot.column()) + "- " + out;
            cutFrom = line < 0 ? text.length() : line + 1;
            put = line < 0 ? newline() + margin : margin + newline();
        }
        cutTo = cutFrom;
        List<Tree> more = new ArrayList<>(items.list);
        more.add(value);
        return new Tree.Items(items.spot, more, items.flow);
    }

    private Tree without(Tree here, int step) {
        int at = next(here, step);
        if (at == -1) throw missing();
        if (at == -2) return replaced(here, 0, without(child(here, 0), step));
        if (step + 1 < steps.length) return replaced(here, at, without(child(here, at), step + 1));
        return here instanceof Tree.Branch branch ? lessOf(branch, at) : lessOf((Tree.Items) here, at);
    }

    private Tree lessOf(Tree.Branch branch, int at) {
        List<Tree.Word> keys = new ArrayList<>(branch.keys);
        List<Tree> values = new ArrayList<>(branch.values);
        List<Tree> starts = new ArrayList<>(branch.keys);
        cut(starts, values, at, branch.flow);
        keys.remove(at);
        values.remove(at);
        return keys.isEmpty() && !branch.flow ? nothing() : new Tree.Branch(branch.spot, keys, values, branch.flow);
    }

    private Tree lessOf(Tree.Items items, int at) {
        List<Tree> list = new ArrayList<>(items.list);
        cut(items.list, items.list, at, items.flow);
        list.remove(at);
        return list.isEmpty() && !items.flow ? nothing() : new Tree.Items(items.spot, list, items.flow);
    }

    private static Tree nothing() {
        return new Tree.Word(Tree.Spot.NOWHERE, "", true);
    }

    private void cut(List<? extends Tree> starts, List<? extends Tree> ends, int at, boolean flow) {
        int start = at(starts.get(at).spot.start());
        int end = Math.max(start, trimmed(ends.get(at).realEnd()));
        boolean last = at == starts.size() - 1;
        if (flow) {
            cutFrom = at > 0 ? at(ends.get(at - 1).realEnd()) : start;
            cutTo = at == 0 && !last ? at(starts.get(1).spot.start()) : end;
            return;
        }
        int margin = text.lastIndexOf('\n', start - 1) + 1;
        boolean alone = text.substring(margin, start).strip().replace("- ", "").matches("-?");
        boolean dashed = !text.substring(margin, start).isBlank() && starts == ends;
        boolean ownLine = text.substring(margin, start).isBlank() || dashed && alone;
        if (!ownLine && !last) {
            // the first key behind a dash: the next one takes its place
            cutFrom = start;
            cutTo = at(starts.get(at + 1).spot.start());
            return;
        }
        int line = text.indexOf('\n', end);
        cutFrom = ownLine ? margin : start;
        cutTo = line < 0 ? text.length() : ownLine ? line + 1 : line;
        if (line < 0 && ownLine && cutFrom > 0) cutFrom--;
    }

    private int trimmed(int codePoint) {
        int i = at(codePoint);
        while (i > 0 && Character.isWhitespace(text.charAt(i - 1))) i--;
        return i;
    }

    private int at(int codePoint) {
        return text.offsetByCodePoints(0, codePoint);
    }

    private String newline() {
        return text.contains("\r\n") ? "\r\n" : "\n";
    }
}
