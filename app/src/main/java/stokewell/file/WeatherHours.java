package stokewell.file;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stokewell.weather.Site;

/** Puts a table's rows on the hours of local standard time, telling of every row that was moved, merged or left out. */
final class WeatherHours {

    /** The year that a typical year of many years' months is dated in: not a leap year. */
    private static final int TYPICAL_YEAR = 2001;

    /** A row with its moment in local standard time. */
    private record Timed(int line, LocalDateTime moment, double[] values) {}

    private final String file;
    private final WeatherTable table;
    private final Optional<Site> site;
    private final WeatherNotes notes;

    private final Map<WeatherQuantity, double[]> grid = new EnumMap<>(WeatherQuantity.class);
    private final Set<Integer> blockStarts = new HashSet<>();
    private final boolean typical;
    private LocalDateTime start = LocalDateTime.MIN;
    private int hours;
    private int[] lines = {};

    WeatherHours(String file, WeatherTable table, Optional<Site> site, WeatherNotes notes) {
        this.file = file;
        this.table = table;
        this.site = site;
        this.notes = notes;
        typical = isTypicalYear();
        onTheHour(withTemperatureAtBothEnds(withoutRepeats(timed())));
    }

    /** Values by the hour, NaN where no row gave one. */
    Map<WeatherQuantity, double[]> grid() {
        return grid;
    }

    LocalDateTime start() {
        return start;
    }

    int count() {
        return hours;
    }

    /** Line of the file that an hour came from, or the one before it. */
    int line(int hour) {
        return lines[hour];
    }

    /** Whether it is a year put together of many years' months. */
    boolean typical() {
        return typical;
    }

    /** Whether a month of another year begins with this hour. */
    boolean joins(int hour) {
        return hour > 0 && lines[hour] != lines[hour - 1] && blockStarts.contains(lines[hour]);
    }

    /** Twelve blocks, January to December in file order, not all of one year. */
    private boolean isTypicalYear() {
        int blocks = 0;
        int month = 0;
        int year = 0;
        boolean years = false;
        for (WeatherTable.Row row : table.rows()) {
            if (row.stamp().month() == month && row.stamp().year() == year) {
                continue;
            }
            blocks++;
            blockStarts.add(row.line());
            years |= blocks > 1 && row.stamp().year() != year;
            month = row.stamp().month();
            year = row.stamp().year();
            if (month != blocks) {
                return false;
            }
        }
        return blocks == 12 && years;
    }

    private Optional<Integer> firstOffset() {
        for (WeatherTable.Row row : table.rows()) {
            if (row.stamp().offset().isPresent()) {
                return row.stamp().offset();
            }
        }
        return Optional.empty();
    }

    private List<Timed> timed() {
        Optional<Integer> stated = firstOffset();
        boolean utc = table.utc() || stated.isPresent();
        if (utc && site.isEmpty() && stated.orElse(0) == 0) {
            throw new WeatherFault(
                    file,
                    0,
                    "times are UTC and the file does not say where it is",
                    "Give the site: latitude, longitude, hours from UTC, altitude");
        }
        double local = site.map(Site::utcOffset).orElseGet(() -> (double) stated.orElse(0));
        List<Timed> rows = new ArrayList<>();
        for (WeatherTable.Row row : table.rows()) {
            WeatherStamp stamp = row.stamp();
            if (typical && stamp.month() == 2 && stamp.day() == 29) {
                notes.add("rows of 29 February in a typical year, left out", row.line(), "29 February left out");
                continue;
            }
            WeatherStamp dated = typical
                    ? new WeatherStamp(TYPICAL_YEAR, stamp.month(), stamp.day(), stamp.second(), stamp.offset())
                    : stamp;
            double shift = utc ? local - stamp.offset().orElse(0) : 0;
            rows.add(new Timed(row.line(), dated.moment().plusSeconds(Math.round(shift)), checked(row)));
        }
        return rows;
    }

    private double[] checked(WeatherTable.Row row) {
        double[] values = row.values();
        for (WeatherQuantity quantity : table.columns()) {
            double value = values[quantity.ordinal()];
            if (quantity.isSun() && value < 0 && value >= -20) {
                if (value < -0.5) {
                    notes.add(
                            "values of sun below zero, taken as none",
                            row.line(),
                            "%s %.1f W/m2 taken as none".formatted(quantity.label, value));
                }
                values[quantity.ordinal()] = 0;
            } else if (value < quantity.low || value > quantity.high) {
                WeatherUnit unit = quantity.usual;
                notes.add(
                        "values out of range, taken as missing",
                        row.line(),
                        "%s %.4g %s is outside %.4g to %.4g; taken as missing"
                                .formatted(
                                        quantity.label,
                                        unit.fromSi(value),
                                        unit.symbol,
                                        unit.fromSi(quantity.low),
                                        unit.fromSi(quantity.high)));
                values[quantity.ordinal()] = Double.NaN;
            }
        }
        return values;
    }

