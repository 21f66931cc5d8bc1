package stokewell.file;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stokewell.weather.Hourly;
import stokewell.weather.Site;
import stokewell.weather.SkyTemperature;
import stokewell.weather.Sunlight;

/** Makes complete hours out of a table as written, telling of every change. */
final class WeatherRepair {

    static final int LONGEST_GAP = 6;
    /** Wind taken where a file has none, m/s. */
    private static final double WIND_WITHOUT_RECORD = 3;
    /** The year that a typical year of many years' months is dated in: not a leap year. */
    private static final int TYPICAL_YEAR = 2001;
    /** Jump between two months of different years from which the join is eased, K. */
    private static final double JUMP = 4;

    private static final String REMEDY = "Fill the gap, or cut the file to the part you need";

    /** A row with its moment in local standard time. */
    private record Timed(int line, LocalDateTime moment, double[] values) {}

    private final String file;
    private final WeatherTable table;
    private final Optional<Site> site;
    private final WeatherNotes notes;
    private LocalDateTime start;
    private int hours;
    private int[] lines;
    private final Set<Integer> blockStarts = new HashSet<>();

    WeatherRepair(String file, WeatherTable table, Optional<Site> given, WeatherNotes notes) {
        this.file = file;
        this.table = table;
        this.site = given.or(table::site);
        this.notes = notes;
    }

