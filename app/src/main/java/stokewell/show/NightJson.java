package stokewell.show;

import java.io.Writer;
import java.time.LocalDateTime;
import java.util.Map;
import stokewell.matter.Wood;
import stokewell.run.Night;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** A night for programs: temperatures in °C, heat in kWh; null where there is no number. */
public final class NightJson {

    private static final double KWH = 3.6e6;
    private static final double ZERO = 273.15;

    private NightJson() {}

    /** @param stackedDensity of the wood as stacked, kg/m3 */
    public static void write(Night night, double stackedDensity, Writer out) {
        try (JsonGenerator json = new JsonFactory().createGenerator(ObjectWriteContext.empty(), out)) {
            json.writeStartObject();
            json.writeStringProperty("rig", night.rig());
            time(json, night, "from", night.from());
            time(json, night, "until", night.until());
            json.writeStringProperty("start", night.start());
            json.writeObjectPropertyStart("morning");
            time(json, night, "time", night.morning().time());
            number(json, "roomC", night.morning().room() - ZERO);
            number(json, "storeMeanC", night.morning().storeMean() - ZERO);
            number(json, "storeTopC", night.morning().storeTop() - ZERO);
            json.writeEndObject();
            json.writeObjectPropertyStart("lowestRoom");
            time(json, night, "time", night.lowestRoom().time());
            number(json, "roomC", night.lowestRoom().room() - ZERO);
            json.writeEndObject();
            number(json, "limitC", night.limit() - ZERO);
            number(json, "hoursAbove", night.hoursAbove());
            number(json, "hoursCarried", night.hoursCarried());
            number(json, "boilMarginK", night.boil().margin());
            time(json, night, "boilMarginTime", night.boil().time());
            json.writeStringProperty("boilMarginWhere", night.boil().where());
            number(json, "boilingMinutes", night.boilingMinutes());
            number(json, "steamKg", night.steam());
            json.writeObjectPropertyStart("wood");
            number(json, "kg", night.wood());
            number(json, "volume", night.wood() / stackedDensity / Wood.STERE);
            json.writeStringProperty("unit", "stere");
            json.writeNumberProperty("loads", night.loads());
            json.writeEndObject();
            number(json, "waterShare", night.waterShare());
            json.writeArrayPropertyStart("minutesToBoil");
            for (Night.ToBoil b : night.minutesToBoil()) {
                json.writeStartObject();
                json.writeStringProperty("pickup", b.pickup());
                number(json, "minutes", b.minutes());
                time(json, night, "time", b.time());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeObjectPropertyStart("heatKWh");
            number(json, "fuel", night.ledger().fuel() / KWH);
            for (Map.Entry<String, Double> e : night.ledger().accounts().entrySet()) {
                number(json, e.getKey(), e.getValue() / KWH);
            }
            number(json, "stored", night.ledger().stored() / KWH);
            number(json, "bed", night.ledger().bed() / KWH);
            json.writeEndObject();
            number(json, "ledgerResidual", night.ledger().relativeResidual());
            int pump = 0;
            int fan = 0;
            for (Night.Drive d : night.drives()) {
                if (d.name().equals("pump")) pump += d.starts();
                else fan += d.starts();
            }
            json.writeNumberProperty("pumpStarts", pump);
            json.writeNumberProperty("fanStarts", fan);
            json.writeNumberProperty("steps", night.counters().steps());
            json.writeNumberProperty("rhsEvaluations", night.counters().rates());
            number(json, "solveMillis", night.solveMillis());
            json.writeArrayPropertyStart("cautions");
            for (String caution : Cautions.of(night)) json.writeString(caution);
            json.writeEndArray();
            json.writeEndObject();
        }
    }

    private static void number(JsonGenerator json, String key, double value) {
        if (Double.isFinite(value)) json.writeNumberProperty(key, value);
        else json.writeNullProperty(key);
    }

    private static void time(JsonGenerator json, Night night, String key, double time) {
        LocalDateTime at = night.at(time);
        if (at == null) json.writeNullProperty(key);
        else json.writeStringProperty(key, at.toString());
    }
}
