package stokewell.weather;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Optional;

/**
 * An hourly record of weather in local standard time, complete: no value is missing.
 *
 * <p>Hour {@code i} is the moment {@code start + i h}. Temperature, dew point and infrared are values at that moment,
 * wind is the mean about it. Immutable; arrays are copied on the way in and out.
 */
public final class Hourly {

    /** Most hours that {@link #wrapped()} bridges between the last and the first. */
    public static final int LONGEST_JOIN = 6;

    private static final int YEAR = 365 * 24;
    private static final int LEAP_YEAR = 366 * 24;

    /**
     * Sunlight of the same hours, W/m2.
     *
     * @param global on the horizontal
     * @param beam normal to the sun, if known
     * @param diffuse on the horizontal, if known
     * @param centre s from an hour's stamp to the middle of the hour that the value is the mean of: -1800 where the
     *     stamp ends the hour, 0 where it is its middle, 1800 where it begins it
     */
    public record Sun(double[] global, Optional<double[]> beam, Optional<double[]> diffuse, double centre) {
        public Sun {
            global = global.clone();
            beam = beam.map(double[]::clone);
            diffuse = diffuse.map(double[]::clone);
            check("global irradiance, W/m2", global, 0, 2000, global.length);
            int hours = global.length;
            beam.ifPresent(b -> check("beam irradiance, W/m2", b, 0, 2000, hours));
            diffuse.ifPresent(d -> check("diffuse irradiance, W/m2", d, 0, 2000, hours));
            Site.within("centre of the hour, s", centre, -3600, 3600);
        }
    }

    private final LocalDateTime start;
    private final boolean wrapped;
    private final double[] temperature;
    private final double[] wind;
    private final Optional<Sun> sun;
    private final Optional<double[]> dewPoint;
    private final Optional<double[]> infrared;

    /**
     * @param temperature K, 150 to 340
     * @param wind m/s, 0 to 120
     */
    public Hourly(LocalDateTime start, double[] temperature, double[] wind) {
        this(start, false, temperature.clone(), wind.clone(), Optional.empty(), Optional.empty(), Optional.empty());
        int hours = temperature.length;
        if (hours < 24) {
            throw new IllegalArgumentException(hours + " hours of weather; at least 24 are needed");
        }
        check("temperature, K", temperature, 150, 340, hours);
        check("wind, m/s", wind, 0, 120, hours);
    }

    private Hourly(
            LocalDateTime start,
            boolean wrapped,
            double[] temperature,
            double[] wind,
            Optional<Sun> sun,
            Optional<double[]> dewPoint,
            Optional<double[]> infrared) {
        this.start = start;
        this.wrapped = wrapped;
        this.temperature = temperature;
        this.wind = wind;
        this.sun = sun;
        this.dewPoint = dewPoint;
        this.infrared = infrared;
    }

    public Hourly withSun(Sun light) {
        if (light.global().length != hours()) {
            throw new IllegalArgumentException(light.global().length + " hours of sun for " + hours() + " of weather");
        }
        return new Hourly(start, wrapped, temperature, wind, Optional.of(light), dewPoint, infrared);
    }

    /** @param kelvin dew point of each hour, K */
    public Hourly withDewPoint(double[] kelvin) {
        check("dew point, K", kelvin, 150, 340, hours());
        return new Hourly(start, wrapped, temperature, wind, sun, Optional.of(kelvin.clone()), infrared);
    }

    /** @param irradiance infrared from the sky on the horizontal, W/m2 */
    public Hourly withInfrared(double[] irradiance) {
        check("sky infrared, W/m2", irradiance, 20, 800, hours());
        return new Hourly(start, wrapped, temperature, wind, sun, dewPoint, Optional.of(irradiance.clone()));
    }

    public LocalDateTime start() {
        return start;
    }

    /** The moment after the last hour. */
    public LocalDateTime end() {
        return start.plusHours(hours());
    }

    public int hours() {
        return temperature.length;
    }

    /** Whether the last hour is followed by the first: a typical year that a winter may run through. */
    public boolean isWrapped() {
        return wrapped;
    }

    public double[] temperature() {
        return temperature.clone();
    }

    public double[] wind() {
        return wind.clone();
    }

    public Optional<Sun> sun() {
        return sun;
    }