    WeatherFile.Reading reading() {
        boolean typical = isTypicalYear();
        List<Timed> rows = withTemperatureAtBothEnds(withoutRepeats(timed(typical)));
        Map<WeatherQuantity, double[]> grid = onTheHour(rows);
        if (hours < 24) {
            throw new WeatherFault(file, 0, "the record is " + hours + " hours long", "It needs at least 24 hours");
        }
        grid.forEach(this::fillShortGaps);
        double[] temperature = grid.get(WeatherQuantity.TEMPERATURE);
        Hourly hourly = new Hourly(start, temperature, wind(grid));
        hourly = withMoisture(hourly, grid, temperature);
        hourly = withSky(hourly, grid, temperature);
        hourly = withSun(hourly, grid, temperature);
        if (typical) {
            hourly = joined(hourly);
        }
        return new WeatherFile.Reading(hourly, site, table.format() + ", " + file, notes.all());
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

    private List<Timed> timed(boolean typical) {
        Optional<Integer> stated = table.rows().stream()
                .flatMap(row -> row.stamp().offset().stream())
                .findFirst();
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
    private Map<WeatherQuantity, double[]> onTheHour(List<Timed> rows) {
        int minute = usualSecondOfHour(rows);
        LocalDateTime first = rows.get(0).moment;
        int late = Math.floorMod(first.getMinute() * 60 + first.getSecond() - minute + 1800, 3600) - 1800;
        start = first.minusSeconds(late);
        refuseLongGaps(rows);
        hours = hour(rows.get(rows.size() - 1)) + 1;
        lines = new int[hours];
        Map<WeatherQuantity, double[]> grid = new EnumMap<>(WeatherQuantity.class);
        int shared = 0;
        int moved = 0;
        for (Timed row : rows) {
            int hour = hour(row);
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
            grid.put(quantity, means(rows, quantity));
        }
        return grid;
    }

    private double[] means(List<Timed> rows, WeatherQuantity quantity) {
        double[] sum = new double[hours];
        int[] count = new int[hours];
        for (Timed row : rows) {
            double value = row.values[quantity.ordinal()];
            if (!Double.isNaN(value)) {
                sum[hour(row)] += value;
                count[hour(row)]++;
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
            if (missing > LONGEST_GAP) {
                throw new WeatherFault(
                        file,
                        row.line,
                        "no temperature from %s to %s, %d hours; up to %d are filled in"
                                .formatted(last.moment, row.moment, missing, LONGEST_GAP),
                        REMEDY + "; a typical year must run from January to December");
            }
            last = row;
        }
    }

    /** Fills gaps of up to six hours between two values by a straight line. */
    private void fillShortGaps(WeatherQuantity quantity, double[] values) {
        int last = -1;
        for (int i = 0; i < values.length; i++) {
            if (Double.isNaN(values[i])) {
                continue;
            }
            int missing = i - last - 1;
            if (missing > 0 && missing <= LONGEST_GAP) {
                double from = last < 0 ? values[i] : values[last];
                for (int k = last + 1; k < i; k++) {
                    values[k] = from + (values[i] - from) * (k - last) / (missing + 1);
                }
                tellFilled(quantity, missing, i, "before");
            }
            last = i;
        }
        int missing = values.length - 1 - last;
        if (last >= 0 && missing > 0 && missing <= LONGEST_GAP) {
            Arrays.fill(values, last + 1, values.length, values[last]);
            tellFilled(quantity, missing, last, "after");
        }
    }

    private void tellFilled(WeatherQuantity quantity, int missing, int hour, String side) {
        notes.add(
                "gaps in " + quantity.label + ", filled in",
                lines[hour],
                "%s missing for %d h %s this row, filled in".formatted(quantity.label, missing, side));
    }

    private int firstMissing(double[] values) {
        for (int i = 0; i < values.length; i++) {
            if (Double.isNaN(values[i])) {
                return i;
            }
        }
        return -1;
    }

    private double[] wind(Map<WeatherQuantity, double[]> grid) {
        double[] wind = grid.get(WeatherQuantity.WIND);
        if (wind == null || Arrays.stream(wind).allMatch(Double::isNaN)) {
            notes.add(0, "no wind in the file; %.0f m/s is used throughout".formatted(WIND_WITHOUT_RECORD));
            wind = new double[hours];
            Arrays.fill(wind, WIND_WITHOUT_RECORD);
        }
        int missing = firstMissing(wind);
        if (missing >= 0) {
            throw new WeatherFault(
                    file,
                    lines[missing],
                    "no wind for more than %d hours from %s".formatted(LONGEST_GAP, start.plusHours(missing)),
                    REMEDY + ", or leave the wind column out");
        }
        return wind;
    }

    /** Values of a quantity if every hour has one; told when the file has some but not all. */
    private Optional<double[]> whole(Map<WeatherQuantity, double[]> grid, WeatherQuantity quantity) {
        double[] values = grid.get(quantity);
        if (values == null) {
            return Optional.empty();
        }
        int missing = firstMissing(values);
        if (missing >= 0) {
            notes.add(
                    lines[missing],
                    "%s is missing for more than %d hours from %s and is not used"
                            .formatted(quantity.label, LONGEST_GAP, start.plusHours(missing)));
            return Optional.empty();
        }
        return Optional.of(values);
    }

    private Hourly withMoisture(Hourly hourly, Map<WeatherQuantity, double[]> grid, double[] temperature) {
        Optional<double[]> dewPoint = whole(grid, WeatherQuantity.DEW_POINT);
        if (dewPoint.isEmpty()) {
            dewPoint = whole(grid, WeatherQuantity.HUMIDITY).map(humidity -> {
                double[] dew = new double[hours];
                for (int i = 0; i < hours; i++) {
                    dew[i] = Math.max(
                            WeatherQuantity.DEW_POINT.low,
                            SkyTemperature.dewPoint(temperature[i], Math.min(1, humidity[i])));
                }
                return dew;
            });
        }
        return dewPoint.map(hourly::withDewPoint).orElse(hourly);
    }

    private Hourly withSky(Hourly hourly, Map<WeatherQuantity, double[]> grid, double[] temperature) {
        Optional<double[]> infrared = whole(grid, WeatherQuantity.INFRARED);
        if (infrared.isEmpty()) {
            infrared = whole(grid, WeatherQuantity.SKY_EMISSIVITY).map(emissivity -> {
                double[] sky = new double[hours];
                for (int i = 0; i < hours; i++) {
                    sky[i] = emissivity[i] * SkyTemperature.STEFAN_BOLTZMANN * Math.pow(temperature[i], 4);
                }
                return sky;
            });
        }
        return infrared.map(hourly::withInfrared).orElse(hourly);
    }

    private Hourly withSun(Hourly hourly, Map<WeatherQuantity, double[]> grid, double[] temperature) {
        double[] global = grid.get(WeatherQuantity.GLOBAL);
        if (global == null) {
            notes.add(0, "no sun on the horizontal in the file; a run models it from the temperatures");
            return hourly;
        }
        int missing = firstMissing(global);
        if (missing >= 0 && !modelled(global, missing, temperature)) {
            return hourly;
        }
        if (!table.sunCentreKnown()) {
            notes.add(0, "sun is taken as the mean of the hour about each time in the file");
        }
        return hourly.withSun(new Hourly.Sun(
                global, whole(grid, WeatherQuantity.BEAM), whole(grid, WeatherQuantity.DIFFUSE), table.sunCentre()));
    }

    /** Fills long gaps of global irradiance from the temperatures; false where the place is not known. */
    private boolean modelled(double[] global, int missing, double[] temperature) {
        if (site.isEmpty()) {
            notes.add(
                    lines[missing],
                    "sun is missing from " + start.plusHours(missing)
                            + " and the place is not known: none of it is used, a run models it from the temperatures");
            return false;
        }
        double[] model = Sunlight.fromTemperature(start, temperature, table.sunCentre(), site.get());
        int filled = 0;
        for (int i = 0; i < global.length; i++) {
            if (Double.isNaN(global[i])) {
                global[i] = model[i];
                filled++;
            }
        }
        notes.add(
                lines[missing],
                "sun is missing for %d hours in gaps longer than %d h, the first from %s; modelled from the temperatures"
                        .formatted(filled, LONGEST_GAP, start.plusHours(missing)));
        return true;
    }

    /** A typical year made endless, its joins eased where two years' months differ much. */
    private Hourly joined(Hourly hourly) {
        Hourly year = hourly;
        for (int i = 1; i < hours; i++) {
            boolean join = lines[i] != lines[i - 1] && blockStarts.contains(lines[i]);
            double jump = join ? hourly.temperature()[i] - hourly.temperature()[i - 1] : 0;
            if (Math.abs(jump) >= JUMP) {
                year = year.eased(i);
                notes.add(
                        lines[i],
                        "temperature jumps by %.1f K where two years' months meet; eased over six hours on each side"
                                .formatted(jump));
            }
        }
        int whole = 365 * 24;
        if (hours > whole || hours < whole - Hourly.LONGEST_JOIN) {
            notes.add(0, "the typical year has " + hours + " hours, not 8760, and is not repeated");
            return year;
        }
        if (hours < whole) {
            notes.add(0, "the typical year lacks " + (whole - hours) + " hours at its end, filled in");
        }
        Hourly endless = year.wrapped();
        double jump = endless.temperature()[0] - endless.temperature()[endless.hours() - 1];
        if (Math.abs(jump) >= JUMP) {
            notes.add(lines[0], "temperature jumps by %.1f K from December to January; eased".formatted(jump));
            return endless.eased(0);
        }
        return endless;
    }
}
