package stokewell.file;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The number in a cell, as loggers write it. One for a file: it knows the file's decimal mark. */
final class ReadingsNumber {

    /** What a cell holds. */
    enum What {
        NUMBER,
        /** Nothing, or a word or code for nothing. */
        MISSING,
        /** On or off; the value is 1 or 0. */
        SWITCH,
        TEXT
    }

    private static final Set<String> NOTHING = Set.of(
            "",
            "na",
            "n/a",
            "nan",
            "null",
            "none",
            "nil",
            "-",
            "--",
            "---",
            "missing",
            "#n/a",
            "#value!",
            "unavailable",
            "unknown",
            "err",
            "error",
            "err.",
            "fault",
            "ol",
            "over",
            "under",
            "no data",
            "nodata",
            "?",
            "*");

    private static final double[] TEN = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    private final char mark;
    private final char group;
    private final Map<String, Optional<SensorUnit>> units = new HashMap<>();

    double value;
    /** The unit that stands behind the number; null where none does. */
    SensorUnit unit;

    /** @param mark the decimal mark: {@code '.'} or {@code ','} */
    ReadingsNumber(char mark) {
        this.mark = mark;
        group = mark == '.' ? ',' : '.';
    }

    /** Reads a cell. */
    What read(String text) {
        unit = null;
        int end = text.length();
        int i = 0;
        while (i < end && blank(text.charAt(i))) i++;
        while (end > i && blank(text.charAt(end - 1))) end--;
        if (i == end) return What.MISSING;
        What plain = plain(text, i, end);
        if (plain != What.TEXT) return plain;
        return words(text.substring(i, end));
    }

    /** Digits with at most one mark. */
    private What plain(String text, int from, int end) {
        int i = from;
        char sign = text.charAt(i);
        boolean minus = sign == '-' || sign == '\u2212';
        if (minus || sign == '+') i++;
        long digits = 0;
        int count = 0;
        int decimals = -1;
        for (; i < end; i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9') {
                if (++count > 15) return What.TEXT;
                digits = digits * 10 + (c - '0');
                if (decimals >= 0) decimals++;
            } else if (c == mark && decimals < 0) {
                decimals = 0;
            } else {
                return What.TEXT;
            }
        }
        if (count == 0) return What.TEXT;
        value = decimals > 0 ? digits / TEN[decimals] : digits;
        if (minus) value = digits == 0 ? 0 : -value;
        return nothing(value) ? What.MISSING : What.NUMBER;
    }

    /** Codes that loggers write where nothing was measured. */
    private static boolean nothing(double value) {
        return value == -9999 || value == -999 || value == -999.9 || value == -99999;
    }

    private What words(String text) {
        String low = text.toLowerCase(java.util.Locale.ROOT);
        if (NOTHING.contains(low)) return What.MISSING;
        switch (low) {
            case "on", "true", "yes" -> {
                value = 1;
                return What.SWITCH;
            }
            case "off", "false", "no" -> {
                value = 0;
                return What.SWITCH;
            }
            default -> {}
        }
        int i = 0;
        while (i < text.length() && ofNumber(text, i)) i++;
        String tail = text.substring(i).strip();
        if (!tail.isEmpty()) {
            SensorUnit named = units.computeIfAbsent(tail, SensorUnit::named).orElse(null);
            if (named == null) return What.TEXT;
            What what = grouped(text.substring(0, i).strip());
            unit = what == What.NUMBER ? named : null;
            return what;
        }
        return grouped(text);
    }

    private boolean ofNumber(String text, int i) {
        char c = text.charAt(i);
        if (c >= '0' && c <= '9' || c == mark || c == group || blank(c) || c == '\'' || c == '\u2019') return true;
        if ((c == '-' || c == '+' || c == '\u2212') && (i == 0 || exponent(text.charAt(i - 1)))) return true;
        // an exponent has a digit before and a digit or a sign behind it
        return exponent(c)
                && i > 0
                && Numeral.digit(text.charAt(i - 1))
                && i + 1 < text.length()
                && (Numeral.digit(text.charAt(i + 1)) || text.charAt(i + 1) == '-' || text.charAt(i + 1) == '+');
    }

    private static boolean exponent(char c) {
        return c == 'e' || c == 'E';
    }

    /** With groups of thousands, an exponent or many digits. */
    private What grouped(String text) {
        StringBuilder bare = new StringBuilder(text.length());
        int sinceGroup = -1;
        boolean whole = true;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Numeral.digit(c)) {
                bare.append(c);
                if (sinceGroup >= 0) sinceGroup++;
            } else if (whole && (c == group || blank(c) || c == '\'' || c == '\u2019')) {
                if (bare.length() == 0 || sinceGroup >= 0 && sinceGroup != 3) return What.TEXT;
                sinceGroup = 0;
            } else {
                if (whole && sinceGroup >= 0 && sinceGroup != 3) return What.TEXT;
                if (c == mark && !whole) return What.TEXT;
                whole = false;
                sinceGroup = -1;
                if (c == '\u2212' || c == '-' || c == '+') {
                    if (c != '+') bare.append('-');
                    if (i == 0) whole = true;
                } else {
                    bare.append(c == mark ? '.' : c);
                }
            }
        }
        if (whole && sinceGroup >= 0 && sinceGroup != 3) return What.TEXT;
        if (bare.length() == 0 || bare.length() > 60) return What.TEXT;
        try {
            value = Double.parseDouble(bare.toString()) + 0.0;
        } catch (NumberFormatException e) {
            return What.TEXT;
        }
        if (!Double.isFinite(value)) return What.MISSING;
        return nothing(value) ? What.MISSING : What.NUMBER;
    }

    private static boolean blank(char c) {
        return c == ' ' || c == '\t' || c == '\u00a0' || c == '\u2009' || c == '\u202f';
    }
}
