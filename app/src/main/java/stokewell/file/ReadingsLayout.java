package stokewell.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Where the table stands in a file, and what its columns are for. Found from the content: the separator that gives the
 * most rows with a time and something beside it, the first of them, and the row of headings before it.
 */
final class ReadingsLayout {

    /** What a column holds. */
    enum Role {
        /** Date and time of day. */
        MOMENT,
        DATE,
        CLOCK,
        /** Seconds since 1970, or thousandths of them. */
        COUNT,
        SENSOR,
        UNIT,
        VALUE,
        /** Nothing so far: a value, or not wanted. */
        EMPTY,
        TEXT
    }

    private static final int SAMPLE = 60;
    private static final Pattern TIME_HEADING =
            Pattern.compile("(?i).*(time|date|datum|zeit|epoch|unix|stamp|utc|fecha|heure).*");
    private static final Pattern SENSOR_HEADING = Pattern.compile(
            "(?i)(sensor|sensor[ _]?(id|name)|device|device[ _]?(id|name)|entity[ _]?id|channel|location|probe|"
                    + "probe[ _]?(id|name)|point|tag|topic|series|metric|name|room|place)");
    private static final Pattern CHANNEL_HEADING =
            Pattern.compile("(?i)(channel|ch|(sensor|device|probe)([ _]?(id|no|nr|number))?)");
    private static final Pattern UNIT_HEADING =
            Pattern.compile("(?i)(unit|units|unit[ _]of[ _]measurement|uom|einheit)");
    private static final Pattern COUNTER =
            Pattern.compile("(?i)(|#|no\\.?|nr\\.?|number|record|rec|row|index|line|id)");

    final char separator;
    /** Line of the first row of the table, counted from 0. */
    final int first;
    /** Headings, one a column; empty strings where there is none. */
    final List<String> headings;
    /** The row of units under the headings; empty where there is none. */
    final List<String> units;

    final boolean headed;

    Role[] roles = {};

    private ReadingsLayout(char separator, int first, List<String> headings, List<String> units, boolean headed) {
        this.separator = separator;
        this.first = first;
        this.headings = headings;
        this.units = units;
        this.headed = headed;
    }

    static ReadingsLayout find(String file, List<String> lines, ReadingsAsk ask) {
        char best = 0;
        long most = 0;
        for (char separator : ReadingsCells.SEPARATORS) {
            long weight = 0;
            for (String line : lines) weight += weight(ReadingsCells.of(line, separator));
            if (weight > most) {
                most = weight;
                best = separator;
            }
        }
        if (most == 0) throw noTable(file, lines);
        int first = first(lines, best);
        int width = ReadingsCells.of(lines.get(first), best).size();
        ReadingsLayout layout = withHeadings(lines, first, best, width);
        layout.roles = layout.roles(file, lines, ask);
        return layout;
    }

    private static ReadingsFault noTable(String file, List<String> lines) {
        for (String line : lines) {
            if (TIME_HEADING.matcher(line).matches()) {
                return new ReadingsFault(
                        file,
                        0,
                        "no row with a date and a number was found in its first " + lines.size() + " lines",
                        "Each row needs a date and time such as 2024-01-31 17:05, and a value");
            }
        }
        return new ReadingsFault(
                file,
                0,
                "no table with times was found in it",
                "Save it as CSV, with a column for the time and one for each sensor");
    }

    /** The first row with a time: the one under headings, if no more than two such stand above those. */
    private static int first(List<String> lines, char separator) {
        int first = -1;
        int above = 0;
        for (int i = 0; i < lines.size() && above <= 2; i++) {
            List<String> cells = ReadingsCells.of(lines.get(i), separator);
            if (!data(cells)) continue;
            if (first < 0) first = i;
            int before = above(lines, i);
            List<String> over = before < 0 ? List.of() : ReadingsCells.of(lines.get(before), separator);
            boolean under =
                    over.size() >= 2 && Math.abs(over.size() - cells.size()) <= 1 && !data(over) && heading(over);
            if (under) return i;
            above++;
        }
        return first;
    }

    /** Whether a row has a time, and beside it something that a table holds. */
    private static boolean data(List<String> cells) {
        return weight(cells) > 0;
    }

