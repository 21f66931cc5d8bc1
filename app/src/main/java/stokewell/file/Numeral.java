package stokewell.file;

import java.math.BigDecimal;

/**
 * The number that a text begins with, as people write numbers: {@code 1 200}, {@code 1,5}, {@code 3 1/2}, {@code ⅞},
 * {@code 1-1/2}, {@code 2e-3}.
 *
 * @param value    the number
 * @param end      where the text goes on
 * @param fraction whether it was written as a fraction
 */
record Numeral(double value, int end, boolean fraction) {

    private static final String GLYPHS = "½¼¾⅛⅜⅝⅞⅓⅔";
    private static final double[] PARTS = {
        1 / 2.0, 1 / 4.0, 3 / 4.0, 1 / 8.0, 3 / 8.0, 5 / 8.0, 7 / 8.0, 1 / 3.0, 2 / 3.0
    };

    static boolean digit(char c) {
        return c >= '0' && c <= '9';
    }

    static boolean glyph(char c) {
        return GLYPHS.indexOf(c) >= 0;
    }

    private static boolean blank(char c) {
        return c == ' ' || c == '\u00a0' || c == '\u2009' || c == '\u202f';
    }

    /** The unsigned number at a place, or {@code null} if there is none. */
    static Numeral at(String text, int start) {
        int n = text.length();
        if (start >= n) return null;
        if (glyph(text.charAt(start))) return new Numeral(PARTS[GLYPHS.indexOf(text.charAt(start))], start + 1, true);
        StringBuilder digits = new StringBuilder();
        int i = run(text, start, digits);
        if (i == start) return null;
        double value = read(digits.toString());
        boolean whole = digits.indexOf(".") < 0 && digits.indexOf(",") < 0;
        if (i + 1 < n && (text.charAt(i) == 'e' || text.charAt(i) == 'E')) {
            int j = i + 1;
            if (j + 1 < n && (text.charAt(j) == '-' || text.charAt(j) == '+')) j++;
            int k = digitsEnd(text, j);
            if (k > j) {
                int tens = Integer.parseInt(clip(text.substring(i + 1, k)));
                return new Numeral(
                        BigDecimal.valueOf(value).scaleByPowerOfTen(tens).doubleValue(), k, false);
            }
        }
        if (!whole) return new Numeral(value, i, false);
        if (i < n && text.charAt(i) == '/') {
            int k = digitsEnd(text, i + 1);
            if (k > i + 1) return new Numeral(value / divisor(text, i + 1, k), k, true);
        }
        return mixed(text, value, i);
    }

    private static Numeral mixed(String text, double value, int i) {
        int n = text.length();
        int j = i;
        while (j < n && blank(text.charAt(j))) j++;
        if (j < n && glyph(text.charAt(j))) {
            return new Numeral(value + PARTS[GLYPHS.indexOf(text.charAt(j))], j + 1, true);
        }
        if (j == i && j < n && text.charAt(j) == '-') j++;
        if (j > i) {
            int k = digitsEnd(text, j);
            if (k > j && k < n && text.charAt(k) == '/') {
                int l = digitsEnd(text, k + 1);
                if (l > k + 1) {
                    double part = Double.parseDouble(text.substring(j, k)) / divisor(text, k + 1, l);
                    return new Numeral(value + part, l, true);
                }
            }
        }
        return new Numeral(value, i, false);
    }

    /** Digits with their points and commas; blanks between groups of three are dropped. */
    private static int run(String text, int start, StringBuilder digits) {
        int n = text.length();
        int i = start;
        boolean inGroups = false;
        while (i < n) {
            char c = text.charAt(i);
            if (digit(c)) {
                digits.append(c);
                i++;
            } else if ((c == '.' || c == ',') && i + 1 < n && digit(text.charAt(i + 1))) {
                digits.append(c);
                i++;
            } else if (blank(c)
                    && (inGroups || digits.length() <= 3)
                    && groupFollows(text, i + 1)
                    && leadFits(digits)) {
                inGroups = true;
                i++;
            } else {
                break;
            }
        }
        return i;
    }

    private static boolean leadFits(StringBuilder digits) {
        return !digits.isEmpty() && digits.indexOf(".") < 0 && digits.indexOf(",") < 0 && digits.charAt(0) != '0';
    }

    private static boolean groupFollows(String text, int from) {
        int end = digitsEnd(text, from);
        return end - from == 3 && (end == text.length() || text.charAt(end) != '/');
    }

    private static int digitsEnd(String text, int from) {
        int i = from;
        while (i < text.length() && digit(text.charAt(i))) i++;
        return i;
    }

    private static double divisor(String text, int from, int to) {
        double below = Double.parseDouble(text.substring(from, to));
        if (below == 0)
            throw new QuantityFault("\"" + text + "\" divides by nothing.", "Write a fraction such as 7/8.");
        return below;
    }

    private static String clip(String exponent) {
        return exponent.length() > 4 ? exponent.substring(0, 4) : exponent;
    }

    private static double read(String digits) {
        if (digits.length() > 40) throw new QuantityFault("The number is too long.", "Write it shorter, such as 1.5.");
        int commas = count(digits, ',');
        int points = count(digits, '.');
        if (commas == 0 && points <= 1) return Double.parseDouble(digits);
        if (commas == 1 && points == 0) {
            int at = digits.indexOf(',');
            String before = digits.substring(0, at);
            String after = digits.substring(at + 1);
            if (after.length() == 3 && !before.isEmpty() && before.length() <= 3 && before.charAt(0) != '0') {
                throw new QuantityFault(
                        "\"" + digits + "\" could be " + before + after + " or " + before + "." + after + ".",
                        "Write " + before + after + " or " + before + "." + after + ".");
            }
            return Double.parseDouble(before + "." + after);
        }
        char last = digits.lastIndexOf(',') > digits.lastIndexOf('.') ? ',' : '.';
        boolean decimal = commas > 0 && points > 0;
        String wholes = decimal ? digits.substring(0, digits.lastIndexOf(last)) : digits;
        String rest = decimal ? digits.substring(digits.lastIndexOf(last) + 1) : "0";
        char between = decimal ? (last == ',' ? '.' : ',') : last;
        if (wholes.indexOf(last) >= 0 && decimal || !grouped(wholes, between)) {
            throw new QuantityFault("\"" + digits + "\" is not a number.", "Write it plainly, such as 1200 or 1.5.");
        }
        return Double.parseDouble(wholes.replace(String.valueOf(between), "") + "." + rest);
    }

    private static boolean grouped(String wholes, char between) {
        int run = 0;
        boolean first = true;
        for (int i = 0; i <= wholes.length(); i++) {
            if (i == wholes.length() || wholes.charAt(i) == between) {
                if (first ? run < 1 || run > 3 : run != 3) return false;
                first = false;
                run = 0;
            } else {
                run++;
            }
        }
        return true;
    }

    private static int count(String text, char what) {
        int count = 0;
        for (int i = 0; i < text.length(); i++) if (text.charAt(i) == what) count++;
        return count;
    }
}
