package stokewell.show;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/** Where an axis has its marks: round numbers, whole hours, the first of a month. */
final class Steps {

    private static final double[] HOURS = {1, 2, 3, 6, 12, 24, 48, 96, 168};

    private Steps() {}

    /** The least of 1, 2, 5, 10, ... times a power of ten that is not below. */
    static double nice(double least) {
        if (!(least > 0)) return 1;
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        double lead = least / power;
        return power * (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 5 ? 5 : 10);
    }

    /** The least round number of hours that is not below. */
    static double hours(double least) {
        for (double h : HOURS) if (h >= least) return h;
        return 24 * Math.ceil(least / 24);
    }

    /** Times at which the clock shows a multiple of so many seconds, counted from midnight. */
    static List<Double> times(LocalDateTime start, double from, double until, double every) {
        LocalDate day = start.plusSeconds(Math.round(from)).toLocalDate();
        double midnight = Duration.between(start, day.atStartOfDay()).toSeconds();
        List<Double> times = new ArrayList<>();
        for (double t = midnight; t <= until + 1e-6 && times.size() < 1000; t += every)
            if (t >= from - 1e-6) times.add(t);
        return times;
    }

    /** The first of every month. */
    static List<Double> months(LocalDateTime start, double from, double until) {
        LocalDate first = start.plusSeconds(Math.round(from)).toLocalDate().withDayOfMonth(1);
        List<Double> times = new ArrayList<>();
        for (LocalDate m = first; times.size() < 1000; m = m.plusMonths(1)) {
            double t = Duration.between(start, m.atStartOfDay()).toSeconds();
            if (t > until) break;
            if (t >= from) times.add(t);
        }
        return times;
    }
}