    /** How much a row speaks for being one of the table: it has a time, and how many numbers beside it. */
    private static long weight(List<String> cells) {
        if (cells.size() < 2) return 0;
        ReadingsStamp stamp = new ReadingsStamp(null);
        ReadingsNumber number = new ReadingsNumber('.');
        ReadingsNumber comma = new ReadingsNumber(',');
        boolean moment = false;
        boolean count = false;
        int times = 0;
        int numbers = 0;
        for (int i = 0; i < cells.size(); i++) {
            String cell = cells.get(i);
            if (stamp.read(cell)) {
                moment = true;
                times++;
            } else if (stamp.readClock(cell)) {
                times++;
            } else {
                if (i < 3 && cell.strip().length() >= 9 && stamp.readCount(cell)) count = true;
                if (number(number.read(cell)) || number(comma.read(cell))) numbers++;
            }
        }
        if (moment) return numbers > 0 ? 1000 + numbers : cells.size() > times || times > 1 ? 1 : 0;
        return count && numbers > 1 ? 1000 + numbers : 0;
    }

    private static boolean number(ReadingsNumber.What what) {
        return what == ReadingsNumber.What.NUMBER || what == ReadingsNumber.What.SWITCH;
    }

    private static ReadingsLayout withHeadings(List<String> lines, int first, char separator, int width) {
        int above = above(lines, first);
        List<String> near = above < 0 ? List.of() : ReadingsCells.of(lines.get(above), separator);
        int higher = above < 0 ? -1 : above(lines, above);
        List<String> far = higher < 0 ? List.of() : ReadingsCells.of(lines.get(higher), separator);
        boolean unitRow = !near.isEmpty()
                && far.size() >= 2
                && far.size() <= width + 1
                && unitRow(near)
                && Math.abs(far.size() - near.size()) <= 1;
        List<String> headings = unitRow ? far : near;
        boolean headed = headings.size() >= 2 && heading(headings) && headings.size() >= width - 1;
        int columns = Math.max(width, headed ? headings.size() : 0);
        List<String> names = new ArrayList<>();
        List<String> units = new ArrayList<>();
        for (int i = 0; i < columns; i++) {
            names.add(headed && i < headings.size() ? headings.get(i).strip() : "");
            units.add(headed && unitRow && i < near.size() ? near.get(i).strip() : "");
        }
        return new ReadingsLayout(separator, first, names, units, headed);
    }

    private static int above(List<String> lines, int line) {
        int i = line - 1;
        while (i >= 0 && lines.get(i).isBlank()) i--;
        return i;
    }

    private static boolean unitRow(List<String> cells) {
        int units = 0;
        for (String cell : cells) {
            if (SensorUnit.named(cell.replaceAll("[\\[\\]()]", "")).isPresent()) units++;
            else if (cell.strip().length() > 12) return false;
        }
        return units > 0
                && 3 * units >= cells.stream().filter(c -> !c.isBlank()).count();
    }

    /** Whether cells can be headings: words, not numbers. */
    private static boolean heading(List<String> cells) {
        int numbers = 0;
        int words = 0;
        ReadingsNumber number = new ReadingsNumber('.');
        for (String cell : cells) {
            if (cell.isBlank()) continue;
            if (number.read(cell) == ReadingsNumber.What.NUMBER && number.unit == null) numbers++;
            else words++;
        }
        return words > numbers;
    }

