package stokewell.show;

import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stokewell.file.UnitSystem;
import stokewell.fit.Advice;
import stokewell.fit.Cause;
import stokewell.fit.Figure;
import stokewell.fit.Fit;
import stokewell.fit.Learnt;
import stokewell.fit.Placing;
import stokewell.fit.Profile;
import stokewell.fit.Watch;

/** A fit for programs: units and nulls as in {@link NightJson}. */
public final class FitJson {

    private FitJson() {}

    /** Writes, and leaves the writer open. */
    public static void write(Fit fit, Placing placing, Writer out) {
        try (Keyed json = new Keyed(out)) {
            json.text("rig", fit.filed().name());
            json.time("from", fit.at(fit.from())).time("until", fit.at(fit.until()));
            json.text("settled", Boolean.toString(fit.estimate().settled()));
            json.count("engineRuns", fit.estimate().runs());
            json.list("factors");
            for (Fit.Factor f : fit.factors()) {
                json.item()
                        .text("name", f.knob().name().toLowerCase(Locale.ROOT))
                        .text("says", f.knob().words);
                json.number("factor", f.factor(), 4).number("low", f.low(), 4).number("high", f.high(), 4);
                json.text("told", FitWords.told(f)).text("keys", f.knob().keys).shut();
            }
            json.done();
            json.list("confused");
            for (Fit.Confused c : fit.confused()) {
                json.item().text("one", c.one().name()).text("other", c.other().name());
                json.number("correlation", c.correlation(), 3).shut();
            }
            json.done();
            learnt(json, fit.learnt());
            json.list("sensors");
            for (int i = 0; i < placing.names().size(); i++) {
                json.item()
                        .text("name", placing.names().get(i))
                        .text("place", placing.spots().get(i).words);
                json.text("why", placing.why().get(i)).shut();
            }
            json.done();
            json.list("traces");
            for (Fit.Trace t : fit.traces()) {
                json.item()
                        .text("place", t.spot().words)
                        .number("rmsK", t.rms(), 4)
                        .number("within90", t.within(), 4);
                json.number("offsetK", t.offset(), 4)
                        .number("slowK", t.disturbance().slow(), 4);
                json.number("memoryHours", t.disturbance().memory() / 3600, 3).shut();
            }
            json.done();
            json.list("holdout");
            if (fit.holdout() != null) {
                for (Fit.Holdout h : fit.holdout()) {
                    json.item().text("place", h.spot().words).number("hours", h.hours(), 1);
                    json.number("rmsK", h.rms(), 4)
                            .number("dayBeforeK", h.persistence(), 4)
                            .shut();
                }
            }
            json.done();
            json.list("loads");
            for (var b : fit.burns()) {
                json.item().time("time", fit.at(b.time())).number("kg", b.mass(), 3);
                json.text("noted", Boolean.toString(b.noted())).shut();
            }
            json.done();
            watch(json, fit);
            closely(json, fit);
            Measure si = Measure.plain(UnitSystem.SI);
            ChangeWords more = new ChangeWords(fit, si, "+/-");
            List<String> sentences = new ArrayList<>(new FitWords(fit, si, "+/-").sentences());
            sentences.add(more.changed());
            sentences.addAll(more.closely());
            json.texts("sentences", sentences);
        }
    }

