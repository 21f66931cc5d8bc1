package stokewell.show;

/** Paper that a sheet is printed on. */
public enum Paper {
    A4("A4", 210, 297),
    LETTER("letter", 215.9, 279.4);

    /** Round the edge, mm: what every printer can leave white. */
    static final double EDGE = 13;

    final String css;
    final double wide;
    final double high;

    Paper(String css, double wide, double high) {
        this.css = css;
        this.wide = wide;
        this.high = high;
    }

    /** Margin below on a sheet, mm: room for what every page says last. */
    static final double BELOW = 13;

    /** Margin above, mm: room for what every page says first. */
    static double above(boolean alarm) {
        return alarm ? 20 : 15;
    }

    /** Height between the margins, CSS pixels. */
    double tall(boolean alarm) {
        return (high - above(alarm) - BELOW) / 25.4 * 96;
    }

    /** Width between the edges, CSS pixels. */
    double inside() {
        return (wide - 2 * EDGE) / 25.4 * 96;
    }
}
