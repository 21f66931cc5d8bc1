package stokewell.file;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * A moment as loggers write it: {@code 2024-01-31T17:05:00+01:00}, {@code 31.01.24 17:05}, {@code Jan 31, 2024 5:05 PM},
 * {@code 20240131 1705}, {@code 1706720700}. One object reads many: what it found stands in its fields.
 */
final class ReadingsStamp {

    /** No offset was written. */
    static final int NONE = Integer.MIN_VALUE;

    private static final String[] MONTHS = {
        "jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"
    };
    private static final Set<String> WEEKDAYS = Set.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");
    /** Hours ahead of UTC. Common practice, from memory. */
    private static final Map<String, Integer> ZONES = Map.ofEntries(
            Map.entry("z", 0),
            Map.entry("utc", 0),
            Map.entry("gmt", 0),
            Map.entry("wet", 0),
            Map.entry("west", 1),
            Map.entry("bst", 1),
            Map.entry("cet", 1),
            Map.entry("cest", 2),
            Map.entry("eet", 2),
            Map.entry("eest", 3),
            Map.entry("est", -5),
            Map.entry("edt", -4),
            Map.entry("cdt", -5),
            Map.entry("mst", -7),
            Map.entry("mdt", -6),
            Map.entry("pst", -8),
            Map.entry("pdt", -7));

    /** Orders that every date so far allows; only dates that leave a choice count. */
    final Set<DateOrder> possible = EnumSet.allOf(DateOrder.class);
    /** Whether a date left a choice. */
    boolean choice;

    /** The last year that a year of two digits can mean. */
    int latest = 2069;

    private final DateOrder order;

    /** Wall clock, s since 1970 as if it were UTC. */
    long local;
    /** s ahead of UTC where the text says so, else {@link #NONE}. */
    int offset;
    /** Whether it was a date without a time of day. */
    boolean dateOnly;

    private String text = "";
    private int at;
    private final int[] part = new int[3];
    private final int[] digits = new int[3];
    private int cachedKey = -1;
    private long cachedDay;

    /** @param order of dates that leave a choice; null to find out which are possible */
    ReadingsStamp(DateOrder order) {
        this.order = order;
    }

    /** Reads a date with or without a time of day. */
    boolean read(String written) {
        begin(written);
        if (at >= text.length()) return false;
        if (clockFirst()) {
            long second = clock();
            if (second < 0) return false;
            skip(" \t,T");
            if (!date()) return false;
            skip(" \t");
            local += second;
            dateOnly = false;
            return at == text.length();
        }
        if (!date()) return false;
        skip(" \tT,_:-");
        if (at == text.length()) {
            dateOnly = true;
            return true;
        }
        long second = clock();
        if (second < 0) return false;
        local += second;
        dateOnly = false;
        return at == text.length();
    }

    /** Reads a time of day alone into {@link #local}. */
    boolean readClock(String written) {
        begin(written);
        if (!clockFirst()) return false;
        local = clock();
        return local >= 0 && at == text.length();
    }

    /** Reads seconds since 1970, or thousandths, millionths, billionths of them by their size. */
    boolean readCount(String written) {
        begin(written);
        int start = at;
        long count = 0;
        while (at < text.length() && Numeral.digit(text.charAt(at)) && at - start < 19) {
            count = 10 * count + text.charAt(at++) - '0';
        }
        int length = at - start;
        if (at < text.length() && text.charAt(at) == '.') {
            at++;
            while (at < text.length() && Numeral.digit(text.charAt(at))) at++;
        }
        if (at < text.length()) return false;
        offset = 0;
        dateOnly = false;
        switch (length) {
            case 9, 10 -> local = count;
            case 12, 13 -> local = count / 1000;
            case 15, 16 -> local = count / 1_000_000;
            case 18, 19 -> local = count / 1_000_000_000;
            default -> {
                return length == 1 && count == 0 && zero();
            }
        }
        return true;
    }

    private boolean zero() {
        local = 0;
        return true;
    }

    private void begin(String written) {
        text = written.strip();
        at = 0;
        offset = NONE;
    }

    private boolean clockFirst() {
        int i = at;
        while (i < text.length() && i - at < 3 && Numeral.digit(text.charAt(i))) i++;
        return i > at
                && i - at <= 2
                && i + 1 < text.length()
                && text.charAt(i) == ':'
                && Numeral.digit(text.charAt(i + 1));
    }

    private boolean date() {
        int monthAt = -1;
        for (int n = 0; n < 3; ) {
            if (n > 0 || at > 0) skip("-/., ");
            if (at >= text.length()) return false;
            char c = text.charAt(at);
            if (Numeral.digit(c)) {
                int from = at;
                part[n] = number(8);
                digits[n] = at - from;
                if (n == 0 && digits[0] == 8) {
                    return day(part[0] / 10000, part[0] / 100 % 100, part[0] % 100);
                }
                if (n == 0 && digits[0] > 4) return false;
                n++;
            } else if (Character.isLetter(c)) {
                String word = word();
                int month = month(word);
                if (month > 0 && monthAt < 0) {
                    monthAt = n;
                    digits[n] = 0;
                    part[n++] = month;
                } else if (n > 0 || word.length() < 3 || !WEEKDAYS.contains(word.substring(0, 3))) {
                    return false;
                }
            } else {
                return false;
            }
        }
        if (monthAt == 0) return day(year(2), part[0], part[1]);
        if (monthAt == 1) return digits[0] == 4 ? day(year(0), part[1], part[2]) : day(year(2), part[1], part[0]);
        if (monthAt == 2) return false;
        if (digits[0] >= 3) return digits[0] == 4 && day(part[0], part[1], part[2]);
        return ordered();
    }

