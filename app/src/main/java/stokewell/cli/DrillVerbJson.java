package stokewell.cli;

import java.io.StringWriter;
import java.time.LocalDateTime;
import java.util.Locale;
import stokewell.check.Drill;
import stokewell.check.Drills;
import stokewell.rig.Rig;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** Drills for programs: temperatures in °C, times in minutes, pressure over the air's in bar; null where there is no number. */
final class DrillVerbJson {

    private static final double ZERO = 273.15;

    private DrillVerbJson() {}

    static String of(Rig rig, Drills.Outcome outcome) {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(ObjectWriteContext.empty(), out)) {
            json.writeStartObject();
            json.writeStringProperty("rig", rig.name());
            json.writeArrayPropertyStart("drills");
            for (Drill d : outcome.drills()) drill(json, outcome, d);
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
        json.writeArrayPropertyStart("guards");
        for (Drill.Guard g : d.guards()) {
            json.writeStartObject();
            json.writeStringProperty("name", g.name());
            number(json, "boilsWithoutMinutes", g.without() / 60);
            number(json, "boilsWithMinutes", g.with() / 60);
            number(json, "steamKeptKg", g.steam());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeStringProperty("level", d.level().name().toLowerCase(Locale.ROOT));
        json.writeStringProperty("sentence", d.sentence());
        json.writeEndObject();
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
