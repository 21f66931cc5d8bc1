package stokewell.web;

import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.UnaryOperator;
import stokewell.check.Check;
import stokewell.check.Finding;
import stokewell.check.Looked;
import stokewell.file.RigFile;
import stokewell.file.RigFileFault;
import stokewell.file.RigValue;
import stokewell.file.UnitSystem;
import stokewell.rig.Rig;
import stokewell.run.Given;
import stokewell.run.Hurry;
import stokewell.run.Ledger;
import stokewell.run.Night;
import stokewell.run.NightRun;
import stokewell.run.Standing;
import stokewell.show.CardFacts;
import stokewell.show.Cautions;
import stokewell.show.NightJson;
import stokewell.show.NightScene;
import stokewell.show.Spoken;
import stokewell.size.SameWarmth;
import stokewell.solve.StepFailure;
import tools.jackson.databind.util.RawValue;

/** Runs nights as the page asks for them. */
final class Nights {

    private final RigFolder folder;
    private final WeatherShelf weather;
    private final Asking asking;

    /** Days that a night of a drag may settle in: the next goes on from there. */
    private static final int DRAGGED_DAYS = 1;
    /** Days lived before it; none with many hands waiting. */
    private static final int LIVED_DAYS = 1;
    /** Error allowed in a step of a drag's night, K: costs the morning some thousandths of a kelvin. */
    private static final double DRAGGED_TOLERANCE = 1e-2;

    private static final long LONGEST_DAYS = 31;

    private final Standings standings = new Standings();
    /** Checks with all drills run, which a night alone cannot see. */
    final Checks checks = new Checks();

    Nights(RigFolder folder, WeatherShelf weather, Asking asking) {
        this.folder = folder;
        this.weather = weather;
        this.asking = asking;
    }

    private static final Asking.Wish NO_WISH = new Asking.Wish(null, null, null, null, null, null, UnitSystem.SI);

    /**
     * A rig that can be run.
     *
     * @param rig    with all settings and what is left out of it
     * @param beside a file in whose folder its weather lies
     */
    record Ready(Rig rig, Path beside, Asking.Wish wish) {

        /** The same for a night of its own choice: a season's hours are none of a night's. */
        Ready anyNight() {
            Asking.Wish night =
                    new Asking.Wish(wish.weather(), wish.file(), null, null, wish.hour(), wish.limit(), wish.units());
            return new Ready(rig, beside, night);
        }

        /** The same for whoever reads it in whatever units. */
        Ready anyUnits() {
            Asking.Wish any = new Asking.Wish(
                    wish.weather(), wish.file(), wish.from(), wish.until(), wish.hour(), wish.limit(), UnitSystem.SI);
            return new Ready(rig, beside, any);
        }

        /** Without findings. */
        CardFacts plainFacts(String told) {
            return CardFacts.of(rig, wish.units()).in(told);
        }

        /** With what was found: no card of a rig with a stop may look fine. */
        CardFacts facts(Asking.NightAsked asked, Check check) {
            return plainFacts(asked.told()).checked(check);
        }
    }

    /** What a request asks for, understood, so that it can be asked again with more settings. */
    record Wanted(Filed filed, List<String> settings, List<String> without, Asking.Wish wish) {

        Ready ready() {
            return with(List.of());
        }

        /** @param more settings over those that were asked for */
        Ready with(List<String> more) {
            Rig rig = read(more).rig();
            for (String part : without) rig = Nights.without(rig, part);
            if (wish.weather() == null && wish.file() == null) WeatherShelf.mayRead(rig, filed.path());
            return new Ready(rig, filed.path(), wish);
        }

        /** Every value of the rig with its settings. */
        List<RigValue> values() {
            return read(List.of()).values();
        }

        private RigFile<Rig> read(List<String> more) {
            List<String> all = new ArrayList<>(settings);
            all.addAll(more);
            try {
                return RigFile.parse(filed.fileName(), filed.text(), all);
            } catch (RigFileFault faults) {
                throw Refusal.rig(faults.faults());
            }
        }
    }