    /** Three numbers, the first of one or two digits. */
    private boolean ordered() {
        boolean dmy = real(year(2), part[1], part[0]);
        boolean mdy = real(year(2), part[0], part[1]);
        boolean ymd = digits[2] <= 2 && digits[0] == 2 && real(year(0), part[1], part[2]);
        if (order == null) {
            dmy &= year(2) <= latest;
            mdy &= year(2) <= latest;
            ymd &= year(0) <= latest;
            choice = true;
            if (!dmy) possible.remove(DateOrder.DMY);
            if (!mdy) possible.remove(DateOrder.MDY);
            if (!ymd) possible.remove(DateOrder.YMD);
            return (dmy || mdy || ymd) && day(dmy || mdy ? year(2) : year(0), 1, 1);
        }
        return switch (order) {
            case DMY -> dmy && day(year(2), part[1], part[0]);
            case MDY -> mdy && day(year(2), part[0], part[1]);
            case YMD -> ymd && day(year(0), part[1], part[2]);
        };
    }

    private int year(int n) {
        return digits[n] > 2 ? part[n] : part[n] + (part[n] < 70 ? 2000 : 1900);
    }

    private static boolean real(int year, int month, int day) {
        if (year < 1900 || year > 2200 || month < 1 || month > 12 || day < 1) return false;
        return day <= 28 || day <= LocalDate.of(year, month, 1).lengthOfMonth();
    }

    private boolean day(int year, int month, int day) {
        if (!real(year, month, day)) return false;
        int key = (year * 16 + month) * 32 + day;
        if (key != cachedKey) {
            cachedDay = LocalDate.of(year, month, day).toEpochDay() * 86400;
            cachedKey = key;
        }
        local = cachedDay;
        return true;
    }

    /** Seconds of the day, and the zone where one follows; -1 where it is none. */
    private long clock() {
        int from = at;
        int hour = number(6);
        int run = at - from;
        int minute = 0;
        int second = 0;
        if (run == 0 || run == 3 || run == 5) return -1;
        if (run >= 4) {
            if (run == 6) second = hour % 100;
            if (run == 6) hour /= 100;
            minute = hour % 100;
            hour /= 100;
        } else if (at < text.length() && (text.charAt(at) == ':' || text.charAt(at) == 'h')) {
            at++;
            minute = two();
            if (minute >= 0 && at < text.length() && text.charAt(at) == ':') {
                at++;
                second = two();
                fraction();
            }
        }
        hour = half(hour);
        boolean midnight = hour == 24 && minute == 0 && second == 0;
        if (hour < 0 || hour > 23 && !midnight || minute < 0 || minute > 59 || second < 0 || second > 60) return -1;
        return zone() ? hour * 3600L + minute * 60L + Math.min(59, second) : -1;
    }

    private int two() {
        int from = at;
        int v = number(2);
        return at == from ? -1 : v;
    }

    private void fraction() {
        if (at + 1 < text.length()
                && (text.charAt(at) == '.' || text.charAt(at) == ',')
                && Numeral.digit(text.charAt(at + 1))) {
            at++;
            while (at < text.length() && Numeral.digit(text.charAt(at))) at++;
        }
    }

    /** The hour of 24 where am or pm follows. */
    private int half(int hour) {
        int back = at;
        skip(" \t\u00a0\u202f");
        if (at < text.length()) {
            char c = Character.toLowerCase(text.charAt(at));
            if (c == 'a' || c == 'p') {
                int end = at + 1;
                if (end < text.length() && text.charAt(end) == '.') end++;
                if (end < text.length() && Character.toLowerCase(text.charAt(end)) == 'm') {
                    end++;
                    if (end < text.length() && text.charAt(end) == '.') end++;
                    at = end;
                    return ClockText.ofHalf(hour, c == 'p');
                }
            }
        }
        at = back;
        return hour;
    }

    private boolean zone() {
        int back = at;
        skip(" \t");
        if (at == text.length()) return true;
        char c = text.charAt(at);
        if (Character.isLetter(c)) {
            Integer hours = ZONES.get(word());
            if (hours == null) return false;
            offset = hours * 3600;
            if (at == text.length() || hours != 0) return true;
            c = text.charAt(at);
        }
        if (c != '+' && c != '-' && c != '\u2212') {
            at = back;
            skip(" \t,");
            return true;
        }
        at++;
        int from = at;
        int hours = number(4);
        int run = at - from;
        int minutes = 0;
        if (run == 0 || run == 3) return false;
        if (run == 4) {
            minutes = hours % 100;
            hours /= 100;
        } else if (at < text.length() && text.charAt(at) == ':') {
            at++;
            minutes = two();
        }
        if (hours > 14 || minutes < 0 || minutes > 59) return false;
        offset = (c == '+' ? 1 : -1) * (hours * 3600 + minutes * 60);
        return true;
    }

    private int number(int most) {
        int v = 0;
        int from = at;
        while (at < text.length() && at - from < most && Numeral.digit(text.charAt(at))) {
            v = 10 * v + text.charAt(at++) - '0';
        }
        return v;
    }

    private String word() {
        int from = at;
        while (at < text.length() && Character.isLetter(text.charAt(at))) at++;
        return text.substring(from, at).toLowerCase(Locale.ROOT);
    }

    private static int month(String word) {
        for (int m = 0; m < 12; m++) if (word.length() >= 3 && word.startsWith(MONTHS[m])) return m + 1;
        return 0;
    }

    private void skip(String signs) {
        while (at < text.length() && signs.indexOf(text.charAt(at)) >= 0) at++;
    }
}
