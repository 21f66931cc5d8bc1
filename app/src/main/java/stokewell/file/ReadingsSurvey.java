package stokewell.file;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;

/** Looks through a file before it is read: in which order its dates are written, and which decimal mark it has. */
final class ReadingsSurvey {

    private static final int ROWS_FOR_MARK = 5000;
    private static final long LEAP = 20 * 86400L;

    private final String file;
    private final ReadingsLayout layout;
    private final ReadingsStamp any = new ReadingsStamp(null);
    private final ReadingsStamp dmy = new ReadingsStamp(DateOrder.DMY);
    private final ReadingsStamp mdy = new ReadingsStamp(DateOrder.MDY);
    private long lastDmy;
    private long lastMdy;
    private int leapsDmy;
    private int leapsMdy;
    private int seen;
    private int pointRow;
    private int commaRow;
    private int eitherRow;

    /** Null where the dates leave no choice. */
    DateOrder order;

    char mark;
    /** Whether the order was told by days that follow each other, not by a day over 12. */
    boolean byRunning;

    private ReadingsSurvey(String file, ReadingsLayout layout) {
        this.file = file;
        this.layout = layout;
    }

    static ReadingsSurvey of(String file, ReadingsText text, ReadingsLayout layout, ReadingsAsk ask)
            throws IOException {
        ReadingsSurvey survey = new ReadingsSurvey(file, layout);
        survey.look(text, ask);
        survey.decideMark(ask);
        survey.decideOrder(ask);
        return survey;
    }

    private void look(ReadingsText text, ReadingsAsk ask) throws IOException {
        any.latest = ask.now().atZone(java.time.ZoneOffset.UTC).getYear() + 1;
        int time = layout.column(ReadingsLayout.Role.MOMENT);
        if (time < 0) time = layout.column(ReadingsLayout.Role.DATE);
        try (CsvReader<CsvRecord> rows = ReadingsCells.rows(text.from(layout.first), layout.separator)) {
            for (CsvRecord row : rows) {
                if (time >= 0 && ask.dates().isEmpty()) date(ReadingsCells.cell(row, time), row);
                if (seen++ < ROWS_FOR_MARK) {
                    for (int c = 0; c < layout.roles.length; c++) {
                        ReadingsLayout.Role role = layout.roles[c];
                        if (role == ReadingsLayout.Role.VALUE || role == ReadingsLayout.Role.EMPTY) {
                            number(ReadingsCells.cell(row, c), row);
                        }
                    }
                } else if (time < 0 || ask.dates().isPresent() || !any.choice || any.possible.size() == 1) {
                    return;
                }
            }
        } catch (CsvParseException | UncheckedIOException e) {
            // the reading itself comes to the same row and tells of it
        }
    }

    private void date(String cell, CsvRecord row) {
        if (any.choice && any.possible.size() == 1 || !any.read(cell)) {
            if (any.possible.isEmpty()) throw mixed(row);
            return;
        }
        if (any.possible.isEmpty()) throw mixed(row);
        if (!any.choice) return;
        if (dmy.read(cell)) {
            if (lastDmy != 0 && Math.abs(dmy.local - lastDmy) > LEAP) leapsDmy++;
            lastDmy = dmy.local;
        }
        if (mdy.read(cell)) {
            if (lastMdy != 0 && Math.abs(mdy.local - lastMdy) > LEAP) leapsMdy++;
            lastMdy = mdy.local;
        }
    }

    private ReadingsFault mixed(CsvRecord row) {
        return new ReadingsFault(
                file,
                layout.first + (int) row.getStartingLineNumber(),
                "this date fits no order that the dates before it allow",
                "Write all dates in one order, or as 2024-01-31");
    }

    /** A cell tells of the decimal mark by the digits behind it: three may be thousands. */
    private void number(String cell, CsvRecord row) {
        int point = cell.lastIndexOf('.');
        int comma = cell.lastIndexOf(',');
        if (point < 0 && comma < 0) return;
        int line = layout.first + (int) row.getStartingLineNumber();
        if (point >= 0 && comma >= 0) {
            mark(point > comma, line);
            return;
        }
        char sign = point >= 0 ? '.' : ',';
        int at = Math.max(point, comma);
        if (at > 0 && !Numeral.digit(cell.charAt(at - 1)) || cell.indexOf(sign) != at) {
            if (cell.indexOf(sign) != at && cell.strip().matches("[+-]?\\d{1,3}([.,]\\d{3})+")) mark(sign == ',', line);
            return;
        }
        int end = at + 1;
        while (end < cell.length() && Numeral.digit(cell.charAt(end))) end++;
        int before = at;
        while (before > 0 && Numeral.digit(cell.charAt(before - 1))) before--;
        boolean thousands = end - at == 4 && at - before >= 1 && at - before <= 3 && cell.charAt(before) != '0';
        if (!thousands) mark(sign == '.', line);
        else if (sign == ',') eitherRow = eitherRow == 0 ? line : eitherRow;
    }

    private void mark(boolean point, int line) {
        if (point && pointRow == 0) pointRow = line;
        if (!point && commaRow == 0) commaRow = line;
    }

    private void decideMark(ReadingsAsk ask) {
        if (ask.decimal().isPresent()) {
            mark = ask.decimal().get();
        } else if (pointRow > 0 && commaRow > 0) {
            throw new ReadingsFault(
                    file,
                    Math.max(pointRow, commaRow),
                    "numbers with a decimal point and with a decimal comma stand in one file",
                    "Say which it is: --decimal point or --decimal comma");
        } else if (commaRow > 0) {
            mark = ',';
        } else if (pointRow == 0 && eitherRow > 0) {
            throw new ReadingsFault(
                    file,
                    eitherRow,
                    "a comma here can be a decimal mark or stand for thousands",
                    "Say which: --decimal point or --decimal comma");
        } else {
            mark = '.';
        }
    }

    private void decideOrder(ReadingsAsk ask) {
        if (ask.dates().isPresent()) {
            order = ask.dates().get();
            return;
        }
        if (!any.choice) {
            // dates with the year first or the month in letters need none; any does
            order = DateOrder.DMY;
            return;
        }
        if (any.possible.size() == 1) {
            order = any.possible.iterator().next();
            return;
        }
        boolean both = any.possible.contains(DateOrder.DMY) && any.possible.contains(DateOrder.MDY);
        if (both && !any.possible.contains(DateOrder.YMD)) {
            if (leapsMdy > 3 * leapsDmy) order = DateOrder.DMY;
            if (leapsDmy > 3 * leapsMdy) order = DateOrder.MDY;
            byRunning = order != null;
        }
        if (order == null) {
            throw new ReadingsFault(
                    file,
                    layout.first + 1,
                    "its dates can be read as "
                            + String.join(
                                    " or ",
                                    any.possible.stream().map(DateOrder::word).toList()) + ", day, month and year",
                    "Say which: --dates dmy, --dates mdy or --dates ymd");
        }
    }
}
