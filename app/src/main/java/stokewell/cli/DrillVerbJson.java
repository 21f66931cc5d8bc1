package stokewell.cli;

import java.io.StringWriter;
import java.time.LocalDateTime;
import java.util.Locale;
import stokewell.check.Check;
import stokewell.check.Course;
import stokewell.check.Drill;
import stokewell.check.Drills;
import stokewell.check.Finding;
import stokewell.check.Level;
import stokewell.file.UnitSystem;
import stokewell.rig.Rig;
import stokewell.show.Spoken;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** Drills for programs: temperatures in °C, times in minutes, pressure over the air's in bar; null where there is no number. */
final class DrillVerbJson {

    private static final double ZERO = 273.15;

    private DrillVerbJson() {}

    static String of(Rig rig, Drills.Outcome outcome, Check check) {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(ObjectWriteContext.empty(), out)) {
            json.writeStartObject();
            json.writeStringProperty("rig", rig.name());
            json.writeArrayPropertyStart("stops");
            for (Finding f : Spoken.in(check, UnitSystem.SI).at(Level.STOP)) json.writeString(f.id() + ": " + f.what());
            json.writeEndArray();
            json.writeArrayPropertyStart("drills");
            for (Drill d : Spoken.in(outcome, UnitSystem.SI).drills()) drill(json, outcome, d);
            json.writeEndArray();
            json.writeEndObject();
        }
        return out.toString();
    }

    private static void drill(JsonGenerator json, Drills.Outcome outcome, Drill d) {
        json.writeStartObject();
        json.writeStringProperty("fault", DrillVerb.name(d.fault()));
        json.writeStringProperty("title", d.fault().title());
        json.writeBooleanProperty("possible", d.possible());
        LocalDateTime at = outcome.day().at(d.start());
        if (at == null) json.writeNullProperty("start");
        else json.writeStringProperty("start", at.toString());
        number(json, "followedMinutes", d.lasted() / 60);
        json.writeArrayPropertyStart("boils");
        for (Drill.Boils b : d.boils()) {
            json.writeStartObject();
            json.writeStringProperty("pickup", b.pickup());
            number(json, "minutes", b.after() / 60);
            json.writeEndObject();
        }
        json.writeEndArray();
        hottest(json, "water", d.water());
        hottest(json, "metal", d.metal());
        number(json, "pressureBar", d.pressure() / 1e5);
        json.writeBooleanProperty("bursts", d.pressure() == Double.POSITIVE_INFINITY);
        number(json, "steamKgPerHour", d.steam() * 3600);
        number(json, "steamKW", d.steamPower() / 1000);
        number(json, "heatKW", d.heat() / 1000);
        number(json, "reliefNeededKW", d.reliefNeeded() / 1000);
        number(json, "reliefFittedKW", d.reliefFitted() / 1000);
        number(json, "waterLostKg", d.waterLost());
        number(json, "bareAfterMinutes", d.exposed() / 60);
        number(json, "freezesAfterMinutes", d.freezing() / 60);
        number(json, "roomLowestC", d.roomLowest() - ZERO);
        number(json, "roomHighestC", d.roomHighest() - ZERO);
        number(json, "stoveC", d.stove() - ZERO);
        number(json, "storeTopC", d.storeTop() - ZERO);
        number(json, "draftPa", d.draft());
        number(json, "drawnFromWaterKWh", d.drawn() / 3.6e6);
        json.writeArrayPropertyStart("guards");
        for (Drill.Guard g : d.guards()) {
            json.writeStartObject();
            json.writeStringProperty("name", g.name());
            number(json, "boilsWithoutMinutes", g.without() / 60);
            number(json, "boilsWithMinutes", g.with() / 60);
            number(json, "steamKeptKg", g.steam());
            number(json, "hottestWithoutC", g.hottestWithout() - ZERO);
            number(json, "hottestWithC", g.hottestWith() - ZERO);
            number(json, "pressureWithoutBar", g.pressureWithout() / 1e5);
            number(json, "pressureWithBar", g.pressureWith() / 1e5);
            json.writeBooleanProperty("burstsWithout", g.pressureWithout() == Double.POSITIVE_INFINITY);
            number(json, "heatAfterKW", g.heat() / 1000);
            json.writeBooleanProperty("byHand", g.byHand());
            json.writeEndObject();
        }
        json.writeEndArray();
        flash(json, d.flash());
        course(json, d.course());
        json.writeStringProperty("level", d.level().name().toLowerCase(Locale.ROOT));
        json.writeStringProperty("sentence", d.sentence());
        json.writeEndObject();
    }

    private static void flash(JsonGenerator json, Drill.Flashed f) {
        if (f == null) {
            json.writeNullProperty("flash");
            return;
        }
        json.writeObjectPropertyStart("flash");
        number(json, "steamKg", f.steam());
        number(json, "steamMostKg", f.most());
        number(json, "peakKgPerHour", 3600 * f.peak());
        number(json, "peakKW", f.heat() / 1000);
        number(json, "seconds", f.lasts());
        json.writeEndObject();
    }

    private static void course(JsonGenerator json, Course c) {
        json.writeObjectPropertyStart("course");
        column(json, "minutes", c.after(), 0, 60);
        column(json, "waterC", c.water(), ZERO, 1);
        column(json, "boilsAtC", c.boiling(), ZERO, 1);
        column(json, "metalC", c.metal(), ZERO, 1);
        json.writeEndObject();
    }

    private static void column(JsonGenerator json, String key, float[] values, double less, double per) {
        json.writeArrayPropertyStart(key);
        for (float v : values) json.writeNumber(Math.round((v - less) / per * 100) / 100.0);
        json.writeEndArray();
    }

    private static void hottest(JsonGenerator json, String key, Drill.Hottest h) {
        json.writeObjectPropertyStart(key);
        number(json, "temperatureC", h.temperature() - ZERO);
        json.writeStringProperty("where", h.where());
        number(json, "minutes", h.after() / 60);
        json.writeEndObject();
    }

    private static void number(JsonGenerator json, String key, double value) {
        if (Double.isFinite(value)) json.writeNumberProperty(key, value);
        else json.writeNullProperty(key);
    }
}
