package stokewell.show;

/** A grid of dots for a terminal: each character is a braille cell of two dots by four. */
final class Dots {

    private static final int[][] BITS = {{0x01, 0x02, 0x04, 0x40}, {0x08, 0x10, 0x20, 0x80}};

    private final int width;
    private final int height;
    private final int[] cells;

    /** @param width in characters @param height in characters */
    Dots(int width, int height) {
        this.width = width;
        this.height = height;
        cells = new int[width * height];
    }

    int across() {
        return 2 * width;
    }

    int down() {
        return 4 * height;
    }

    void dot(int x, int y) {
        if (x < 0 || y < 0 || x >= across() || y >= down()) return;
        cells[y / 4 * width + x / 2] |= BITS[x % 2][y % 4];
    }

    /** All dots of a column between two heights. */
    void column(int x, int y1, int y2) {
        for (int y = Math.min(y1, y2); y <= Math.max(y1, y2); y++) dot(x, y);
    }

    String row(int r) {
        StringBuilder line = new StringBuilder(width);
        for (int c = 0; c < width; c++) {
            int bits = cells[r * width + c];
            line.append(bits == 0 ? ' ' : (char) (0x2800 + bits));
        }
        return line.toString();
    }
}
