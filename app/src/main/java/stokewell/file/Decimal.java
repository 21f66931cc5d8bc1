package stokewell.file;

/**
 * Reads plain decimal numbers, of which a year of weather holds a hundred thousand, without the cost of a pattern. What it
 * reads is to the last bit what {@link Double#parseDouble} reads: both the digits and the power of ten are exact, so that
 * their quotient is rounded once.
 */
final class Decimal {

    /** As many digits as a double holds exactly, whatever they are. */
    private static final int MOST_DIGITS = 15;

    private static final double[] POWERS = new double[MOST_DIGITS + 1];

    static {
        POWERS[0] = 1;
        for (int i = 1; i < POWERS.length; i++) POWERS[i] = 10 * POWERS[i - 1];
    }

    private Decimal() {}

    /** The number that a text is, such as "-12.5", ".5" or "3"; NaN for anything else or longer, which may still be one. */
    static double read(String text) {
        int n = text.length();
        int at = n > 0 && (text.charAt(0) == '-' || text.charAt(0) == '+') ? 1 : 0;
        if (n - at > MOST_DIGITS) return Double.NaN;
        long digits = 0;
        int count = 0;
        int point = -1;
        for (int i = at; i < n; i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9') {
                digits = 10 * digits + (c - '0');
                count++;
            } else if (c == '.' && point < 0) {
                point = i;
            } else {
                return Double.NaN;
            }
        }
        if (count == 0) return Double.NaN;
        double value = digits / POWERS[point < 0 ? 0 : n - 1 - point];
        return text.charAt(0) == '-' ? -value : value;
    }

    /** The number that the characters from one place up to another are; -1 if one of them is no digit. */
    static int whole(String text, int from, int to) {
        int value = 0;
        for (int i = from; i < to; i++) {
            int digit = text.charAt(i) - '0';
            if (digit < 0 || digit > 9) return -1;
            value = 10 * value + digit;
        }
        return value;
    }
}
