package stokewell.file;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stokewell.file.ReadingsGroup.Column;
import stokewell.file.ReadingsLayout.Role;

/** Reads the rows of a table into groups. The first row that cannot be understood ends it. */
final class ReadingsGather {

    private static final int KEPT = 10;

    private final String file;
    private final ReadingsLayout layout;
    private final ReadingsAsk ask;
    private final List<String> told;
    private final ReadingsStamp stamp;
    private final ReadingsStamp clockStamp;
    private final ReadingsNumber number;
    private final int time;
    private final int clock;
    private final boolean counted;
    private final int sensor;
    private final int unitColumn;
    private final int[] valueColumns;
    private final ReadingsHeading[] valueHeadings;
    private final Map<String, ReadingsGroup> groups = new LinkedHashMap<>();
    private final Map<String, String> ignored = new LinkedHashMap<>();
    private int least;
    private int footer;
    private int footerRows;
    private int headingsAgain;
    private boolean afterBlank;
    /** Whether any heading tells of a temperature or a unit, so that one that does not is of something else. */
    private boolean telling;

    private int good;
    private final List<ReadingsFault> skipped = new ArrayList<>();
    private final List<String> bare = new ArrayList<>();

    ReadingsGather(String file, ReadingsLayout layout, ReadingsSurvey survey, ReadingsAsk ask, List<String> told) {
        this.file = file;
        this.layout = layout;
        this.ask = ask;
        this.told = told;
        stamp = new ReadingsStamp(survey.order);
        clockStamp = new ReadingsStamp(survey.order);
        number = new ReadingsNumber(survey.mark);
        int moment = layout.column(Role.MOMENT);
        int date = moment >= 0 ? moment : layout.column(Role.DATE);
        counted = date < 0;
        time = counted ? layout.column(Role.COUNT) : date;
        clock = layout.column(Role.CLOCK);
        sensor = layout.column(Role.SENSOR);
        unitColumn = sensor < 0 ? -1 : layout.column(Role.UNIT);
        valueColumns = values();
        valueHeadings = new ReadingsHeading[valueColumns.length];
        for (int k = 0; k < valueColumns.length; k++) {
            int c = valueColumns[k];
            valueHeadings[k] = ReadingsHeading.of(layout.headings.get(c), layout.units.get(c));
        }
        for (ReadingsHeading heading : valueHeadings)
            telling |= heading.warm() || heading.unit().isPresent();
        if (sensor < 0) groups.put("", wide());
    }