    /** The rig of that id as its file tells it. */
    Rig rig(String id) {
        return ready(id).rig();
    }

    Ready ready(String id) {
        return new Wanted(folder.read(id), List.of(), List.of(), NO_WISH).ready();
    }

    Ready ready(Body body) {
        return wanted(body).ready();
    }

    Wanted wanted(Body body) {
        Filed filed = filed(body);
        List<String> settings = new ArrayList<>();
        for (Body one : body.each("set")) settings.add(one.need("key") + "=" + one.need("value"));
        String said = body.text("weather");
        Path file = said == null ? null : weather.file(said);
        Asking.Wish wish = new Asking.Wish(
                file == null ? said : null,
                file,
                body.text("from"),
                body.text("until"),
                body.text("hour"),
                body.text("limit"),
                body.units());
        return new Wanted(filed, settings, body.texts("without"), wish);
    }

    private Filed filed(Body body) {
        String text = body.text("text");
        if (text == null) return folder.read(body.need("rig"));
        String beside = body.text("beside");
        Path path = beside == null
                ? folder.folder().resolve("text.yaml")
                : folder.read(beside).path();
        return new Filed("text", path, text, "");
    }

    private static Rig without(Rig rig, String part) {
        return switch (part) {
            case "store", "water" -> rig.withoutWater();
            case "fan" -> rig.withoutFan();
            default -> throw Refusal.request("Without " + part + "?", "Known: store, water, fan.");
        };
    }

    /**
     * A night that has been run.
     *
     * @param check what was found on the rig; null where nobody has looked
     * @param rough whether it was run in a hurry and may be some tenths of a kelvin off
     */
    record Ran(Ready ready, Asking.NightAsked asked, Night night, Check check, boolean rough) {

        CardFacts facts() {
            return ready.facts(asked, check);
        }

        /** The same with more looked at. */
        Ran with(Check other) {
            return new Ran(ready, asked, night, other, rough);
        }
    }

    Asking.NightAsked night(Ready ready) {
        Asking.NightAsked asked = asking.night(ready.rig(), ready.beside(), ready.wish());
        if (Duration.between(asked.ask().from(), asked.ask().until()).toDays() > LONGEST_DAYS) {
            throw Refusal.request(
                    "A night of more than " + LONGEST_DAYS + " days is none.", "Ask for less, or for a season.");
        }
        return asked;
    }

    Asking.SeasonAsked season(Ready ready) {
        return asking.season(ready.rig(), ready.beside(), ready.wish());
    }

    /** Runs with all the time it takes, and the drills that can forbid a fire: the same answer as the verb's. */
    Ran run(Ready ready) {
        Asking.NightAsked asked = night(ready);
        try {
            long begun = System.nanoTime();
            UnaryOperator<Night> timed = night -> night.timed((System.nanoTime() - begun) * 1e-6);
            Check whole = checks.of(ready, asked.weather());
            if (whole != null) {
                NightRun.Settled settled = NightRun.settled(ready.rig(), asked.weather(), asked.ask(), Hurry.NONE);
                Night night = timed.apply(NightRun.run(asked.weather(), asked.ask(), Given.NOTHING, settled));
                standings.keep("", ready, settled.standing());
                return new Ran(ready, asked, night, whole, false);
            }
            Looked looked = Looked.run(ready.rig(), asked.weather(), asked.ask(), Given.NOTHING, timed);
            standings.keep("", ready, looked.standing());
            return new Ran(ready, asked, looked.night(), looked.check(), false);
        } catch (StepFailure | Ledger.LedgerFault e) {
            throw Refusal.run(e.getMessage());
        }
    }