    private Role[] roles(String file, List<String> lines, ReadingsAsk ask) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = first; i < lines.size() && rows.size() < SAMPLE; i++) {
            List<String> cells = ReadingsCells.of(lines.get(i), separator);
            if (data(cells)) rows.add(cells);
        }
        Role[] found = new Role[headings.size()];
        boolean timed = false;
        for (int c = 0; c < found.length; c++) {
            found[c] = role(rows, c);
            timed |= found[c] == Role.MOMENT || found[c] == Role.DATE;
        }
        chooseTimes(file, found, timed);
        chooseSensor(file, rows, found, ask);
        return found;
    }

    private Role role(List<List<String>> rows, int column) {
        int moments = 0;
        int dates = 0;
        int clocks = 0;
        int counts = 0;
        int numbers = 0;
        int texts = 0;
        ReadingsStamp stamp = new ReadingsStamp(null);
        ReadingsNumber number = new ReadingsNumber('.');
        ReadingsNumber comma = new ReadingsNumber(',');
        boolean time = TIME_HEADING.matcher(headings.get(column)).matches() || !headed && column == 0;
        for (List<String> row : rows) {
            String cell = column < row.size() ? row.get(column) : "";
            if (cell.isBlank()) continue;
            ReadingsNumber.What what = number.read(cell);
            if (what == ReadingsNumber.What.TEXT) what = comma.read(cell);
            boolean plain = what == ReadingsNumber.What.NUMBER && !time;
            if (time && stamp.readCount(cell) && cell.strip().length() >= 9) counts++;
            else if (!plain && stamp.read(cell)) {
                if (stamp.dateOnly) dates++;
                else moments++;
            } else if (stamp.readClock(cell)) clocks++;
            else if (what == ReadingsNumber.What.TEXT) texts++;
            else if (what != ReadingsNumber.What.MISSING) numbers++;
        }
        int most = Math.max(Math.max(moments, dates), Math.max(Math.max(clocks, counts), Math.max(numbers, texts)));
        if (most == 0) return Role.EMPTY;
        // a midnight may be written without its time
        if (moments > 0 && moments + dates >= most) return Role.MOMENT;
        if (dates == most) return Role.DATE;
        if (clocks == most) return Role.CLOCK;
        if (counts == most) return Role.COUNT;
        return numbers >= texts ? Role.VALUE : Role.TEXT;
    }

    /** Keeps one time: the first, or one that says UTC. */
    private void chooseTimes(String file, Role[] roles, boolean timed) {
        int moment = one(roles, Role.MOMENT);
        int date = moment >= 0 ? -1 : one(roles, Role.DATE);
        int clock = date < 0 ? -1 : one(roles, Role.CLOCK);
        int count = timed ? -1 : one(roles, Role.COUNT);
        for (int c = 0; c < roles.length; c++) {
            boolean other = roles[c] == Role.MOMENT && c != moment
                    || roles[c] == Role.DATE && c != date
                    || roles[c] == Role.CLOCK && c != clock
                    || roles[c] == Role.COUNT && c != count;
            if (other) roles[c] = Role.TEXT;
        }
        if (moment < 0 && date < 0 && count < 0) {
            throw new ReadingsFault(
                    file,
                    first + 1,
                    "no column of dates was found",
                    "Give the table a column such as: time, with 2024-01-31 17:05");
        }
    }

    private int one(Role[] roles, Role role) {
        int found = -1;
        for (int c = 0; c < roles.length; c++) {
            if (roles[c] != role) continue;
            boolean utc = headings.get(c).toLowerCase(Locale.ROOT).contains("utc");
            if (found < 0
                    || utc && !headings.get(found).toLowerCase(Locale.ROOT).contains("utc")) found = c;
        }
        return found;
    }

    private void chooseSensor(String file, List<List<String>> rows, Role[] roles, ReadingsAsk ask) {
        for (int c = 0; c < roles.length; c++) {
            if (roles[c] == Role.TEXT && UNIT_HEADING.matcher(headings.get(c)).matches()) roles[c] = Role.UNIT;
        }
        if (ask.sensor().isPresent()) {
            String wanted = ask.sensor().get().strip();
            for (int c = 0; c < roles.length; c++) {
                if (headings.get(c).equalsIgnoreCase(wanted) || wanted.equals(Integer.toString(c + 1))) {
                    roles[c] = Role.SENSOR;
                    return;
                }
            }
            throw new ReadingsFault(
                    file, first, "there is no column \"" + wanted + "\"", "Known: " + String.join(", ", headings));
        }
        for (int c = 0; c < roles.length; c++) {
            boolean named = SENSOR_HEADING.matcher(headings.get(c)).matches();
            boolean words = roles[c] == Role.TEXT;
            boolean channel = CHANNEL_HEADING.matcher(headings.get(c)).matches();
            boolean numbers = channel && roles[c] == Role.VALUE && few(rows, c) && others(roles, c);
            if (named && words || numbers) {
                roles[c] = Role.SENSOR;
                return;
            }
        }
        for (int c = 0; c < roles.length; c++) {
            if (roles[c] == Role.VALUE && c < 2 && counter(headings.get(c)) && others(roles, c)) roles[c] = Role.TEXT;
        }
    }

    /** Whether a column of numbers has few different ones: names rather than values. */
    private static boolean few(List<List<String>> rows, int column) {
        long different = rows.stream()
                .map(r -> column < r.size() ? r.get(column) : "")
                .distinct()
                .count();
        boolean whole = rows.stream()
                .allMatch(r -> column < r.size() && r.get(column).strip().matches("\\d{1,9}"));
        return whole && different <= Math.max(2, rows.size() / 2);
    }

    private static boolean others(Role[] roles, int but) {
        for (int c = 0; c < roles.length; c++) if (c != but && roles[c] == Role.VALUE) return true;
        return false;
    }

    private static boolean counter(String heading) {
        return !heading.isEmpty() && COUNTER.matcher(heading).matches();
    }

    /** The column of a role, or -1. */
    int column(Role role) {
        for (int c = 0; c < roles.length; c++) if (roles[c] == role) return c;
        return -1;
    }
}
