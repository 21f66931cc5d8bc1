package stokewell.web;

import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stokewell.check.Check;
import stokewell.check.Finding;
import stokewell.check.Looked;
import stokewell.file.RigFile;
import stokewell.file.RigFileFault;
import stokewell.file.RigValue;
import stokewell.matter.Wood;
import stokewell.rig.Rig;
import stokewell.run.Given;
import stokewell.run.Ledger;
import stokewell.run.Night;
import stokewell.run.NightRun;
import stokewell.run.Simulation;
import stokewell.show.CardFacts;
import stokewell.show.NightJson;
import stokewell.show.NightScene;
import stokewell.solve.StepFailure;
import tools.jackson.databind.util.RawValue;

/** Runs nights as the page asks for them. */
final class Nights {

    private final RigFolder folder;
    private final WeatherShelf weather;
    private final Asking asking;

    Nights(RigFolder folder, WeatherShelf weather, Asking asking) {
        this.folder = folder;
        this.weather = weather;
        this.asking = asking;
    }

    /**
     * A rig that can be run.
     *
     * @param rig    with all settings and what is left out of it
     * @param beside a file in whose folder its weather lies
     */
    record Ready(Rig rig, Path beside, Asking.Wish wish) {

        /** Without findings. */
        CardFacts plainFacts(String told) {
            Wood wood = Wood.named(rig.fuel().species()).orElse(Wood.values()[0]);
            double stacked =
                    wood.stackedDensity(rig.fuel().wetBasis(), rig.fuel().stackSolid());
            return CardFacts.of(stacked, wish.units()).in(told);
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

    /** A night that has been run. */
    record Ran(Ready ready, Asking.NightAsked asked, Night night, Check check) {

        CardFacts facts() {
            return ready.facts(asked, check);
        }

        /** The same with more looked at. */
        Ran with(Check other) {
            return new Ran(ready, asked, night, other);
        }
    }

    Asking.NightAsked night(Ready ready) {
        return asking.night(ready.rig(), ready.beside(), ready.wish());
    }

    Asking.SeasonAsked season(Ready ready) {
        return asking.season(ready.rig(), ready.beside(), ready.wish());
    }

    /** With the drills that can forbid a fire. */
    Ran run(Ready ready) {
        Asking.NightAsked asked = night(ready);
        try {
            long begun = System.nanoTime();
            Looked looked = Looked.run(
                    ready.rig(),
                    asked.weather(),
                    asked.ask(),
                    Given.NOTHING,
                    night -> night.timed((System.nanoTime() - begun) * 1e-6));
            return new Ran(ready, asked, looked.night(), looked.check());
        } catch (StepFailure | Ledger.LedgerFault e) {
            throw Refusal.run(e.getMessage());
        }
    }

    /**
     * While a hand drags: the rules alone, without a drill.
     *
     * @param wanted asked between settling and the night: where no one waits for it any more, it ends as stale
     */
    Ran run(Ready ready, Drags.Wanted wanted) {
        Asking.NightAsked asked = night(ready);
        if (!wanted.still()) throw Refusal.stale();
        try {
            long begun = System.nanoTime();
            Simulation settled = NightRun.settled(ready.rig(), asked.weather(), asked.ask());
            if (!wanted.still()) throw Refusal.stale();
            Night night = NightRun.record(settled, asked.weather(), asked.ask(), NightRun.startWords(asked.weather()));
            night = night.timed((System.nanoTime() - begun) * 1e-6);
            return new Ran(ready, asked, night, Check.of(ready.rig(), night, List.of()));
        } catch (StepFailure | Ledger.LedgerFault e) {
            throw Refusal.run(e.getMessage());
        }
    }

    /** What the page is told of a night, where it still wants to know. */
    static Map<String, Object> told(Ran ran, Drags.Wanted wanted) {
        if (!wanted.still()) throw Refusal.stale();
        return told(ran);
    }

    /** What the page is told of a night. */
    static Map<String, Object> told(Ran ran) {
        StringWriter card = new StringWriter();
        NightJson.write(ran.night, ran.facts(), card);
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("rig", ran.night.rig());
        all.put("told", ran.asked.told());
        all.put("card", new RawValue(card.toString()));
        StringWriter scene = new StringWriter(80_000);
        NightScene.write(ran.ready.rig(), ran.night, scene);
        all.put("view", new RawValue(scene.toString()));
        findings(all, ran.check);
        all.put("notes", ran.asked.notes());
        return all;
    }

    static void findings(Map<String, Object> into, Check check) {
        into.put("worst", check.worst().name().toLowerCase(Locale.ROOT));
        into.put("stop", check.stops());
        into.put("findings", check.findings().stream().map(Nights::told).toList());
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
