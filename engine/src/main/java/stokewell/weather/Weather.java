package stokewell.weather;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The weather of a run, as smooth functions of the seconds since it began.
 *
 * <p>Channels: {@link #TEMPERATURE}, {@link #WIND}, {@link #SKY}, then from {@link #SUN} on one per surface. Every one
 * is twice continuously differentiable; see the package note. Immutable; an evaluation allocates nothing, so one
 * weather may serve many runs at once. Outside a record that does not repeat the nearest end is held: ask
 * {@link #covers} before a run.
 */
public final class Weather {

    /** Outdoor air temperature, K. */
    public static final int TEMPERATURE = 0;
    /** Wind speed, m/s. */
    public static final int WIND = 1;
    /** Temperature of the sky as a black dome, K. */
    public static final int SKY = 2;
    /** Solar irradiance on the first surface, W/m2; the others follow. */
    public static final int SUN = 3;

    private static final double HALF_HOUR = 1800;

    private static final double DAY = 86400;

    private final LocalDateTime recordStart;
    private final Curves air;
    private final Curves sun;
    private final double sunCentre;
    private final boolean sunModelled;
    private final LocalDateTime start;
    private final double offset;

    /**
     * @param recordStart moment of the first knot of the air curves
     * @param sunCentre s from there to the first knot of the sun curves
     */
    private Weather(
            LocalDateTime recordStart,
            Curves air,
            Curves sun,
            double sunCentre,
            boolean sunModelled,
            LocalDateTime start,
            double offset) {
        this.recordStart = recordStart;
        this.air = air;
        this.sun = sun;
        this.sunCentre = sunCentre;
        this.sunModelled = sunModelled;
        this.start = start;
        this.offset = offset;
    }

    /** A run that begins with the record. Without measured sun it is modelled, see {@link #sunModelled()}. */
    public static Weather of(Hourly hourly, Site site, List<Surface> surfaces) {
        double centre = hourly.sun().map(Hourly.Sun::centre).orElse(0.0);
        var light = new Sunlight(
                hourly.start().plusSeconds(Math.round(centre)), 3600, hourly.hours(), site, List.copyOf(surfaces));
        double[] global = hourly.sun()
                .map(Hourly.Sun::global)
                .orElseGet(() -> Sunlight.fromTemperature(hourly.start(), hourly.temperature(), 0, site));
        double[] diffuse = hourly.sun()
                .flatMap(Hourly.Sun::diffuse)
                .or(() -> hourly.sun().flatMap(Hourly.Sun::beam).map(beam -> light.diffuse(global, beam)))
                .orElseGet(() -> light.diffuse(global));
        double[] sky = hourly.infrared()
                .map(r -> Arrays.stream(r).map(SkyTemperature::fromInfrared).toArray())
                .orElseGet(() -> sky(
                        hourly.start(),
                        3600,
                        hourly.temperature(),
                        hourly.dewPoint(),
                        light,
                        light.cloud(global),
                        site));
        return new Weather(
                hourly.start(),
                air(3600, hourly.isWrapped(), hourly.temperature(), hourly.wind(), sky),
                new Curves(3600, hourly.isWrapped(), hourly.hours(), light.onSurfaces(global, diffuse)),
                centre,
                hourly.sun().isEmpty(),
                hourly.start(),
                0);
    }

    /** As {@link #of(Hourly, Site, List)}, for a run that begins at another moment of the record. */
    public static Weather of(Hourly hourly, Site site, List<Surface> surfaces, LocalDateTime runStart) {
        return of(hourly, site, surfaces).from(runStart);
    }

    /**
     * One plain day, again and again, from midnight.
     *
     * @param wind m/s
     * @param sunShare share of a clear sky's sun, 0 to 1
     * @param date whose sun it is
     */
    public static Weather day(
            DayRange range, double wind, double sunShare, Site site, LocalDate date, List<Surface> surfaces) {
        return row(new DayRange[] {range}, wind, sunShare, site, date, surfaces);
    }

    /**
     * Normal days, a day of falling to a cold snap, the snap, a day of rising, normal days; then all of it again.
     *
     * @param before normal days before the fall, at least 1
     * @param snapDays full days of snap, at least 1
     * @param after normal days after the rise, at least 1
     * @param wind m/s
     * @param sunShare share of a clear sky's sun, 0 to 1
     * @param date of the first normal day
     */
    public static Weather coldSnap(
            DayRange normal,
            DayRange snap,
            int before,
            int snapDays,
            int after,
            double wind,
            double sunShare,
            Site site,
            LocalDate date,
            List<Surface> surfaces) {
        Site.within("days before the snap", before, 1, 1000);
        Site.within("days of snap", snapDays, 1, 1000);
        Site.within("days after the snap", after, 1, 1000);
        DayRange[] days = new DayRange[before + snapDays + after + 2];
        Arrays.fill(days, normal);
        Arrays.fill(days, before + 1, before + 1 + snapDays, snap);
        days[before] = normal.midway(snap);
        days[before + 1 + snapDays] = snap.midway(normal);
        return row(days, wind, sunShare, site, date, surfaces);
    }

    private static Weather row(
            DayRange[] days, double wind, double sunShare, Site site, LocalDate date, List<Surface> surfaces) {
        Site.within("wind, m/s", wind, 0, 120);
        Site.within("share of a clear sky's sun", sunShare, 0, 1);
        int steps = 48 * days.length;
        double[] temperature = new double[steps];
        double[] still = new double[steps];
        for (int i = 0; i < steps; i++) {
            temperature[i] = DayRange.temperature(days, i / 2.0);
            still[i] = wind;
        }
        LocalDateTime midnight = date.atStartOfDay();
        var light = new Sunlight(midnight, HALF_HOUR, steps, site, List.copyOf(surfaces));
        double[] global = light.shareOfClearSky(sunShare);
        double[] cloud = new double[steps];
        Arrays.fill(cloud, Irradiance.cloudFor(sunShare));
        double[] sky = sky(midnight, HALF_HOUR, temperature, Optional.empty(), light, cloud, site);
        return new Weather(
                midnight,
                air(HALF_HOUR, true, temperature, still, sky),
                new Curves(HALF_HOUR, true, steps, light.onSurfaces(global, light.diffuse(global))),
                0,
                true,
                midnight,
                0);
    }

    private static Curves air(double step, boolean periodic, double[] temperature, double[] wind, double[] sky) {
        return new Curves(step, periodic, temperature.length, Curves.through(temperature, periodic), wind, sky);
    }

    private static double[] sky(
            LocalDateTime start,
            double step,
            double[] temperature,
            Optional<double[]> dewPoint,
            Sunlight light,
            double[] cloud,
            Site site) {
        double[] dew = dewPoint.orElseGet(() -> light.lowestOfDay(temperature));
        double firstHour = start.toLocalTime().toSecondOfDay() / 3600.0;
        double[] sky = new double[temperature.length];
        for (int i = 0; i < sky.length; i++) {
            double hour = (firstHour + i * step / 3600) % 24;
            sky[i] = SkyTemperature.fromAir(temperature[i], dew[i], site.pressure(), hour, cloud[i]);
        }
        return sky;
    }

    /**
     * The same weather for a run that begins at another moment. In a year that repeats only month, day and time
     * count; a start on a 29 February that the record lacks is taken as 28 February.
     */
    public Weather from(LocalDateTime runStart) {
        return new Weather(recordStart, air, sun, sunCentre, sunModelled, runStart, intoRecord(runStart));
    }

    /** Seconds from the start of the record to a moment, found by month and day where the record is a year. */
    private double intoRecord(LocalDateTime moment) {
        if (air.periodic() && air.span() >= 365 * DAY) {
            for (int year = recordStart.getYear(); year <= recordStart.getYear() + 1; year++) {
                double seconds = between(recordStart, moment.withYear(year));
                if (seconds >= 0 && seconds < air.span()) {
                    return seconds;
                }
            }
        }
        return between(recordStart, moment);
    }

    private static double between(LocalDateTime from, LocalDateTime to) {
        return Duration.between(from, to).toMillis() / 1000.0;
    }

    /**
     * All channels at a moment.
     *
     * @param t s since the run began
     * @param out filled from 0 to {@link #channels()}
     */
    public void at(double t, double[] out) {
        air.at(t + offset, out, TEMPERATURE);
        sun.at(t + offset - sunCentre, out, SUN);
    }

    /** Rates of change of all channels, per second, arguments as in {@link #at}. */
    public void slopeAt(double t, double[] out) {
        air.slopeAt(t + offset, out, TEMPERATURE);
        sun.slopeAt(t + offset - sunCentre, out, SUN);
    }

    /** Outdoor temperature alone, K. For reports; a run asks for all channels at once. */
    public double temperatureAt(double t) {
        double[] out = new double[channels()];
        at(t, out);
        return out[TEMPERATURE];
    }

    public int channels() {
        return air.count() + sun.count();
    }

    /** How many surfaces the sun is given for. */
    public int surfaces() {
        return sun.count();
    }

    /** The moment of {@code t = 0}, local standard time. */
    public LocalDateTime start() {
        return start;
    }

    /** Whether the weather goes on for ever by repeating itself. */
    public boolean repeats() {
        return air.periodic();
    }

    /** Length of the record or of its period, s. */
    public double span() {
        return air.span();
    }

    /** Whether the sun comes from a model, not from measured irradiance. */
    public boolean sunModelled() {
        return sunModelled;
    }

    /** Whether the record holds all moments from one to another, s since the run began. */
    public boolean covers(double from, double to) {
        return repeats() || (from + offset >= 0 && to + offset <= air.span());
    }

    /** Mean outdoor temperature of the record or of one period, K. For a typical year, the annual mean. */
    public double meanTemperature() {
        return meanTemperature(-offset, air.knots());
    }

    private double meanTemperature(double from, int steps) {
        double[] out = new double[channels()];
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            at(from + i * air.step(), out);
            sum += out[TEMPERATURE];
        }
        return sum / steps;
    }

    /**
     * Heating degree days from one moment to another, K·d: for every 24 h how far the mean temperature lies below the
     * base; what is left over at the end counts as its share of a day.
     *
     * @param base K
     * @param from s since the run began
     * @param to s since the run began
     */
    public double degreeDays(double base, double from, double to) {
        double sum = 0;
        for (double t = from; t < to - air.step() / 2; t += DAY) {
            int steps = (int) Math.round(Math.min(DAY, to - t) / air.step());
            sum += Math.max(0, base - meanTemperature(t, steps)) * steps * air.step() / DAY;
        }
        return sum;
    }

    /**
     * The mean day of a span, repeating: every channel averaged over the days of the span at each time of day. With it
     * a run finds the state that the rig has settled to before the weather of interest begins.
     *
     * @param from start of the span
     * @param to end of the span; hours beyond the last full day are left out
     * @throws IllegalArgumentException if the span is shorter than a day or leaves the record
     */
    public Weather meanDay(LocalDateTime from, LocalDateTime to) {
        int days = (int) Duration.between(from, to).toDays();
        int perDay = (int) Math.round(DAY / air.step());
        int first = (int) Math.ceil(intoRecord(from) / air.step() - 1e-9);
        if (days < 1 || (!repeats() && (first < 0 || first + days * perDay > air.knots()))) {
            throw new IllegalArgumentException("a mean day needs at least one full day inside the record; asked for "
                    + from + " to " + to + ", the record begins " + recordStart);
        }
        LocalDateTime origin = recordStart.plusSeconds(Math.round(first * air.step()));
        return new Weather(
                origin,
                air.meanDay(first, days),
                sun.meanDay(first, days),
                sunCentre,
                sunModelled,
                from,
                between(origin, recordStart) + intoRecord(from));
    }
}