    /**
     * Runs for a hand that drags: from where its last night settled, in few days, and judged by the rules alone, without a
     * drill; where many wait it is not judged at all. Nobody is to take its silence for safety.
     *
     * @param wanted asked every day: where no one waits for it any more, it ends as stale
     */
    Ran run(Ready ready, String who, Drags.Wanted wanted) {
        Hurry hurry =
                new Hurry(standings.near(who, ready), DRAGGED_DAYS, wanted.crowded() ? 0 : LIVED_DAYS, wanted::still);
        Asking.NightAsked asked = night(ready);
        try {
            long begun = System.nanoTime();
            NightRun.Ask ask = dragged(asked.ask());
            NightRun.Settled settled = NightRun.settled(ready.rig(), asked.weather(), ask, hurry);
            standings.keep(who, ready, settled.standing());
            if (!hurry.goOn().getAsBoolean()) throw Refusal.stale();
            String start = NightRun.startWords(asked.weather());
            Night night = NightRun.record(settled.simulation(), asked.weather(), ask, start);
            night = night.timed((System.nanoTime() - begun) * 1e-6);
            Check whole = checks.of(ready, asked.weather());
            Check check = whole != null || wanted.crowded() ? whole : Check.of(ready.rig(), night, List.of());
            return new Ran(ready, asked, night, check, true);
        } catch (CancellationException e) {
            throw Refusal.stale();
        } catch (StepFailure | Ledger.LedgerFault e) {
            throw Refusal.run(e.getMessage());
        }
    }

    /** The wood that makes the room of a night at rest so warm, K in the mean; null where no weight of its loads does. */
    SameWarmth asWarm(Ran ran, double room) {
        Standing near = standings.near("", ran.ready);
        return SameWarmth.of(ran.ready.rig(), ran.asked.weather(), ran.asked.ask(), ran.night, near, room);
    }

    private static NightRun.Ask dragged(NightRun.Ask ask) {
        return new NightRun.Ask(
                ask.from(), ask.until(), ask.hour(), ask.evening(), ask.limit(), ask.step(), DRAGGED_TOLERANCE);
    }

    /** What the page is told of a night, where it still wants to know. */
    static Map<String, Object> told(Ran ran, Drags.Wanted wanted) {
        if (!wanted.still()) throw Refusal.stale();
        return told(ran);
    }

    /** What the page is told of a night: all of it at rest, what it draws while a hand drags. */
    static Map<String, Object> told(Ran ran) {
        UnitSystem units = ran.ready().wish().units();
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("rig", ran.night.rig());
        all.put("rough", ran.rough());
        all.put("told", ran.asked.told());
        StringWriter scene = new StringWriter(60_000);
        if (ran.rough()) {
            NightScene.drawn(ran.ready.rig(), ran.night, scene);
        } else {
            StringWriter card = new StringWriter();
            NightJson.write(ran.night, ran.facts(), card);
            all.put("card", new RawValue(card.toString()));
            NightScene.write(ran.ready.rig(), ran.night, scene);
        }
        all.put("view", new RawValue(scene.toString()));
        all.put(
                "cautions",
                Cautions.told(ran.night, units).stream().map(Nights::told).toList());
        all.put("judged", ran.check() != null);
        if (ran.check() != null) findings(all, ran.check, units);
        all.put("notes", ran.asked.notes());
        return all;
    }

    private static Map<String, Object> told(Cautions.Caution caution) {
        return Map.of("danger", caution.danger(), "text", caution.text());
    }

    static void findings(Map<String, Object> into, Check check, UnitSystem units) {
        Check spoken = Spoken.in(check, units);
        into.put("worst", check.worst().name().toLowerCase(Locale.ROOT));
        into.put("stop", check.stops());
        into.put("findings", spoken.findings().stream().map(Nights::told).toList());
    }

    static Map<String, Object> told(Finding f) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("id", f.id());
        one.put("level", f.level().name().toLowerCase(Locale.ROOT));
        one.put("what", f.what());
        one.put("why", f.why());
        one.put("remedy", f.remedy());
        one.put("basis", f.basis());
        return one;
    }
}
