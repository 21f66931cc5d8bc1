package stokewell.weather;

/** Sun at the top of the air, through a clear sky, split into beam and diffuse, and on tilted planes. W/m2, rad. */
public final class Irradiance {

    /** Mean irradiance at the mean distance of the sun, W/m2. Source: Gueymard, Solar Energy 168 (2018) 14. */
    public static final double SOLAR_CONSTANT = 1361.1;

    /** Share of light sent back by bare or grassy ground. Source: Liu and Jordan, ASHRAE Trans. 69 (1963). */
    public static final double GROUND_ALBEDO = 0.2;

    /** Below this height of the sun (sine) an hourly mean cannot tell where the beam came from, so it is diffuse. */
    static final double LOWEST_SUN = 0.03;

    private Irradiance() {}

    /**
     * Irradiance on a plane facing the sun above the air, W/m2.
     *
     * @param dayOfYear 1 to 366
     *     <p>Source: Spencer, Search 2 (1971) 172. Within 0.01 % of the almanac.
     */
    public static double extraterrestrial(int dayOfYear) {
        double b = 2 * Math.PI * (dayOfYear - 1) / 365;
        return SOLAR_CONSTANT
                * (1.000110
                        + 0.034221 * Math.cos(b)
                        + 0.001280 * Math.sin(b)
                        + 0.000719 * Math.cos(2 * b)
                        + 0.000077 * Math.sin(2 * b));
    }

    /**
     * Global irradiance on level ground under a clear sky, W/m2; zero with the sun down.
     *
     * @param cosZenith cosine of the zenith angle
     *     <p>Source: Haurwitz, J. Meteorology 2 (1945) 154 and 3 (1946) 123, in W/m2.
     */
    public static double clearSky(double cosZenith) {
        return cosZenith <= 0 ? 0 : 1098 * cosZenith * Math.exp(-0.057 / cosZenith);
    }

    /**
     * Share of hourly global irradiance that is diffuse, 0.165 to 1.
     *
     * @param clearness global over extraterrestrial on the horizontal; outside 0 to 1 the nearest end counts
     *     <p>Source: Erbs, Klein and Duffie, Solar Energy 28 (1982) 293, eq. 1.
     */
    public static double diffuseShare(double clearness) {
        double k = Math.max(0, clearness);
        if (k <= 0.22) {
            return 1 - 0.09 * k;
        }
        if (k <= 0.80) {
            return 0.9511 + k * (-0.1604 + k * (4.388 + k * (-16.638 + k * 12.336)));
        }
        return 0.165;
    }

    /**
     * Share of clear-sky irradiance that cloud lets through, 0.25 to 1.
     *
     * @param cloud share of the sky covered, 0 to 1
     *     <p>Source: Kasten and Czeplak, Solar Energy 24 (1980) 177.
     */
    public static double throughCloud(double cloud) {
        return 1 - 0.75 * Math.pow(Math.min(1, Math.max(0, cloud)), 3.4);
    }

    /** Cloud cover, 0 to 1, under which a share of clear-sky irradiance comes through: {@link #throughCloud} undone. */
    public static double cloudFor(double share) {
        return Math.pow(Math.min(1, Math.max(0, (1 - share) / 0.75)), 1 / 3.4);
    }

    /**
     * Irradiance on a tilted plane: beam, diffuse with its share around the sun, and ground reflection, W/m2.
     *
     * <p>On a level plane the result is {@code global}, whatever the split.
     *
     * @param global on the horizontal
     * @param diffuse on the horizontal, at most {@code global}
     * @param cosZenith mean of the cosine of the zenith angle over the hour, night counted as zero
     * @param cosIncidence mean of the cosine of incidence on the plane, sun behind or down counted as zero
     * @param extraterrestrial normal to the sun above the air
     * @param tilt of the plane
     *     <p>Source: Hay and Davies, Proc. First Canadian Solar Radiation Data Workshop (1980) 59.
     */
    public static double onPlane(
            double global,
            double diffuse,
            double cosZenith,
            double cosIncidence,
            double extraterrestrial,
            double tilt) {
        double sky = (1 + Math.cos(tilt)) / 2;
        double ground = GROUND_ALBEDO * global * (1 - Math.cos(tilt)) / 2;
        if (cosZenith < LOWEST_SUN) {
            return global * sky + ground;
        }
        double beamNormal = Math.min((global - diffuse) / cosZenith, extraterrestrial);
        double scattered = global - beamNormal * cosZenith;
        double anisotropy = beamNormal / extraterrestrial;
        double aroundSun = scattered * anisotropy * cosIncidence / cosZenith;
        return beamNormal * cosIncidence + aroundSun + scattered * (1 - anisotropy) * sky + ground;
    }

    /**
     * Global irradiance from how far a day's temperature swings, as a share of what arrives above the air, 0 to 0.75.
     *
     * @param swing highest less lowest temperature of the day, K
     *     <p>Source: Hargreaves and Samani, J. Irrigation and Drainage 108 (1982) 225, in the form of FAO-56 (1998)
     *     eq. 50 with the coefficient for inland places; the bound is FAO-56 eq. 37 at sea level.
     */
    public static double clearnessFromSwing(double swing) {
        return Math.min(0.75, 0.16 * Math.sqrt(Math.max(0, swing)));
    }
}
