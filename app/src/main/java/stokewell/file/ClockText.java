package stokewell.file;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** Times of day: {@code 17:00}, {@code 5:30 pm}, {@code noon}; and spans such as {@code 1:30} for an hour and a half. */
final class ClockText {

    private static final String RIGHT = "Write 17:00 or 5:30 pm.";

    private ClockText() {}

    /** Seconds after midnight. */
    static double read(String text) {
        String plain = text.toLowerCase(Locale.ROOT).replace(".m.", "m").strip();
        if (plain.equals("noon")) return 12 * 3600;
        if (plain.equals("midnight")) return 0;
        boolean pm = plain.endsWith("pm");
        boolean half = pm || plain.endsWith("am");
        if (half) plain = plain.substring(0, plain.length() - 2).strip();
        if (!half && plain.indexOf(':') < 0 && plain.indexOf('h') < 0) {
            throw new QuantityFault("\"" + text + "\" is not a time of day.", RIGHT);
        }
        if (plain.endsWith("h")) plain += "00";
        double seconds = parts(plain.replace('h', ':'), text, 24);
        if (half) {
            int hour = (int) (seconds / 3600);
            int of24 = ofHalf(hour, pm);
            if (of24 < 0) throw new QuantityFault("\"" + text + "\" is not a time of day.", RIGHT);
            seconds += 3600 * (of24 - hour);
        }
        if (seconds > 86400) throw new QuantityFault("\"" + text + "\" is after 24:00.", RIGHT);
        return seconds;
    }

    /** The hour of 24 of an hour that stands before am or pm; -1 where it cannot. */
    static int ofHalf(int hour, boolean afternoon) {
        return hour < 1 || hour > 12 ? -1 : hour % 12 + (afternoon ? 12 : 0);
    }

    /** Seconds of a span written as hours and minutes. */
    static double span(String text) {
        boolean minus = text.charAt(0) == '-' || text.charAt(0) == '−';
        String rest = minus || text.charAt(0) == '+' ? text.substring(1) : text;
        if (rest.endsWith("h")) rest = rest.substring(0, rest.length() - 1);
        double seconds = parts(rest.strip(), text, 999);
        return minus ? -seconds : seconds;
    }

    private static double parts(String plain, String text, int hours) {
        double seconds = 0;
        double unit = 3600;
        int from = 0;
        while (true) {
            int to = plain.indexOf(':', from);
            String part = to < 0 ? plain.substring(from) : plain.substring(from, to);
            double value = part(part, text, to < 0 && unit == 1);
            if (value > (unit == 3600 ? hours : 59.999999999)) {
                throw new QuantityFault("\"" + text + "\" is not a time.", RIGHT);
            }
            seconds += value * unit;
            if (to < 0) return seconds;
            if (unit == 1) throw new QuantityFault("\"" + text + "\" is not a time.", RIGHT);
            unit /= 60;
            from = to + 1;
        }
    }

    private static double part(String part, String text, boolean decimals) {
        boolean digits = !part.isEmpty() && part.length() <= (decimals ? 20 : 3);
        int points = 0;
        for (int i = 0; i < part.length(); i++) {
            char c = part.charAt(i);
            if (c == '.' && decimals && i > 0) points++;
            else if (!Numeral.digit(c)) digits = false;
        }
        if (!digits || points > 1) throw new QuantityFault("\"" + text + "\" is not a time.", RIGHT);
        return Double.parseDouble(part);
    }

    static String write(double seconds, int digits) {
        BigDecimal all =
                new BigDecimal(seconds).setScale(digits <= 4 ? 0 : Math.max(0, digits - 5), RoundingMode.HALF_EVEN);
        long minutes = digits <= 4 ? Math.round(seconds / 60) : all.longValue() / 60;
        String text = minutes / 60 + ":" + (minutes % 60 < 10 ? "0" : "") + minutes % 60;
        if (digits <= 4) return text;
        BigDecimal rest = all.subtract(BigDecimal.valueOf(minutes * 60));
        if (rest.signum() == 0) return text;
        String plain = rest.stripTrailingZeros().toPlainString();
        return text + ":" + (rest.compareTo(BigDecimal.TEN) < 0 ? "0" : "") + plain;
    }
}
