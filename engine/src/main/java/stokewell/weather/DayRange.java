package stokewell.weather;

/**
 * The lowest and highest temperature of a day, K.
 *
 * @param low about 06:30
 * @param high about 15:00
 */
public record DayRange(double low, double high) {

    /** Hour of the lowest temperature, local standard time. */
    public static final double HOUR_OF_LOW = 6.5;
    /** Hour of the highest temperature, local standard time. */
    public static final double HOUR_OF_HIGH = 15;

    public DayRange {
        Site.within("low of the day, K", low, 190, 330);
        Site.within("high of the day, K", high, low, 335);
    }

    /** The day halfway to another. */
    public DayRange midway(DayRange other) {
        return new DayRange((low + other.low) / 2, (high + other.high) / 2);
    }

    /**
     * Temperature through a row of days that repeats: half cosine waves from each extreme to the next, K.
     *
     * @param hour from the first midnight, 0 to 24 times the number of days
     *     <p>Source: de Wit et al., Simulation of Assimilation, Respiration and Transpiration of Crops (1978), in the
     *     form that runs from one day's extreme to the next day's.
     */
    static double temperature(DayRange[] days, double hour) {
        int day = (int) Math.floor(hour / 24);
        double clock = hour - 24.0 * day;
        if (clock < HOUR_OF_LOW) {
            return wave(
                    days[Math.floorMod(day - 1, days.length)].high,
                    days[Math.floorMod(day, days.length)].low,
                    (clock + 24 - HOUR_OF_HIGH) / (24 - HOUR_OF_HIGH + HOUR_OF_LOW));
        }
        DayRange today = days[Math.floorMod(day, days.length)];
        if (clock < HOUR_OF_HIGH) {
            return wave(today.low, today.high, (clock - HOUR_OF_LOW) / (HOUR_OF_HIGH - HOUR_OF_LOW));
        }
        return wave(
                today.high,
                days[Math.floorMod(day + 1, days.length)].low,
                (clock - HOUR_OF_HIGH) / (24 - HOUR_OF_HIGH + HOUR_OF_LOW));
    }

    private static double wave(double from, double to, double share) {
        return from + (to - from) * (1 - Math.cos(Math.PI * share)) / 2;
    }
}
