package stokewell.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.Month;
import java.time.Year;
import java.util.Locale;
import stokewell.file.Quantity;
import stokewell.file.QuantityFault;
import stokewell.rig.Dimension;

/**
 * Moments as people write them: {@code 2016-01-15 20:00}, {@code 15 Jan 8:00}, {@code 15 Jan}, {@code 20:00}. A date
 * without a year is one of the record's.
 *
 * @param day  null where none is written
 * @param time null where none is written
 */
record Moments(LocalDate day, LocalTime time) {

    private static final String RIGHT = "Write 2016-01-15 08:00, 15 Jan 8:00, 15 Jan or 20:00.";

    /**
     * Reads one.
     *
     * @param earliest the first day that a date without a year may mean: the next such day from there
     */
    static Moments read(String option, String text, LocalDate earliest) {
        String plain = text.strip().replace('T', ' ').replaceAll("\\s+", " ");
        String[] words = plain.split(" ");
        try {
            if (words[0].matches("\\d{4}-\\d{1,2}-\\d{1,2}")) {
                String[] parts = words[0].split("-");
                LocalDate day = LocalDate.of(
                        Integer.parseInt(parts[0]), Integer.parseInt(parts[1]), Integer.parseInt(parts[2]));
                return new Moments(day, timeIn(words, 1));
            }
            Month month = words.length > 1 ? month(words[1]) : null;
            if (month != null && words[0].matches("\\d{1,2}\\.?")) {
                int dom = Integer.parseInt(words[0].replace(".", ""));
                if (words.length > 2 && words[2].matches("\\d{4}")) {
                    return new Moments(LocalDate.of(Integer.parseInt(words[2]), month, dom), timeIn(words, 3));
                }
                return new Moments(next(month, dom, earliest), timeIn(words, 2));
            }
            return new Moments(null, timeIn(words, 0));
        } catch (DateTimeException | QuantityFault e) {
            throw Complaint.usage(option + " \"" + text + "\" is not a moment.", RIGHT);
        }
    }

    /** A time of day. */
    static LocalTime clock(String text) {
        return LocalTime.ofSecondOfDay(Math.round(Quantity.parse(text, Dimension.CLOCK)) % 86400);
    }

    /** With a day and a time where they were not written. */
    LocalDateTime or(LocalDate otherDay, LocalTime otherTime) {
        return LocalDateTime.of(day == null ? otherDay : day, time == null ? otherTime : time);
    }

    private static LocalTime timeIn(String[] words, int from) {
        if (from >= words.length) return null;
        StringBuilder rest = new StringBuilder();
        for (int i = from; i < words.length; i++)
            rest.append(i > from ? " " : "").append(words[i]);
        return clock(rest.toString());
    }

    private static LocalDate next(Month month, int dom, LocalDate earliest) {
        for (int year = earliest.getYear(); ; year++) {
            if (month == Month.FEBRUARY && dom == 29 && !Year.isLeap(year)) continue;
            LocalDate day = LocalDate.of(year, month, dom);
            if (!day.isBefore(earliest)) return day;
        }
    }

    private static Month month(String word) {
        String three = word.toLowerCase(Locale.ROOT);
        for (Month m : Month.values()) {
            if (three.length() >= 3 && m.name().toLowerCase(Locale.ROOT).startsWith(three)) return m;
        }
        return null;
    }
}
