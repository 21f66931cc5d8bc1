package stokewell.file;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import stokewell.weather.Site;

/** Reads tables with named columns: TMY3, NSRDB and PVGIS by what is known of them, any other by its headings. */
final class WeatherCsv {

    private static final int HEADING_WITHIN = 80;
    private static final char[] SEPARATORS = {',', ';', '\t'};
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(\\d{1,15}(\\.\\d{0,25})?|\\.\\d{1,25})([eE][+-]?\\d{1,2})?");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d{0,15},\\d{1,25}");
    private static final Pattern YEAR_LAST = Pattern.compile("\\d{1,2}[-/.]\\d{1,2}[-/.]\\d");
    /** Numbers that stand for "not measured". */
    private static final double[] CODES = {-9999, -9900, -999, -999.9, -99.9, -99, 999.9, 9999, 99999, 9999.9};

    private static final Set<String> WORDS = Set.of("", "na", "n/a", "nan", "null", "none", "-", "m", "missing");

    private final String file;
    private final List<String> lines;
    private final WeatherNotes notes;
    private char separator;
    private int heading = -1;
    private WeatherColumns columns;

    private WeatherCsv(String file, List<String> lines, WeatherNotes notes) {
        this.file = file;
        this.lines = lines;
        this.notes = notes;
    }

    static WeatherTable read(String file, List<String> lines, WeatherNotes notes) {
        return new WeatherCsv(file, lines, notes).table();
    }

    private WeatherTable table() {
        WeatherPlace place = WeatherPlace.of(lines, notes);
        findHeading(place.level());
        columns.odd.forEach(what -> notes.add(heading + 1, what));
        columns.quantities.forEach((quantity, column) -> {
            boolean plainShare = column.unit() == WeatherUnit.SHARE;
            if (!column.unitGiven() && !plainShare && place.format() == WeatherPlace.Format.PLAIN) {
                notes.add(heading + 1, quantity.label + " has no unit; " + column.unit().symbol + " assumed");
            }
        });
        List<CsvRecord> records = records();
        boolean parts = columns.datesInParts();
        int date = parts ? -1 : columns.date();
        int clock = parts ? columns.clock(-1) : columns.clock(date);
        WeatherStamp.Order order = parts ? WeatherStamp.Order.YEAR_MONTH_DAY : order(records, date);
        List<WeatherTable.Row> rows = new ArrayList<>();
        for (CsvRecord row : records) {
            int line = heading + 1 + (int) row.getStartingLineNumber();
            Optional<WeatherStamp> stamp = parts ? stampOfParts(row, clock) : stamp(row, date, clock, order);
            if (stamp.isEmpty()) {
                notes.add("rows without a time that can be read, left out", line, "no time that can be read; left out");
            } else {
                rows.add(new WeatherTable.Row(line, stamp.get(), values(row, line)));
            }
        }
        boolean utc = place.utc() || columns.saysUtc(date) || columns.saysUtc(clock);
        Set<WeatherQuantity> present = EnumSet.noneOf(WeatherQuantity.class);
        present.addAll(columns.quantities.keySet());
        return new WeatherTable(
                place.format().words,
                place.site(),
                utc,
                place.sunCentre(),
                place.format() != WeatherPlace.Format.PLAIN,
                present,
                rows);
    }

    private void findHeading(boolean level) {
        boolean temperatureSeen = false;
        for (int i = 0; i < Math.min(lines.size(), HEADING_WITHIN); i++) {
            for (char candidate : SEPARATORS) {
                List<String> cells = cells(lines.get(i), candidate);
                if (cells.size() < 2) {
                    continue;
                }
                List<String> units = i + 1 < lines.size() ? unitRow(cells(lines.get(i + 1), candidate)) : List.of();
                var found = new WeatherColumns(cells, units, level);
                temperatureSeen |= found.quantities.containsKey(WeatherQuantity.TEMPERATURE);
                if (found.usable()) {
                    heading = units.isEmpty() ? i : i + 1;
                    separator = candidate;
                    columns = found;
                    return;
                }
            }
        }
        throw new WeatherFault(
                file,
                0,
                temperatureSeen
                        ? "there is a temperature column but none for the time"
                        : "no row of headings was found",
                "Give the table a first row such as: time, temperature [°C], wind [m/s]");
    }

    /** The row itself if it is a row of units, otherwise empty. */
    private static List<String> unitRow(List<String> cells) {
        long units = cells.stream()
                .filter(c -> WeatherUnit.named(c).isPresent() && !c.trim().equals("1"))
                .count();
        boolean numbers = cells.stream()
                .anyMatch(c -> NUMBER.matcher(c.trim()).matches() && !c.trim().equals("1"));
        return units > 0 && !numbers ? cells : List.of();
    }

    private static List<String> cells(String line, char separator) {
        try {
            return CsvReader.builder()
                    .fieldSeparator(separator)
                    .ofSingleCsvRecord(line)
                    .getFields();
        } catch (CsvParseException e) {
            return List.of();
        }
    }

    /** Rows below the headings, to the first empty line: text may follow the table there. */
    private List<CsvRecord> records() {
        int end = heading + 1;
        while (end < lines.size() && !lines.get(end).isBlank()) {
            end++;
        }
        tellOfRest(end);
        String body = String.join("\n", lines.subList(heading + 1, end));
        List<CsvRecord> records = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator)
                .allowUnclosedQuote(false)
                .ofCsvRecord(body)) {
            reader.forEach(records::add);
        } catch (CsvParseException | java.io.IOException | java.io.UncheckedIOException e) {
            throw new WeatherFault(
                    file,
                    heading + 2 + records.size(),
                    "the table cannot be taken apart after this row",
                    "It is cut short or holds something else, or a quotation mark before it is not closed. Get the file again, or "
                            + "take the row out");
        }
        return records;
    }

    /** What stands after an empty line is a footer; a table that goes on there would lose its end without anybody's wish. */
    private void tellOfRest(int end) {
        int rest = 0;
        int wide = cells(lines.get(end - 1), separator).size();
        for (int i = end; i < lines.size(); i++) {
            List<String> cells = cells(lines.get(i), separator);
            if (!cells.isEmpty() && cells.get(0).matches("\\d.*")) {
                if (cells.size() == wide)
                    throw new WeatherFault(file, end + 1, "an empty line stands within the table", "Take it out");
                rest++;
            }
        }
        if (rest > 0) {
            notes.add(end + 1, rest + " rows after an empty line were not read");
        }
    }

    private WeatherStamp.Order order(List<CsvRecord> records, int date) {
        Optional<WeatherStamp.Order> stated = columns.statedOrder(date);
        if (stated.isPresent()) {
            return stated.get();
        }
        Set<WeatherStamp.Order> shown = EnumSet.noneOf(WeatherStamp.Order.class);
        boolean yearLast = false;
        for (CsvRecord row : records) {
            if (WeatherStamp.yearFirst(cell(row, date).trim())) {
                continue;
            }
            WeatherStamp.orderShownBy(cell(row, date)).ifPresent(shown::add);
            yearLast |= YEAR_LAST.matcher(cell(row, date).trim()).lookingAt();
        }
        if (!yearLast) {
            return WeatherStamp.Order.YEAR_MONTH_DAY;
        }
        if (shown.size() != 1) {
            throw new WeatherFault(
                    file,
                    heading + 2,
                    shown.isEmpty()
                            ? "dates can be read as day/month or as month/day"
                            : "some dates are day/month and some month/day",
                    "Write dates as 2024-01-31, or the order in the heading: Date (MM/DD/YYYY)");
        }
        return shown.iterator().next();
    }

    private Optional<WeatherStamp> stamp(CsvRecord row, int date, int clock, WeatherStamp.Order order) {
        Optional<WeatherStamp> day = WeatherStamp.parse(cell(row, date), order);
        if (clock < 0 || day.isEmpty() || cell(row, date).trim().length() > "2024-01-31".length()) {
            return day;
        }
        return WeatherStamp.clock(cell(row, clock))
                .filter(s -> s >= 0 && s <= WeatherStamp.DAY)
                .map(s -> day.get().withSecond(s));
    }

    private Optional<WeatherStamp> stampOfParts(CsvRecord row, int clock) {
        Optional<Integer> year = whole(row, columns.named("year"));
        Optional<Integer> month = whole(row, columns.named("month", "m"));
        Optional<Integer> day = whole(row, columns.named("day", "d"));
        Optional<Integer> second = clock < 0 ? Optional.of(0) : WeatherStamp.clock(cell(row, clock));
        int minuteColumn = columns.named("minute");
        Optional<Integer> minute = minuteColumn < 0 ? Optional.of(0) : whole(row, minuteColumn);
        if (year.isEmpty() || month.isEmpty() || day.isEmpty() || second.isEmpty() || minute.isEmpty()) {
            return Optional.empty();
        }
        return WeatherStamp.of(year.get(), month.get(), day.get(), second.get() + 60 * minute.get(), Optional.empty());
    }

    private static Optional<Integer> whole(CsvRecord row, int column) {
        String text = cell(row, column).trim();
        return text.matches("\\d{1,4}") ? Optional.of(Integer.valueOf(text)) : Optional.empty();
    }

    private double[] values(CsvRecord row, int line) {
        double[] values = new double[WeatherQuantity.values().length];
        Arrays.fill(values, Double.NaN);
        for (Map.Entry<WeatherQuantity, WeatherColumns.Column> entry : columns.quantities.entrySet()) {
            WeatherColumns.Column column = entry.getValue();
            String text = cell(row, column.index()).trim();
            double read = Decimal.read(text);
            if (!Double.isNaN(read)) {
                if (!isCode(read)) {
                    values[entry.getKey().ordinal()] = column.unit().toSi(read);
                }
                continue;
            }
            if (WORDS.contains(text.toLowerCase(Locale.ROOT))) {
                continue;
            }
            if (separator != ',' && DECIMAL_COMMA.matcher(text).matches()) {
                text = text.replace(',', '.');
            }
            if (!NUMBER.matcher(text).matches()) {
                notes.add(
                        "values that are not numbers, taken as missing",
                        line,
                        entry.getKey().label + " \"" + text.substring(0, Math.min(20, text.length()))
                                + "\" is not a number; taken as missing");
                continue;
            }
            double written = Double.parseDouble(text);
            if (!isCode(written)) {
                values[entry.getKey().ordinal()] = column.unit().toSi(written);
            }
        }
        return values;
    }

    /** Whether a number stands for "not measured"; none of them is small. */
    private static boolean isCode(double written) {
        if (Math.abs(written) < 99) {
            return false;
        }
        for (double code : CODES) {
            if (written == code) {
                return true;
            }
        }
        return false;
    }

    private static String cell(CsvRecord row, int column) {
        return column >= 0 && column < row.getFieldCount() ? row.getField(column) : "";
    }

    /** For the place: where the file says it is. */
    static Optional<Site> site(double latitude, double longitude, double hours, double altitude) {
        boolean real = Math.abs(latitude) <= 90
                && Math.abs(longitude) <= 180
                && Math.abs(hours) <= 14
                && altitude >= -450
                && altitude <= 9000;
        return real
                ? Optional.of(new Site(Math.toRadians(latitude), Math.toRadians(longitude), hours * 3600, altitude))
                : Optional.empty();
    }
}