    private int[] values() {
        List<Integer> found = new ArrayList<>();
        for (int c = 0; c < layout.roles.length; c++) {
            Role role = layout.roles[c];
            if (role == Role.VALUE || role == Role.EMPTY && sensor < 0) found.add(c);
            if (role == Role.TEXT && !layout.headings.get(c).isEmpty()) {
                ignored.put(layout.headings.get(c), "is not a number");
            }
        }
        if (found.isEmpty()) {
            throw new ReadingsFault(
                    file,
                    layout.first + 1,
                    "no column of numbers was found",
                    "Look at the separator and the decimal mark");
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    /** One group with a column for each wanted value. */
    private ReadingsGroup wide() {
        ReadingsGroup group = new ReadingsGroup();
        for (int k = 0; k < valueColumns.length; k++) {
            int c = valueColumns[k];
            String plain = valueHeadings[k].name().isEmpty() ? "column " + (c + 1) : valueHeadings[k].name();
            group.columns.add(column(
                    plain,
                    layout.headings.get(c),
                    c + 1,
                    valueHeadings[k],
                    valueHeadings[k].warm(),
                    layout.roles[c] == Role.EMPTY));
        }
        return group;
    }

    /** A column, or null where it is not wanted. */
    private Column column(String name, String raw, int place, ReadingsHeading heading, boolean warm, boolean lenient) {
        Optional<ReadingsAsk.Wanted> wanted = ask.wanted(raw, place);
        if (wanted.isEmpty()) wanted = ask.wanted(name, 0);
        if (wanted.isEmpty() && !ask.map().isEmpty()) return null;
        SensorUnit unit = heading.unit().orElse(null);
        if (unit == null && ask.unit().isPresent() && !heading.other())
            unit = ask.unit().get();
        if (wanted.isPresent() && wanted.get().unit().isPresent())
            unit = wanted.get().unit().get();
        return new Column(wanted.map(ReadingsAsk.Wanted::sensor).orElse(name), heading, unit, warm, lenient);
    }

    Collection<ReadingsGroup> read(ReadingsText text) throws IOException {
        int row = layout.first;
        try (CsvReader<CsvRecord> rows = ReadingsCells.rows(text.from(layout.first), layout.separator)) {
            for (CsvRecord record : rows) {
                row = layout.first + (int) record.getStartingLineNumber();
                if (ask.skip()) rowOrSkip(record, row);
                else row(record, row);
            }
        } catch (CsvParseException | UncheckedIOException e) {
            throw new ReadingsFault(
                    file,
                    row + 1,
                    "the table cannot be taken apart after row " + row,
                    "Look for a quotation mark that is not closed");
        }
        tell();
        return groups.values();
    }

    /** Leaves a row out that cannot be read, as long as they are few: one in twenty. */
    private void rowOrSkip(CsvRecord record, int row) {
        int before = sensor < 0 ? groups.get("").size : 0;
        try {
            row(record, row);
            good++;
        } catch (ReadingsFault fault) {
            if (sensor < 0) groups.get("").size = before;
            else groups.values().forEach(g -> g.dropRow(row));
            skipped.add(fault);
            if (skipped.size() > 20 && skipped.size() > good / 20) throw fault;
        }
    }

    private void row(CsvRecord record, int row) {
        if (ReadingsCells.blank(record)) {
            afterBlank = true;
            return;
        }
        if (!moment(record)) {
            withoutTime(record, row);
            return;
        }
        if (footer > 0) {
            throw new ReadingsFault(
                    file, row, "the table goes on here, but row " + footer + " is none of it", "Take that row out");
        }
        afterBlank = false;
        width(record, row);
        if (sensor < 0) {
            ReadingsGroup group = groups.get("");
            if (group == null) throw new IllegalStateException("no group");
            group.row(stamp.local, stamp.offset, row);
            for (int k = 0; k < valueColumns.length; k++) {
                Column column = group.columns.get(k);
                if (column != null) value(group, column, ReadingsCells.cell(record, valueColumns[k]), row, null);
            }
        } else {
            ReadingsGroup group = group(ReadingsCells.cell(record, sensor).strip(), row);
            group.row(stamp.local, stamp.offset, row);
            SensorUnit unit = unitColumn < 0 ? null : unit(ReadingsCells.cell(record, unitColumn), row);
            for (int k = 0; k < valueColumns.length; k++) {
                Column column = group.columns.get(k);
                if (column != null) value(group, column, ReadingsCells.cell(record, valueColumns[k]), row, unit);
            }
        }
    }

    private boolean moment(CsvRecord record) {
        String cell = ReadingsCells.cell(record, time);
        if (counted) return stamp.readCount(cell);
        if (!stamp.read(cell)) return false;
        if (clock < 0) return true;
        if (!clockStamp.readClock(ReadingsCells.cell(record, clock))) return false;
        stamp.local += clockStamp.local;
        stamp.offset = clockStamp.offset;
        return true;
    }

    private void withoutTime(CsvRecord record, int row) {
        String cell = ReadingsCells.cell(record, time).strip();
        if (layout.headed && cell.equalsIgnoreCase(layout.headings.get(time))) {
            headingsAgain++;
            return;
        }
        if (footer == 0 && !afterBlank) {
            String right = clock >= 0
                    ? " with the time " + ReadingsCells.cell(record, clock).strip()
                    : "";
            throw new ReadingsFault(
                    file,
                    row,
                    cell.isEmpty() ? "it has no time" : "\"" + shortened(cell) + "\"" + right + " is not a moment",
                    "Mend or take out the row; nothing was taken in");
        }
        if (footer == 0) footer = row;
        footerRows++;
    }

    private void width(CsvRecord record, int row) {
        int n = record.getFieldCount();
        if (least == 0) least = Math.min(n, layout.headings.size());
        if (n < least) {
            throw new ReadingsFault(
                    file,
                    row,
                    "it has " + n + (n == 1 ? " cell" : " cells") + " where other rows have " + least,
                    "Mend the row; if the file ends there, get it from the logger again; nothing was taken in");
        }
        for (int c = layout.headings.size(); c < n; c++) {
            if (!record.getField(c).isBlank()) {
                throw new ReadingsFault(
                        file,
                        row,
                        "it has " + n + " cells, but there are " + layout.headings.size() + " headings",
                        "A decimal comma needs another separator than a comma; nothing was taken in");
            }
        }
    }

    private ReadingsGroup group(String name, int row) {
        ReadingsGroup known = groups.get(name);
        if (known != null) return known;
        if (name.isEmpty()) {
            throw new ReadingsFault(file, row, "it names no sensor", "Mend or take out the row; nothing was taken in");
        }
        ReadingsGroup group = new ReadingsGroup();
        for (int k = 0; k < valueColumns.length; k++) {
            ReadingsHeading of = valueHeadings[k];
            String full = valueColumns.length == 1 ? name : name + " " + of.name();
            ReadingsHeading heading = new ReadingsHeading(full, of.unit());
            // what all the values are called tells, where the sensor is only a number
            boolean warm = heading.warm() || of.warm() && !heading.other();
            group.columns.add(column(full, full, 0, heading, warm, true));
        }
        groups.put(name, group);
        return group;
    }

    private SensorUnit unit(String cell, int row) {
        if (cell.isBlank()) return null;
        return SensorUnit.named(cell.strip()).orElse(null);
    }

    private void value(ReadingsGroup group, Column column, String cell, int row, SensorUnit rowUnit) {
        ReadingsNumber.What what = number.read(cell);
        if (what == ReadingsNumber.What.NUMBER) {
            SensorUnit unit = number.unit != null ? number.unit : rowUnit;
            if (column.unit == null) column.unit = unit != null ? unit : orElse(column, row);
            SensorUnit written = unit != null && unit.kind() == column.unit.kind() ? unit : column.unit;
            double si = written.toSi(number.value);
            if (column.unit.kind().holds(si)) {
                if (column.textRow > 0) throw text(column, column.textRow, column.text);
                column.numbers++;
                group.put(column, si);
                return;
            }
            if (column.impossible++ == 0) {
                column.wrongRow = row;
                column.wrong = number.value;
            }
        } else if (what == ReadingsNumber.What.SWITCH && switches(column)) {
            column.numbers++;
            group.put(column, number.value);
            return;
        } else if (what == ReadingsNumber.What.MISSING) {
            column.missing++;
        } else {
            if (column.numbers > 0 || !column.lenient) throw text(column, row, cell);
            if (column.textRow == 0) {
                column.textRow = row;
                column.text = cell;
            }
        }
        group.put(column, Double.NaN);
    }

    private static boolean switches(Column column) {
        if (column.unit == null && column.numbers == 0) column.unit = SensorUnit.si(SensorKind.SWITCH);
        return column.unit != null
                && (column.unit.kind() == SensorKind.SWITCH || column.unit.kind() == SensorKind.NUMBER);
    }

    /** What a column without a unit is. */
    private SensorUnit orElse(Column column, int row) {
        if (column.warm) {
            throw new ReadingsFault(
                    file,
                    row,
                    "\"" + column.name + "\" looks like a temperature, but its unit is not said",
                    "Say --unit C or --unit F for all such, or --map \"" + column.name + "=NAME:C\" for one");
        }
        bare.add(column.name);
        return SensorUnit.si(SensorKind.NUMBER);
    }

    private ReadingsFault text(Column column, int row, String cell) {
        return new ReadingsFault(
                file,
                row,
                "\"" + shortened(cell.strip()) + "\" in \"" + column.name + "\" is not a number",
                "Mend or take out the row; nothing was taken in");
    }

    private static String shortened(String cell) {
        String clean = cell.replaceAll("\\p{Cntrl}", " ");
        return clean.length() > 40 ? clean.substring(0, 40) + "..." : clean;
    }

    private void tell() {
        if (footerRows > 0)
            told.add("from row " + footer + ": " + footerRows + " rows of text after the table, left out");
        for (ReadingsFault fault : skipped.subList(0, Math.min(KEPT, skipped.size()))) {
            told.add("row " + fault.row + " left out: " + fault.what);
        }
        if (skipped.size() > KEPT) told.add(skipped.size() - KEPT + " more rows left out");
        if (!bare.isEmpty()) {
            told.add("no unit is named, kept as plain numbers: " + String.join(", ", bare) + "; --map \"" + bare.get(0)
                    + "=NAME:UNIT\" says what one is");
        }
        if (headingsAgain > 0) told.add(headingsAgain + " rows of headings within the table, left out");
        groups.values()
                .forEach(g -> g.columns.forEach(c -> {
                    if (c != null && c.numbers == 0 && c.impossible == 0 && c.textRow > 0)
                        ignored.put(c.name, "is not a number");
                }));
        if (ask.map().isEmpty() && !ignored.isEmpty()) {
            told.add("columns without numbers, left out: " + String.join(", ", ignored.keySet()));
        }
    }
}
