package stokewell.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A winter of invented days: weather with a season and a memory, wood by what the room needs, an error with a memory, and whole
 * loads only.
 *
 * @param days    how many
 * @param rate    wood a day for each kelvin, J
 * @param free    kelvin that sun and people give
 * @param scatter standard deviation of the error over the mean
 * @param memory  correlation of a day's error with the next day's
 * @param load    heat of one load, J; 0 for any amount
 * @param sunny   kelvin that 100 W/m2 of sun give
 * @param middle  sun in the middle of the days, W/m2; NaN where it is not measured and not there
 */
record InventedWinter(
        int days, double rate, double free, double scatter, double memory, double load, double sunny, double middle) {

    InventedWinter(int days, double rate, double free, double scatter, double memory, double load) {
        this(days, rate, free, scatter, memory, load, 0, Double.NaN);
    }

    static final double ROOM = 289;

    WoodPeriod period(long firstDay, Random dice) {
        List<WoodDay> all = new ArrayList<>();
        double weather = 4 * dice.nextGaussian();
        double error = dice.nextGaussian();
        double owed = 0;
        for (int d = 0; d < days; d++) {
            weather = 0.7 * weather + Math.sqrt(1 - 0.49) * 4 * dice.nextGaussian();
            error = memory * error + Math.sqrt(1 - memory * memory) * dice.nextGaussian();
            double out = 271 - 5 * Math.sin(Math.PI * (d + 0.5) / days) + weather;
            double in = ROOM + 0.5 * dice.nextGaussian();
            double mean = rate * 15;
            double clear = Double.isNaN(middle) ? 0 : 0.2 + 0.8 * dice.nextDouble();
            // days grow longer: from less than the middle to more
            double sun = Double.isNaN(middle) ? Double.NaN : clear * middle * (0.6 + 0.8 * d / days);
            double given = Double.isNaN(middle) ? 0 : sunny * sun / 100;
            owed += Math.max(0, rate * Math.max(0, in - out - free - given) + scatter * mean * error);
            double burnt = load == 0 ? owed : load * Math.floor(owed / load);
            owed -= burnt;
            all.add(new WoodDay(
                    java.time.LocalDate.ofEpochDay(firstDay + d),
                    burnt,
                    burnt > 0 ? 1 : 0,
                    out,
                    in,
                    sun,
                    WoodDay.Flaw.NONE));
        }
        return new WoodPeriod(all, List.of(), true);
    }

    /** The same in a season with another sun. */
    InventedWinter under(double otherMiddle) {
        return new InventedWinter(days, rate, free, scatter, memory, load, sunny, otherMiddle);
    }

    /** The same rig with a saving. */
    InventedWinter saving(double share, int otherDays) {
        return new InventedWinter(
                otherDays, rate * (1 - share), free, scatter * (1 - 0.3 * share), memory, load, sunny, middle);
    }
}
