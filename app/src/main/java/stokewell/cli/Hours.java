package stokewell.cli;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import stokewell.file.Quantity;
import stokewell.file.QuantityFault;
import stokewell.rig.Dimension;
import stokewell.run.NightRun;
import stokewell.run.SeasonRun;
import stokewell.run.Simulation;
import stokewell.weather.Hourly;

/** From when to when a run goes, and what counts in it, as a person asked for it; null where he did not. */
final class Hours {

    /** Samples of a night's trace, s. */
    private static final double NIGHT_STEP = 300;
    /** Samples of a season's trace, s. */
    private static final double SEASON_STEP = 1800;
    /** From when on the lowest room of the night counts. */
    private static final LocalTime EVENING = LocalTime.of(16, 0);

    private static final LocalTime MORNING = LocalTime.of(8, 0);

    private Hours() {}

    /** Of a night. */
    static NightRun.Ask night(WeatherChoice outdoors, String from, String until, String hour, String limit) {
        LocalDate earliest = outdoors.hourly()
                .map(h -> h.start().toLocalDate())
                .orElse(LocalDate.of(outdoors.day().getYear(), 1, 1));
        LocalDateTime begin = from == null
                ? outdoors.day().atTime(MORNING)
                : Moments.read("--from", from, earliest).or(outdoors.day(), MORNING);
        LocalDateTime end = end(begin, until);
        reaches(outdoors, begin, end);
        return new NightRun.Ask(
                begin, end, Moments.clock(hour), EVENING, kelvin("--limit", limit), NIGHT_STEP, Simulation.TOLERANCE);
    }

    private static LocalDateTime end(LocalDateTime begin, String until) {
        if (until == null) return begin.toLocalDate().plusDays(1).atTime(MORNING);
        if (until.indexOf(':') < 0 && until.strip().matches("[\\d.,]+\\s*(h|d|day|days|min|hours?)")) {
            return begin.plusSeconds(Math.round(Quantity.parse(until, Dimension.TIME)));
        }
        Moments m = Moments.read("--until", until, begin.toLocalDate());
        LocalDateTime end = m.or(begin.toLocalDate(), MORNING);
        return m.day() == null && !end.isAfter(begin) ? end.plusDays(1) : end;
    }

    /** Of a season: the first whole winter in the record, or all the record where it holds none. */
    static SeasonRun.Ask season(WeatherChoice outdoors, String from, String until, String hour, String limit) {
        Hourly hourly = outdoors.hourly()
                .orElseThrow(() -> Complaint.usage(
                        "A season needs hourly weather.", "Give --weather FILE, or name a file in the rig file."));
        LocalDate earliest = hourly.start().toLocalDate();
        LocalDateTime begin =
                Moments.read("--from", from == null ? "1 Oct" : from, earliest).or(earliest, LocalTime.MIDNIGHT);
        LocalDateTime end = Moments.read("--until", until == null ? "30 Apr" : until, begin.toLocalDate())
                .or(earliest, LocalTime.MIDNIGHT);
        if (!hourly.isWrapped()) {
            if (from == null && end.isAfter(hourly.end())) {
                begin = earliest.plusDays(NightRun.LIVED_DAYS + 1L).atStartOfDay();
                if (until != null) {
                    end = Moments.read("--until", until, begin.toLocalDate()).or(earliest, LocalTime.MIDNIGHT);
                }
            }
            if (until == null && end.isAfter(hourly.end())) {
                end = hourly.end().toLocalDate().atStartOfDay();
                // the curve ends at the last hour's value, not at the end of that hour
                if (!outdoors.covers(begin, end)) end = end.minusDays(1);
                LocalDateTime spring =
                        Moments.read("--until", "30 Apr", begin.toLocalDate()).or(earliest, LocalTime.MIDNIGHT);
                if (spring.isBefore(end)) end = spring;
            }
        }
        reaches(outdoors, begin, end);
        return new SeasonRun.Ask(
                begin, end, Moments.clock(hour), kelvin("--limit", limit), SEASON_STEP, Simulation.TOLERANCE);
    }

    private static void reaches(WeatherChoice outdoors, LocalDateTime begin, LocalDateTime end) {
        if (!begin.isBefore(end)) {
            throw Complaint.usage("--until " + end + " is not after --from " + begin + ".", "Mend one of them.");
        }
        if (!outdoors.covers(begin, end)) {
            throw Complaint.usage(
                    "The weather file does not reach from " + begin + " to " + end + ".",
                    "It holds " + outdoors.reach() + ".");
        }
    }

    private static double kelvin(String option, String text) {
        try {
            return Quantity.parse(text, Dimension.TEMPERATURE);
        } catch (QuantityFault e) {
            throw Complaint.usage(option + ": " + e.what, e.right);
        }
    }
}
