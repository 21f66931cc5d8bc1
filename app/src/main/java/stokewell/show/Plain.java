package stokewell.show;

/** Lines of text for a terminal: nothing in a rig's name can steer the terminal, nothing is wider than its screen. */
final class Plain {

    static final int WIDTH = 80;

    private final StringBuilder out = new StringBuilder(4096);
    private final int column;

    /** @param column where values begin */
    Plain(int column) {
        this.column = column;
    }

    /** A name without control characters, at most so long. */
    static String name(String text, int most) {
        StringBuilder clean = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean steers = Character.isISOControl(c)
                    || Character.getType(c) == Character.FORMAT
                    || c == '\u2028'
                    || c == '\u2029';
            clean.append(steers ? ' ' : c);
        }
        String whole = clean.toString().strip();
        if (whole.length() <= most) return whole;
        int end = Character.isHighSurrogate(whole.charAt(most - 2)) ? most - 2 : most - 1;
        return whole.substring(0, end) + "…";
    }

    Plain blank() {
        out.append('\n');
        return this;
    }

    /** A label and its value, which goes on under itself where it is long. */
    Plain line(String label, String value) {
        String clean = name(label, column - 1);
        out.append(clean);
        pad(column - clean.length());
        wrap(value, column, column);
        return this;
    }

    /** Words over as many lines as they need, the first after a mark. */
    Plain words(String mark, String text) {
        out.append(mark);
        wrap(text, mark.length(), mark.length());
        return this;
    }

    /** One line as it stands. */
    Plain raw(String text) {
        out.append(text).append('\n');
        return this;
    }

    /** A number at the right edge of a field. */
    static String right(String text, int width) {
        StringBuilder field = new StringBuilder(width);
        for (int i = text.length(); i < width; i++) field.append(' ');
        return field.append(text).toString();
    }

    /** Text at the left edge of a field. */
    static String left(String text, int width) {
        StringBuilder field = new StringBuilder(width).append(text);
        while (field.length() < width) field.append(' ');
        return field.toString();
    }

    static String repeat(char c, int times) {
        StringBuilder all = new StringBuilder(Math.max(0, times));
        for (int i = 0; i < times; i++) all.append(c);
        return all.toString();
    }

    private void wrap(String text, int at, int indent) {
        String clean = name(text, Integer.MAX_VALUE);
        int here = at;
        int i = 0;
        int n = clean.length();
        boolean first = true;
        while (i < n) {
            while (i < n && clean.charAt(i) == ' ') i++;
            int end = i;
            while (end < n && clean.charAt(end) != ' ') end++;
            if (end == i) break;
            while (i < end) {
                int piece = Math.min(end - i, WIDTH - indent);
                if (!first && here + 1 + piece > WIDTH) {
                    out.append('\n');
                    pad(indent);
                    here = indent;
                    first = true;
                }
                if (!first) {
                    out.append(' ');
                    here++;
                }
                out.append(clean, i, i + piece);
                here += piece;
                i += piece;
                first = false;
            }
        }
        out.append('\n');
    }

    private void pad(int spaces) {
        for (int i = 0; i < spaces; i++) out.append(' ');
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