    private List<Timed> withoutRepeats(List<Timed> rows) {
        List<Timed> sorted = new ArrayList<>(rows);
        sorted.sort(Comparator.comparing(Timed::moment));
        if (!sorted.equals(rows)) {
            notes.add(0, "rows were not in the order of time and were sorted");
        }
        List<Timed> once = new ArrayList<>();
        for (Timed row : sorted) {
            Timed last = once.isEmpty() ? null : once.get(once.size() - 1);
            if (last != null && last.moment.equals(row.moment)) {
                notes.add(
                        "rows with a time that was there before",
                        row.line,
                        row.moment + " is in row " + last.line + " too; used only where that row has no value");
                fillFrom(last.values, row.values);
            } else {
                once.add(row);
            }
        }
        return once;
    }

    private static void fillFrom(double[] into, double[] from) {
        for (int i = 0; i < into.length; i++) {
            into[i] = Double.isNaN(into[i]) ? from[i] : into[i];
        }
    }

    private List<Timed> withTemperatureAtBothEnds(List<Timed> rows) {
        int first = 0;
        int last = rows.size();
        while (first < last && Double.isNaN(temperature(rows.get(first)))) {
            first++;
        }
        while (last > first && Double.isNaN(temperature(rows.get(last - 1)))) {
            last--;
        }
        if (last - first < 2) {
            throw new WeatherFault(
                    file,
                    0,
                    "there are " + (last - first) + " rows that can be used",
                    "A record needs at least 24 hours");
        }
        int cut = rows.size() - (last - first);
        if (cut > 0) {
            notes.add(rows.get(first).line, cut + " rows without temperature at the ends of the record, cut off");
        }
        return rows.subList(first, last);
    }

    private static double temperature(Timed row) {
        return row.values[WeatherQuantity.TEMPERATURE.ordinal()];
    }

    /** Means of all rows nearest to each hour, NaN where there is none. */
    private void onTheHour(List<Timed> rows) {
        int minute = usualSecondOfHour(rows);
        LocalDateTime first = rows.get(0).moment;
        int late = Math.floorMod(first.getMinute() * 60 + first.getSecond() - minute + 1800, 3600) - 1800;
        start = first.minusSeconds(late);
        refuseLongGaps(rows);
        hours = hour(rows.get(rows.size() - 1)) + 1;
        lines = new int[hours];
        int shared = 0;
        int moved = 0;
        int[] at = rows.stream().mapToInt(this::hour).toArray();
        for (int i = 0; i < at.length; i++) {
            Timed row = rows.get(i);
            int hour = at[i];
            shared += lines[hour] > 0 ? 1 : 0;
            moved += row.moment.equals(start.plusHours(hour)) ? 0 : 1;
            lines[hour] = row.line;
        }
        for (int i = 1; i < hours; i++) {
            lines[i] = lines[i] == 0 ? lines[i - 1] : lines[i];
        }
        if (shared > 0) {
            notes.add(0, shared + " rows share an hour with another; the hour has their mean");
        }
        if (moved > 0) {
            notes.add(0, moved + " rows lie off the hour by up to 30 minutes and count for the nearest one");
        }
        for (WeatherQuantity quantity : table.columns()) {
            grid.put(quantity, means(rows, at, quantity));
        }
    }

    /** @param at hour of each row */
    private double[] means(List<Timed> rows, int[] at, WeatherQuantity quantity) {
        double[] sum = new double[hours];
        int[] count = new int[hours];
        for (int i = 0; i < at.length; i++) {
            double value = rows.get(i).values[quantity.ordinal()];
            if (!Double.isNaN(value)) {
                sum[at[i]] += value;
                count[at[i]]++;
            }
        }
        for (int i = 0; i < hours; i++) {
            sum[i] = count[i] == 0 ? Double.NaN : sum[i] / count[i];
        }
        return sum;
    }

    private int hour(Timed row) {
        return (int) Math.floorDiv(Duration.between(start, row.moment).toSeconds() + 1800, 3600L);
    }

    private static int usualSecondOfHour(List<Timed> rows) {
        Map<Integer, Integer> counts = new HashMap<>();
        for (Timed row : rows) {
            LocalTime time = row.moment.toLocalTime();
            counts.merge(time.getMinute() * 60 + time.getSecond(), 1, Integer::sum);
        }
        int most = counts.values().stream().max(Integer::compare).orElseThrow();
        return counts.entrySet().stream()
                .filter(e -> e.getValue() == most)
                .mapToInt(Map.Entry::getKey)
                .min()
                .orElseThrow();
    }

    private void refuseLongGaps(List<Timed> rows) {
        Timed last = rows.get(0);
        for (Timed row : rows) {
            if (Double.isNaN(temperature(row))) {
                continue;
            }
            int missing = hour(row) - hour(last) - 1;
            if (missing > WeatherRepair.LONGEST_GAP) {
                throw new WeatherFault(
                        file,
                        row.line,
                        "no temperature from %s to %s, %d hours; up to %d are filled in"
                                .formatted(last.moment, row.moment, missing, WeatherRepair.LONGEST_GAP),
                        WeatherRepair.REMEDY + "; a typical year must run from January to December");
            }
            last = row;
        }
    }
}
