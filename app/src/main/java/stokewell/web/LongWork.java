package stokewell.web;

import java.io.StringWriter;
import java.time.LocalDateTime;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import stokewell.check.Check;
import stokewell.check.Drill;
import stokewell.check.Drills;
import stokewell.check.Fault;
import stokewell.file.UnitSystem;
import stokewell.run.Ledger;
import stokewell.run.NightRun;
import stokewell.run.Season;
import stokewell.run.SeasonRun;
import stokewell.show.GuardTold;
import stokewell.show.SeasonJson;
import stokewell.show.Spoken;
import stokewell.solve.StepFailure;
import tools.jackson.databind.util.RawValue;

/** The kinds of job. */
final class LongWork {

    private final Nights nights;
    private final FitWork fits;

    LongWork(Nights nights, FitWork fits) {
        this.nights = nights;
        this.fits = fits;
    }

    /** What a request wants done; a rig that cannot be run is refused here and now. */
    Job.Work of(String kind, Body body) {
        if (kind.equals("saved")) {
            String model = body.text("model");
            return fits.saved(body, model == null ? null : nights.ready(model));
        }
        Nights.Wanted wanted = nights.wanted(body);
        if (kind.equals("fit")) return fits.fit(wanted, body);
        Nights.Ready ready = wanted.ready();
        return switch (kind) {
            case "season" -> job -> season(ready, job);
            case "drills" -> job -> drills(ready, job);
            case "helps" -> job -> new HelpRuns(nights).run(wanted, job);
            default ->
                throw Refusal.request(
                        "\"" + kind + "\" is no kind of job.", "Known: season, drills, helps, fit, saved.");
        };
    }

    private Map<String, Object> season(Nights.Ready ready, Job job) {
        Asking.SeasonAsked asked = nights.season(ready);
        try {
            job.progress(0, "settling");
            long begun = System.nanoTime();
            Season season = SeasonRun.run(
                    ready.rig(),
                    asked.weather(),
                    asked.ask(),
                    done -> {
                        job.progress(done, Math.round(100 * done) + " % of the season");
                        return true;
                    },
                    month -> job.part(Map.of("month", told(month))));
            StringWriter told = new StringWriter();
            SeasonJson.write(season, ready.plainFacts(asked.told()), told);
            Map<String, Object> all = new LinkedHashMap<>();
            all.put("season", new RawValue(told.toString()));
            all.put("told", asked.told());
            all.put("notes", asked.notes());
            Nights.findings(
                    all, nights.run(ready.anyNight()).check(), ready.wish().units());
            all.put("millis", (System.nanoTime() - begun) * 1e-6);
            return all;
        } catch (StepFailure | Ledger.LedgerFault e) {
            throw Refusal.run(e.getMessage());
        }
    }

    private static Map<String, Object> told(Season.Month m) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("month", m.month().toString());
        one.put("days", RigTold.finite(m.days()));
        one.put("woodKg", RigTold.finite(m.wood()));
        one.put("hoursBelow", RigTold.finite(m.hoursBelow()));
        one.put("meanRoomC", RigTold.finite(m.meanRoom() - 273.15));
        one.put("meanOutdoorsC", RigTold.finite(m.meanOutdoors() - 273.15));
        one.put("degreeDaysK", RigTold.finite(m.degreeDays()));
        return one;
    }

    private Map<String, Object> drills(Nights.Ready ready, Job job) {
        Checked checked = checked(ready, job);
        Map<String, Object> all = new LinkedHashMap<>();
        Drills.Outcome outcome = checked.outcome();
        all.put(
                "drills",
                outcome.drills().stream()
                        .map(d -> told(d, outcome, ready.wish().units()))
                        .toList());
        all.put("told", checked.asked().told());
        Nights.findings(all, checked.check(), ready.wish().units());
        return all;
    }

    /** A rig looked at with all its drills run. */
    record Checked(Nights.Ready ready, Drills.Outcome outcome, Check check, Asking.NightAsked asked) {}

    private volatile Checked last;

    /** Looks, unless the same rig in the same weather was the last that was looked at: files are asked for in a row. */
    Checked checked(Nights.Ready ready) {
        Checked kept = last;
        boolean same = kept != null
                && kept.ready().equals(ready)
                && kept.asked().weather() == nights.night(ready).weather();
        return same ? kept : checked(ready, null);
    }

    /** @param job told of each drill; null for none */
    Checked checked(Nights.Ready ready, Job job) {
        Asking.NightAsked asked = nights.night(ready);
        EnumSet<Fault> faults = EnumSet.allOf(Fault.class);
        int[] count = {0};
        try {
            if (job != null) job.progress(0, "the normal day");
            NightRun.Ask ask = asked.ask();
            Drills.Outcome outcome = Drills.run(
                    ready.rig(),
                    asked.weather(),
                    ask,
                    faults,
                    NightRun.settled(ready.rig(), asked.weather(), ask).moment(),
                    drill -> {
                        if (job == null) return;
                        job.part(Map.of("drill", told(drill, null, ready.wish().units())));
                        job.progress(
                                ++count[0] / (double) faults.size(),
                                drill.fault().title());
                    });
            Check check = Check.of(ready.rig(), outcome.day(), outcome.drills());
            nights.checks.keep(ready, check, asked.weather());
            last = new Checked(ready, outcome, check, asked);
            return last;
        } catch (StepFailure | Ledger.LedgerFault e) {
            throw Refusal.run(e.getMessage());
        }
    }

    private static Map<String, Object> told(Drill d, Drills.Outcome outcome, UnitSystem units) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("fault", d.fault().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        one.put("title", d.fault().title());
        one.put("possible", d.possible());
        LocalDateTime at = outcome == null ? null : outcome.day().at(d.start());
        one.put("start", at == null ? null : at.toString());
        one.put("level", d.level().name().toLowerCase(Locale.ROOT));
        one.put("sentence", Spoken.in(d.sentence(), units));
        one.put("boilsAfterMinutes", RigTold.finite(d.firstBoil() / 60));
        one.put("hottestWaterC", RigTold.finite(d.water().temperature() - 273.15));
        one.put("hottestMetalC", RigTold.finite(d.metal().temperature() - 273.15));
        one.put("pressureBar", RigTold.finite(d.pressure() / 1e5));
        one.put("bursts", d.pressure() == Double.POSITIVE_INFINITY);
        one.put("steamKgPerHour", RigTold.finite(d.steam() * 3600));
        one.put("waterLostKg", RigTold.finite(d.waterLost()));
        one.put("bareAfterMinutes", RigTold.finite(d.exposed() / 60));
        one.put("freezesAfterMinutes", RigTold.finite(d.freezing() / 60));
        one.put("freezes", !d.withoutIce());
        one.put("roomLowestC", RigTold.finite(d.roomLowest() - 273.15));
        one.put("followedMinutes", RigTold.finite(d.lasted() / 60));
        one.put(
                "guards",
                d.guards().stream()
                        .map(g -> {
                            Map<String, Object> guard = new LinkedHashMap<>();
                            guard.put("name", g.name());
                            guard.put("told", GuardTold.line(g, units));
                            guard.put("boilsWithoutMinutes", RigTold.finite(g.without() / 60));
                            guard.put("boilsWithMinutes", RigTold.finite(g.with() / 60));
                            return guard;
                        })
                        .toList());
        return one;
    }
}
