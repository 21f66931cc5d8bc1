package stokewell.show;

import com.openhtmltopdf.extend.FSTextBreaker;

/** Where a line of the sheet may end: after spaces that may break, and after a hyphen between letters; never within a unit. */
final class LineEnds implements FSTextBreaker {

    private String text = "";
    private int at;

    @Override
    public void setText(String words) {
        text = words;
        at = 0;
    }

    /** The next place at which a line may begin, at last the end of the text; then -1. */
    @Override
    public int next() {
        if (at >= text.length()) return -1;
        do at++;
        while (at < text.length() && !mayBegin());
        return at;
    }

    private boolean mayBegin() {
        char before = text.charAt(at - 1);
        char after = text.charAt(at);
        if (after == ' ' || after == '\n') return false;
        if (before == ' ' || before == '\n') return true;
        return before == '-' && Character.isLetter(after) && at > 1 && Character.isLetter(text.charAt(at - 2));
    }
}