    public Optional<double[]> dewPoint() {
        return dewPoint.map(double[]::clone);
    }

    public Optional<double[]> infrared() {
        return infrared.map(double[]::clone);
    }

    /**
     * The same year, endless: after its last hour comes its first. For a season from autumn to spring in a typical
     * year of January to December.
     *
     * <p>Up to {@value #LONGEST_JOIN} hours short of 365 days (or of 366, where the record holds a 29 February) are
     * bridged by straight lines, night for the sun. A run through a 29 February that the record lacks finds 1 March's
     * weather there and is one day ahead of the calendar from then on.
     *
     * @throws IllegalArgumentException unless the record is one year long
     */
    public Hourly wrapped() {
        if (wrapped) {
            return this;
        }
        int whole = hours() > YEAR ? LEAP_YEAR : YEAR;
        int missing = whole - hours();
        if (missing < 0 || missing > LONGEST_JOIN) {
            throw new IllegalArgumentException(
                    "only a record of one year can be repeated; this one has " + hours() + " hours, not 8760 or 8784");
        }
        return new Hourly(
                start,
                true,
                bridged(temperature, whole),
                bridged(wind, whole),
                sun.map(s -> new Sun(
                        bridged(s.global(), whole),
                        s.beam().map(b -> bridged(b, whole)),
                        s.diffuse().map(d -> bridged(d, whole)),
                        s.centre())),
                dewPoint.map(d -> bridged(d, whole)),
                infrared.map(r -> bridged(r, whole)));
    }

    private static double[] bridged(double[] values, int length) {
        double[] all = Arrays.copyOf(values, length);
        int gap = length - values.length + 1;
        double last = values[values.length - 1];
        for (int i = values.length; i < length; i++) {
            all[i] = last + (values[0] - last) * (i - values.length + 1) / gap;
        }
        return all;
    }

    /**
     * The same record with a jump between two months of different years eased: half of the jump is taken up on each
     * side, fading over six hours. Temperature and dew point only; the other curves do not pass through their hours.
     *
     * @param first index of the first hour after the join; 0 only in a wrapped record
     */
    public Hourly eased(int first) {
        int reach = wrapped ? 6 : Math.min(6, Math.min(first, hours() - first));
        return new Hourly(
                start,
                wrapped,
                eased(temperature, first, reach),
                wind,
                sun,
                dewPoint.map(d -> eased(d, first, reach)),
                infrared);
    }

    private static double[] eased(double[] values, int first, int reach) {
        double[] all = values.clone();
        int n = values.length;
        int before = Math.floorMod(first - 1, n);
        double half = (values[first] - values[before]) / 2;
        for (int k = 0; k < reach; k++) {
            double fade = 1 - (k + 0.5) / reach;
            all[Math.floorMod(before - k, n)] += half * fade;
            all[(first + k) % n] -= half * fade;
        }
        return all;
    }

    /** Mean of all hours, K. */
    public double meanTemperature() {
        return Arrays.stream(temperature).average().orElseThrow();
    }

    /**
     * Heating degree days of the whole record, K·d: for every 24 hours from the start, how far the mean lies below
     * the base. Hours left over at the end count as their share of a day.
     *
     * @param base K; usual are 291.48 (65 °F) and 288.65 (15.5 °C)
     */
    public double degreeDays(double base) {
        return degreeDays(base, start, end());
    }

    /** As {@link #degreeDays(double)} from one moment to another; both are cut to the record. */
    public double degreeDays(double base, LocalDateTime from, LocalDateTime to) {
        int first = (int) Math.max(0, Duration.between(start, from).toHours());
        int last = (int) Math.min(hours(), Duration.between(start, to).toHours());
        double sum = 0;
        for (int day = first; day < last; day += 24) {
            int stop = Math.min(last, day + 24);
            double mean = Arrays.stream(temperature, day, stop).average().orElseThrow();
            sum += Math.max(0, base - mean) * (stop - day) / 24;
        }
        return sum;
    }

    private static void check(String what, double[] values, double low, double high, int hours) {
        if (values.length != hours) {
            throw new IllegalArgumentException(what + ": " + values.length + " hours, not " + hours);
        }
        for (double value : values) {
            Site.within(what, value, low, high);
        }
    }
}
