package stokewell.weather;

import java.time.LocalDateTime;
import java.util.List;

/**
 * The sun's geometry for each step of a series, as means over the step from several positions within it, so that the
 * energy of hours in which the sun rises or sets is right.
 */
public final class Sunlight {

    private static final int POSITIONS_PER_STEP = 4;

    /** Cloud cover taken where a day is too dark to tell it from the sun and no day before it could. */
    private static final double UNKNOWN_CLOUD = 0.5;

    /** Least clear-sky energy of a day that still tells how cloudy it was, J/m2. */
    private static final double DARK_DAY = 0.5e6;

    private final double step;
    private final List<Surface> surfaces;
    private final long[] day;
    private final double[] cosZenith;
    private final double[] clearSky;
    private final double[] extraterrestrial;
    private final double[][] cosIncidence;

    /**
     * @param first middle of the first step, local standard time
     * @param step s
     */
    Sunlight(LocalDateTime first, double step, int steps, Site site, List<Surface> surfaces) {
        this.step = step;
        this.surfaces = surfaces;
        day = new long[steps];
        cosZenith = new double[steps];
        clearSky = new double[steps];
        extraterrestrial = new double[steps];
        cosIncidence = new double[surfaces.size()][steps];
        var track = new SunTrack(first, steps * step, site);
        for (int i = 0; i < steps; i++) {
            LocalDateTime middle = first.plusSeconds(Math.round(i * step));
            day[i] = middle.toLocalDate().toEpochDay();
            boolean sameDay = i > 0 && day[i] == day[i - 1];
            extraterrestrial[i] =
                    sameDay ? extraterrestrial[i - 1] : Irradiance.extraterrestrial(middle.getDayOfYear());
            for (int k = 0; k < POSITIONS_PER_STEP; k++) {
                double share = (k + 0.5) / POSITIONS_PER_STEP - 0.5;
                if (track.up((i + share) * step)) add(i, track.at((i + share) * step));
            }
        }
    }

    private void add(int i, SunPosition sun) {
        double height = Math.cos(sun.zenith());
        if (height <= 0) {
            return;
        }
        cosZenith[i] += height / POSITIONS_PER_STEP;
        clearSky[i] += Irradiance.clearSky(height) / POSITIONS_PER_STEP;
        for (int s = 0; s < cosIncidence.length; s++) {
            cosIncidence[s][i] += Math.max(0, surfaces.get(s).cosineOfIncidence(sun)) / POSITIONS_PER_STEP;
        }
    }

    /**
     * Hourly global irradiance where none was measured, W/m2: each day's share of the sun above the air from that
     * day's swing of temperature (see {@link Irradiance#clearnessFromSwing}). Good to about a fifth over a week, poor
     * for a single day.
     *
     * @param start of the hours, local standard time
     * @param temperature of each hour, K
     * @param centre s from each stamp to the middle of its hour of sun
     */
    public static double[] fromTemperature(LocalDateTime start, double[] temperature, double centre, Site site) {
        var light = new Sunlight(start.plusSeconds(Math.round(centre)), 3600, temperature.length, site, List.of());
        double[] global = new double[temperature.length];
        light.eachDay((from, to) -> {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int i = from; i < to; i++) {
                low = Math.min(low, temperature[i]);
                high = Math.max(high, temperature[i]);
            }
            double clearness = Irradiance.clearnessFromSwing(high - low);
            for (int i = from; i < to; i++) {
                global[i] = clearness * light.extraterrestrial[i] * light.cosZenith[i];
            }
        });
        return global;
    }

    /** Global irradiance of each step under a share of clear sky, W/m2. */
    double[] shareOfClearSky(double share) {
        double[] global = clearSky.clone();
        for (int i = 0; i < global.length; i++) {
            global[i] *= share;
        }
        return global;
    }

    /** Diffuse part of global irradiance by {@link Irradiance#diffuseShare}, W/m2. */
    double[] diffuse(double[] global) {
        double[] diffuse = global.clone();
        for (int i = 0; i < diffuse.length; i++) {
            double above = extraterrestrial[i] * cosZenith[i];
            if (cosZenith[i] >= Irradiance.LOWEST_SUN) {
                diffuse[i] *= Irradiance.diffuseShare(global[i] / above);
            }
        }
        return diffuse;
    }

    /** Diffuse part where the beam was measured, W/m2: what the beam leaves of the global. */
    double[] diffuse(double[] global, double[] beam) {
        double[] diffuse = global.clone();
        for (int i = 0; i < diffuse.length; i++) {
            diffuse[i] = Math.max(0, global[i] - beam[i] * cosZenith[i]);
        }
        return diffuse;
    }

    /** Irradiance on every surface, [surface][step], W/m2. */
    double[][] onSurfaces(double[] global, double[] diffuse) {
        double[][] on = new double[surfaces.size()][global.length];
        for (int s = 0; s < on.length; s++) {
            for (int i = 0; i < global.length; i++) {
                on[s][i] = Irradiance.onPlane(
                        global[i],
                        Math.min(diffuse[i], global[i]),
                        cosZenith[i],
                        cosIncidence[s][i],
                        extraterrestrial[i],
                        surfaces.get(s).tilt());
            }
        }
        return on;
    }

    /** Cloud cover of each step, 0 to 1: one value a day, from its sun against clear sky; kept through dark days. */
    double[] cloud(double[] global) {
        double[] cloud = new double[global.length];
        double[] last = {UNKNOWN_CLOUD};
        eachDay((from, to) -> {
            double measured = 0;
            double clear = 0;
            for (int i = from; i < to; i++) {
                measured += global[i] * step;
                clear += clearSky[i] * step;
            }
            if (clear > DARK_DAY) {
                last[0] = Irradiance.cloudFor(measured / clear);
            }
            for (int i = from; i < to; i++) {
                cloud[i] = last[0];
            }
        });
        return cloud;
    }

    /** The least value of each step's day: at night the air cools to about its dew point. Source: FAO-56 eq. 48. */
    double[] lowestOfDay(double[] values) {
        double[] lowest = new double[values.length];
        eachDay((from, to) -> {
            double low = Double.POSITIVE_INFINITY;
            for (int i = from; i < to; i++) {
                low = Math.min(low, values[i]);
            }
            for (int i = from; i < to; i++) {
                lowest[i] = low;
            }
        });
        return lowest;
    }

    private interface Span {
        void over(int from, int to);
    }

    private void eachDay(Span span) {
        int from = 0;
        for (int i = 1; i <= day.length; i++) {
            if (i == day.length || day[i] != day[from]) {
                span.over(from, i);
                from = i;
            }
        }
    }
}
