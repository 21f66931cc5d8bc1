package stokewell.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stokewell.rig.Rig;

/** Edits of a rig file's text: one value changes, comments, order and all other lines stay as they are. */
public final class RigText {

    private static final String ELSEWHERE = "Change that part by hand.";

    private final String text;
    private final StringBuilder edited;

    private RigText(String text) {
        this.text = text;
        this.edited = new StringBuilder(text);
    }

    /**
     * The text with one value set; the key is added where it belongs if it is not there.
     *
     * @param path  as in {@code store.jacket} or {@code emitters.fan.count}
     * @param value as the user writes it
     * @throws RigFileFault if the text cannot be read or the path leads nowhere
     */
    public static String set(String yaml, String path, String value) throws RigFileFault {
        return set(yaml, path, value, Rig.class, RigFile.LEAVES);
    }

    /** As {@link #set(String, String, String)} for any record whose components carry entries. */
    public static String set(
            String yaml, String path, String value, Class<? extends Record> root, Map<Class<?>, LeafReader<?>> leaves)
            throws RigFileFault {
        List<Fault> faults = new ArrayList<>();
        Tree before = TreeReader.read("text", yaml, faults);
        if (before == null) throw new RigFileFault(faults);
        try {
            Tree after = new Change(path, value, "edit", leaves).in(before, root);
            RigText text = new RigText(yaml);
            if (before instanceof Tree.Branch branch && branch.keys.isEmpty() && branch.spot.end() == 0) {
                text.append((Tree.Branch) after);
            } else {
                text.differ(before, after, false);
            }
            String edited = text.edited.toString();
            Tree check = TreeReader.read("text", edited, faults);
            if (check == null || !check.same(after)) {
                throw new QuantityFault(path + " cannot be changed where it stands.", ELSEWHERE);
            }
            return edited;
        } catch (QuantityFault fault) {
            throw new RigFileFault(List.of(new Fault("text", 0, path, fault.what, fault.right)));
        }
    }

    /** Into a text without any entry. */
    private void append(Tree.Branch after) {
        if (!edited.isEmpty() && edited.charAt(edited.length() - 1) != '\n') edited.append(newline());
        edited.append(pair(after.keys.get(0), after.values.get(0), false)).append(newline());
    }

    private void differ(Tree before, Tree after, boolean inFlow) {
        if (before == after) return;
        if (before instanceof Tree.Branch old && after instanceof Tree.Branch young && sameStart(old, young)) {
            boolean flow = inFlow || old.flow;
            int o = 0;
            for (int y = 0; y < young.keys.size(); y++) {
                if (o < old.keys.size() && young.keys.get(y) == old.keys.get(o)) {
                    differ(old.values.get(o), young.values.get(y), flow);
                    o++;
                } else {
                    insert(old, o, pair(young.keys.get(y), young.values.get(y), flow));
                }
            }
            return;
        }
        if (before instanceof Tree.Items old
                && after instanceof Tree.Items young
                && old.spot == young.spot
                && old.list.size() == young.list.size()) {
            for (int i = 0; i < old.list.size(); i++) differ(old.list.get(i), young.list.get(i), inFlow || old.flow);
            return;
        }
        replace(before, after, inFlow);
    }

    /** Whether the one came from the other by changes inside. */
    private static boolean sameStart(Tree.Branch old, Tree.Branch young) {
        return old.spot == young.spot && young.keys.containsAll(old.keys);
    }

    private void replace(Tree before, Tree after, boolean inFlow) {
        StringBuilder out = new StringBuilder();
        boolean quoted = before instanceof Tree.Word word && !word.plain;
        if (quoted && after instanceof Tree.Word word) Quoting.quote(out, word.text);
        else after.flow(out, inFlow);
        int start = at(before.spot.start());
        int end = trimmed(start, at(before.realEnd()));
        boolean touching = start > 0 && edited.charAt(start - 1) == ':';
        edited.replace(start, end, touching ? " " + out : out.toString());
    }

    private void insert(Tree.Branch old, int index, String pair) {
        if (old.flow) {
            boolean last = index == 0;
            int at = last
                    ? at(old.spot.start()) + 1
                    : at(old.values.get(index - 1).realEnd());
            edited.insert(at, last ? pair + (old.keys.isEmpty() ? "" : ", ") : ", " + pair);
            return;
        }
        String margin = " ".repeat(old.keys.get(0).spot.column());
        if (index == 0) {
            edited.insert(at(old.keys.get(0).spot.start()), pair + newline() + margin);
            return;
        }
        int start = at(old.keys.get(index - 1).spot.start());
        int end = trimmed(start, at(old.values.get(index - 1).realEnd()));
        int line = edited.indexOf("\n", end);
        if (line < 0) {
            edited.append(newline()).append(margin).append(pair);
        } else {
            edited.insert(line + 1, margin + pair + newline());
        }
    }

    private static String pair(Tree.Word key, Tree value, boolean inFlow) {
        StringBuilder out = new StringBuilder();
        key.flow(out, inFlow);
        out.append(": ");
        value.flow(out, inFlow);
        return out.toString();
    }

    private int trimmed(int start, int end) {
        int i = end;
        while (i > start && Character.isWhitespace(edited.charAt(i - 1))) i--;
        return i;
    }

    private int at(int codePoint) {
        return text.offsetByCodePoints(0, codePoint);
    }

    private String newline() {
        return text.contains("\r\n") ? "\r\n" : "\n";
    }
}