    private static void watch(Keyed json, Fit fit) {
        Watch w = fit.watch();
        json.open("changed").number("strength", w.strength(), 1).number("toldFrom", Watch.THRESHOLD, 1);
        Watch.Deviation d = w.deviation();
        if (d == null) json.nothing("what");
        else {
            json.open("what").time("time", fit.at(d.time())).time("earliest", fit.at(d.earliest()));
            json.time("latest", fit.at(d.latest())).text("oneDay", Boolean.toString(d.over()));
            json.text("named", Boolean.toString(d.isNamed())).list("suspects");
            for (Watch.Suspect s : d.suspects()) {
                boolean factor = s.change().cause() instanceof Cause.Turned;
                json.item().text("cause", s.change().cause().name());
                json.text("sizeIs", sizeIs(s.change().cause()));
                double size = s.change().size();
                json.number("size", factor ? Math.exp(size) : size, 3);
                json.number("low", factor ? Math.exp(size - s.half()) : size - s.half(), 3);
                json.number("high", factor ? Math.exp(size + s.half()) : size + s.half(), 3);
                json.number("likelihood", s.share(), 4).shut();
            }
            json.done().shut();
        }
        json.list("days");
        for (Watch.Night n : w.nights()) {
            json.item().time("from", fit.at(n.time())).text("place", n.spot().words);
            json.number("standardErrors", n.off(), 2).shut();
        }
        json.done().shut();
    }

    private static String sizeIs(Cause cause) {
        if (cause instanceof Cause.Turned) return "factor on before";
        return cause instanceof Cause.Loose ? "share of the way to the room" : "K";
    }

    private static void closely(Keyed json, Fit fit) {
        json.list("profiles");
        for (Profile p : fit.profiles()) {
            json.item().text("name", p.knob().name().toLowerCase(Locale.ROOT));
            json.text("flat", Boolean.toString(p.isFlat()));
            json.number("low", p.low(), 4).number("high", p.high(), 4).list("points");
            for (int i = 0; i < p.factor().length; i++) {
                json.item().number("factor", p.factor()[i], 4).number("rise", p.rise()[i], 3);
                json.number("riseOfReadings", p.told()[i], 3).shut();
            }
            json.done().shut();
        }
        json.done();
        json.list("wouldTell");
        for (Advice a : fit.advice()) {
            json.item().text("name", a.knob().name().toLowerCase(Locale.ROOT));
            json.text("what", a.spot() == null ? "as many days again" : "sensor at " + a.spot().words);
            json.number("asWide", a.after() / a.before(), 3).shut();
        }
        json.done();
    }

    private static void learnt(Keyed json, Learnt l) {
        json.open("learnt");
        if (l.store() == null) json.nothing("store");
        else {
            json.open("store").celsius("waterC", l.store().water());
            figure(json, "lossW", l.store().power(), 1, 1);
            figure(json, "baseShare", l.store().base(), 1, 4);
            json.shut();
        }
        if (l.foam() == null) json.nothing("foam");
        else {
            json.open("foam")
                    .text("side", l.foam().side())
                    .number("mm", 1000 * l.foam().thickness(), 0);
            figure(json, "lossW", l.foam().power(), 1, 1);
            figure(json, "morningRoomK", l.foam().room(), 1, 3);
            figure(json, "morningStoreK", l.foam().water(), 1, 3);
            json.shut();
        }
        if (l.loop() == null) json.nothing("loop");
        else {
            json.open("loop").number("filedKgPerS", l.loop().filed(), 5);
            figure(json, "fittedKgPerS", l.loop().fitted(), 1, 5);
            json.shut();
        }
        if (l.gave() == null) json.nothing("storeGave");
        else {
            json.open("storeGave");
            figure(json, "kWh", l.gave().heat(), 1 / 3.6e6, 3);
            figure(json, "floorShare", l.gave().floor(), 1, 4);
            figure(json, "jacketShare", l.gave().jacket(), 1, 4);
            json.shut();
        }
        json.number("heatDays", l.days(), 2).list("heat");
        for (Learnt.Cost c : l.costs()) {
            json.item().text("account", c.account());
            figure(json, "kWh", c.heat(), 1 / 3.6e6, 3);
            figure(json, "share", c.share(), 1, 4);
            json.shut();
        }
        json.done().shut();
    }

    private static void figure(Keyed json, String key, Figure f, double scale, int decimals) {
        json.open(key)
                .number("value", scale * f.value(), decimals)
                .number("half90", scale * f.half(), decimals)
                .shut();
    }
}
