package stokewell.file;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A time as a weather file writes it.
 *
 * @param second of the day, 0 to 86400: hour 24 is the midnight that ends the day
 * @param offset s ahead of UTC if the file says so with each time
 */
record WeatherStamp(int year, int month, int day, int second, Optional<Integer> offset) {

    /** In which order a date is written. */
    enum Order {
        YEAR_MONTH_DAY,
        MONTH_DAY_YEAR,
        DAY_MONTH_YEAR
    }

    private static final Pattern DATE = Pattern.compile("(\\d{1,4})[-/.](\\d{1,2})[-/.](\\d{1,4})(.*)");
    private static final Pattern COMPACT = Pattern.compile("(\\d{4})(\\d{2})(\\d{2})(?::?(\\d{2}):?(\\d{2}))?");
    private static final Pattern CLOCK = Pattern.compile(
            "[T, ]*(\\d{1,2})(?::(\\d{2})(?::(\\d{2})(?:\\.\\d{1,9})?)?)?[\\s\u00a0\u202f]*(?:([AaPp])\\.?[Mm]\\.?)?"
                    + "\\s*(Z|UTC|GMT|[+-]\\d{2}:?\\d{2})?");

    /** As PVGIS writes it: "20050101:0010". */
    private static final int COMPACT_LENGTH = 13;

    static final int DAY = 86400;

    /** A date with or without a clock time. */
    static Optional<WeatherStamp> parse(String text, Order order) {
        String trimmed = text.trim();
        if (trimmed.length() == COMPACT_LENGTH && trimmed.charAt(8) == ':') {
            int date = Decimal.whole(trimmed, 0, 8);
            int hour = Decimal.whole(trimmed, 9, 11);
            int minute = Decimal.whole(trimmed, 11, 13);
            if (date >= 0 && hour >= 0 && minute >= 0) {
                return of(date / 10000, date / 100 % 100, date % 100, hour * 3600 + minute * 60, Optional.empty());
            }
        }
        Matcher compact = COMPACT.matcher(trimmed);
        if (compact.matches()) {
            int second = compact.group(4) == null ? 0 : number(compact, 4) * 3600 + number(compact, 5) * 60;
            return of(number(compact, 1), number(compact, 2), number(compact, 3), second, Optional.empty());
        }
        Matcher date = DATE.matcher(trimmed);
        if (!date.matches()) {
            return Optional.empty();
        }
        int[] parts = {number(date, 1), number(date, 2), number(date, 3)};
        Order written = date.group(1).length() == 4 ? Order.YEAR_MONTH_DAY : order;
        String clock = date.group(4).trim();
        if (clock.isEmpty()) {
            return ordered(parts, written, 0, Optional.empty());
        }
        Matcher time = CLOCK.matcher(clock);
        return time.matches() ? ordered(parts, written, seconds(time), offset(time)) : Optional.empty();
    }

    /** Seconds of the day of a clock time alone: "7", "07:30", "24:00", "7:30 AM". */
    static Optional<Integer> clock(String text) {
        Matcher time = CLOCK.matcher(text.trim());
        return time.matches() ? Optional.of(seconds(time)) : Optional.empty();
    }

    static Optional<WeatherStamp> of(int year, int month, int day, int second, Optional<Integer> offset) {
        boolean real = year >= 1700
                && year <= 2300
                && month >= 1
                && month <= 12
                && day >= 1
                && day <= YearMonth.of(year, month).lengthOfMonth()
                && second >= 0
                && second <= DAY;
        return real ? Optional.of(new WeatherStamp(year, month, day, second, offset)) : Optional.empty();
    }

    /** Whether a date begins with a year of four digits: then there is no question of order. */
    static boolean yearFirst(String text) {
        return text.length() > 4 && Decimal.whole(text, 0, 4) >= 0;
    }

    /** Which of the two orders a date with the year last must have: empty if it could be either or is no such date. */
    static Optional<Order> orderShownBy(String text) {
        Matcher date = DATE.matcher(text.trim());
        if (!date.matches() || date.group(1).length() == 4) {
            return Optional.empty();
        }
        if (number(date, 1) > 12) {
            return Optional.of(Order.DAY_MONTH_YEAR);
        }
        return number(date, 2) > 12 ? Optional.of(Order.MONTH_DAY_YEAR) : Optional.empty();
    }

    LocalDateTime moment() {
        return LocalDate.of(year, month, day).atStartOfDay().plusSeconds(second);
    }

    WeatherStamp withSecond(int other) {
        return new WeatherStamp(year, month, day, other, offset);
    }

    private static Optional<WeatherStamp> ordered(int[] parts, Order order, int second, Optional<Integer> offset) {
        return switch (order) {
            case YEAR_MONTH_DAY -> of(parts[0], parts[1], parts[2], second, offset);
            case MONTH_DAY_YEAR -> of(century(parts[2]), parts[0], parts[1], second, offset);
            case DAY_MONTH_YEAR -> of(century(parts[2]), parts[1], parts[0], second, offset);
        };
    }

    private static int century(int year) {
        return year >= 100 ? year : year + (year < 50 ? 2000 : 1900);
    }

    private static int seconds(Matcher time) {
        int minutes = time.group(2) == null ? 0 : number(time, 2);
        int seconds = time.group(3) == null ? 0 : number(time, 3);
        String half = time.group(4);
        int hour = half == null
                ? number(time, 1)
                : ClockText.ofHalf(number(time, 1), Character.toLowerCase(half.charAt(0)) == 'p');
        return hour < 0 || minutes > 59 || seconds > 59 ? -1 : hour * 3600 + minutes * 60 + seconds;
    }

    private static Optional<Integer> offset(Matcher time) {
        String zone = time.group(5);
        if (zone == null) {
            return Optional.empty();
        }
        if (Character.isLetter(zone.charAt(0))) {
            return Optional.of(0);
        }
        String digits = zone.substring(1).replace(":", "");
        int seconds = Integer.parseInt(digits.substring(0, 2)) * 3600 + Integer.parseInt(digits.substring(2)) * 60;
        return Optional.of(zone.charAt(0) == '-' ? -seconds : seconds);
    }

    private static int number(Matcher matcher, int group) {
        return Integer.parseInt(matcher.group(group));
    }
}
