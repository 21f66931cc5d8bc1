package stokewell.file;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import stokewell.weather.Hourly;
import stokewell.weather.Site;
import stokewell.weather.SkyTemperature;
import stokewell.weather.Sunlight;

/** Makes complete hours out of those that a table gave, telling of every change. */
final class WeatherRepair {

    static final int LONGEST_GAP = 6;
    /** Wind taken where a file has none, m/s. */
    private static final double WIND_WITHOUT_RECORD = 3;
    /** Jump between two months of different years from which the join is eased, K. */
    private static final double JUMP = 4;

    static final String REMEDY = "Fill the gap, or cut the file to the part you need";

    private final String file;
    private final WeatherTable table;
    private final Optional<Site> site;
    private final WeatherNotes notes;
    private final WeatherHours rows;
    private final LocalDateTime start;
    private final int hours;

    WeatherRepair(String file, WeatherTable table, Optional<Site> given, WeatherNotes notes) {
        this.file = file;
        this.table = table;
        this.site = given.or(table::site);
        this.notes = notes;
        rows = new WeatherHours(file, table, site, notes);
        start = rows.start();
        hours = rows.count();
    }

    WeatherFile.Reading reading() {
        Map<WeatherQuantity, double[]> grid = rows.grid();
        if (hours < 24) {
            throw new WeatherFault(file, 0, "the record is " + hours + " hours long", "It needs at least 24 hours");
        }
        grid.forEach(this::fillShortGaps);
        double[] temperature = grid.get(WeatherQuantity.TEMPERATURE);
        Hourly hourly = new Hourly(start, temperature, wind(grid));
        hourly = withMoisture(hourly, grid, temperature);
        hourly = withSky(hourly, grid, temperature);
        hourly = withSun(hourly, grid, temperature);
        if (rows.typical()) {
            hourly = joined(hourly);
        }
        return new WeatherFile.Reading(hourly, site, table.format() + ", " + file, notes.all());
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
                rows.line(hour),
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
                    rows.line(missing),
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
                    rows.line(missing),
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
                    rows.line(missing),
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
                rows.line(missing),
                "sun is missing for %d hours in gaps longer than %d h, the first from %s; modelled from the temperatures"
                        .formatted(filled, LONGEST_GAP, start.plusHours(missing)));
        return true;
    }

    /** A typical year made endless, its joins eased where two years' months differ much. */
    private Hourly joined(Hourly hourly) {
        Hourly year = hourly;
        for (int i = 1; i < hours; i++) {
            double jump = rows.joins(i) ? hourly.temperature()[i] - hourly.temperature()[i - 1] : 0;
            if (Math.abs(jump) >= JUMP) {
                year = year.eased(i);
                notes.add(
                        rows.line(i),
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
            notes.add(rows.line(0), "temperature jumps by %.1f K from December to January; eased".formatted(jump));
            return endless.eased(0);
        }
        return endless;
    }
}
