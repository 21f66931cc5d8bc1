package stokewell.file;

import java.util.ArrayList;
import java.util.List;

/**
 * What a rig file holds before anyone knows what it means: words, lists and branches, each with its place in the text.
 * Values are kept as written, since only the entry they belong to tells how to read them.
 */
abstract sealed class Tree {

    /** Where a node comes from. Indexes count code points of the text. */
    record Spot(int line, int column, int start, int end, String source) {

        /** Not from the text: a default or a setting given beside the file. */
        static final Spot NOWHERE = new Spot(0, 0, 0, 0, "");

        static Spot of(String source) {
            return new Spot(0, 0, 0, 0, source);
        }

        boolean inText() {
            return line > 0;
        }
    }

    final Spot spot;

    private Tree(Spot spot) {
        this.spot = spot;
    }

    /** Nodes in it, itself counted. */
    abstract int size();

    /** The index after its last sign, comments and blank lines below it left out. */
    abstract int realEnd();

    /** Written on one line. */
    abstract void flow(StringBuilder out, boolean inside);

    /** The same content, wherever it stands. */
    abstract boolean same(Tree other);

    /** A single text. */
    static final class Word extends Tree {
        final String text;
        /** Written without quotes. */
        final boolean plain;

        Word(Spot spot, String text, boolean plain) {
            super(spot);
            this.text = text;
            this.plain = plain;
        }

        /** Nothing stands where a value should. */
        boolean empty() {
            return plain && text.isEmpty();
        }

        @Override
        int size() {
            return 1;
        }

        @Override
        int realEnd() {
            return spot.end;
        }

        @Override
        void flow(StringBuilder out, boolean inside) {
            if (plain && !Quoting.needed(text, inside)) out.append(text);
            else Quoting.quote(out, text);
        }

        @Override
        boolean same(Tree other) {
            return other instanceof Word word && word.text.equals(text);
        }
    }

    /** A list. */
    static final class Items extends Tree {
        final List<Tree> list;
        final boolean flow;

        Items(Spot spot, List<Tree> list, boolean flow) {
            super(spot);
            this.list = list;
            this.flow = flow;
        }

        Items with(int index, Tree value) {
            List<Tree> changed = new ArrayList<>(list);
            changed.set(index, value);
            return new Items(spot, changed, flow);
        }

        @Override
        int size() {
            int size = 1;
            for (Tree each : list) size += each.size();
            return size;
        }

        @Override
        int realEnd() {
            return flow || list.isEmpty() ? spot.end : list.get(list.size() - 1).realEnd();
        }

        @Override
        void flow(StringBuilder out, boolean inside) {
            out.append('[');
            for (int i = 0; i < list.size(); i++) {
                if (i > 0) out.append(", ");
                list.get(i).flow(out, true);
            }
            out.append(']');
        }

        @Override
        boolean same(Tree other) {
            if (!(other instanceof Items items) || items.list.size() != list.size()) return false;
            for (int i = 0; i < list.size(); i++) if (!list.get(i).same(items.list.get(i))) return false;
            return true;
        }
    }

    /** Keys with their values, in the order of the text; a key may stand twice and is then a fault. */
    static final class Branch extends Tree {
        final List<Word> keys;
        final List<Tree> values;
        final boolean flow;

        Branch(Spot spot, List<Word> keys, List<Tree> values, boolean flow) {
            super(spot);
            this.keys = keys;
            this.values = values;
            this.flow = flow;
        }

        static Branch empty(Spot spot) {
            return new Branch(spot, List.of(), List.of(), true);
        }

        static Branch of(String key, Tree value) {
            return new Branch(value.spot, List.of(new Word(value.spot, key, true)), List.of(value), true);
        }

        int find(String key) {
            String wanted = Key.plain(key);
            for (int i = 0; i < keys.size(); i++)
                if (Key.plain(keys.get(i).text).equals(wanted)) return i;
            return -1;
        }

        Branch with(int index, Tree value) {
            List<Tree> changed = new ArrayList<>(values);
            changed.set(index, value);
            return new Branch(spot, keys, changed, flow);
        }

        Branch plus(String key, Tree value, int index) {
            List<Word> moreKeys = new ArrayList<>(keys);
            List<Tree> more = new ArrayList<>(values);
            moreKeys.add(index, new Word(Spot.NOWHERE, key, true));
            more.add(index, value);
            return new Branch(spot, moreKeys, more, flow);
        }

        @Override
        int size() {
            int size = 1;
            for (Tree each : values) size += 1 + each.size();
            return size;
        }

        @Override
        int realEnd() {
            return flow || values.isEmpty()
                    ? spot.end
                    : values.get(values.size() - 1).realEnd();
        }

        @Override
        void flow(StringBuilder out, boolean inside) {
            out.append('{');
            for (int i = 0; i < keys.size(); i++) {
                if (i > 0) out.append(", ");
                keys.get(i).flow(out, true);
                out.append(": ");
                values.get(i).flow(out, true);
            }
            out.append('}');
        }

        @Override
        boolean same(Tree other) {
            if (!(other instanceof Branch branch) || branch.keys.size() != keys.size()) return false;
            for (int i = 0; i < keys.size(); i++) {
                if (!keys.get(i).same(branch.keys.get(i)) || !values.get(i).same(branch.values.get(i))) return false;
            }
            return true;
        }
    }
}
