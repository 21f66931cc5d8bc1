package stokewell.show;

import java.io.Writer;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stokewell.check.Check;
import stokewell.check.Finding;
import stokewell.check.Level;
import stokewell.run.Ledger;
import stokewell.run.Night;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;

/** Keys and values for programs: no number is null, a time is local standard time in ISO 8601. */
final class Keyed implements AutoCloseable {

    private static final double JOULES_PER_KWH = 3.6e6;

    private final JsonGenerator json;

    /** Leaves the writer open. */
    Keyed(Writer out) {
        json = JsonFactory.builder()
                .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
                .build()
                .createGenerator(ObjectWriteContext.empty(), out);
        json.writeStartObject();
    }

    Keyed text(String key, String value) {
        if (value == null) json.writeNullProperty(key);
        else json.writeStringProperty(key, value);
        return this;
    }

    /** To so many decimals. */
    Keyed number(String key, double value, int decimals) {
        if (!Double.isFinite(value)) json.writeNullProperty(key);
        else json.writeName(key).writeNumber(Numbers.bare(value, decimals));
        return this;
    }

    /** As it stands. */
    Keyed exact(String key, double value) {
        if (!Double.isFinite(value)) json.writeNullProperty(key);
        else json.writeNumberProperty(key, value);
        return this;
    }

    Keyed count(String key, long value) {
        json.writeNumberProperty(key, value);
        return this;
    }

    Keyed celsius(String key, double kelvin) {
        return number(key, kelvin - 273.15, 3);
    }

    Keyed kwh(String key, double joules) {
        return number(key, joules / JOULES_PER_KWH, 4);
    }

    Keyed time(String key, LocalDateTime at) {
        return text(key, Clock.iso(at));
    }

    Keyed open(String key) {
        json.writeObjectPropertyStart(key);
        return this;
    }

    Keyed list(String key) {
        json.writeArrayPropertyStart(key);
        return this;
    }

    Keyed item() {
        json.writeStartObject();
        return this;
    }

    Keyed shut() {
        json.writeEndObject();
        return this;
    }

    Keyed done() {
        json.writeEndArray();
        return this;
    }

    Keyed nothing(String key) {
        json.writeNullProperty(key);
        return this;
    }

    Keyed texts(String key, List<String> values) {
        list(key);
        for (String value : values) json.writeString(value);
        return done();
    }

    Keyed drives(List<Night.Drive> drives) {
        list("drives");
        for (Night.Drive d : drives) {
            item().text("name", d.name())
                    .count("starts", d.starts())
                    .number("hours", d.hours(), 3)
                    .shut();
        }
        return done();
    }

    /** Heat out of the rig by account, in below zero; with the fuel and what is stored it adds up: fuel = accounts + stored. */
    Keyed heat(Ledger ledger) {
        open("heatKWh");
        for (Map.Entry<String, Double> e : ledger.accounts().entrySet()) kwh(e.getKey(), e.getValue());
        kwh("fuel", ledger.fuel());
        kwh("stored", ledger.stored() + ledger.bed());
        return shut().exact("ledgerResidual", ledger.relativeResidual());
    }

    /** What was found on the rig, worst first; null where nobody has looked. */
    Keyed findings(Check check) {
        if (check == null) return nothing("stops").nothing("findings");
        count("stops", check.at(Level.STOP).size());
        list("findings");
        for (Finding f : check.findings()) {
            item().text("id", f.id()).text("level", f.level().name().toLowerCase(Locale.ROOT));
            text("what", f.what())
                    .text("why", f.why())
                    .text("remedy", f.remedy())
                    .text("basis", f.basis());
            shut();
        }
        return done();
    }

    @Override
    public void close() {
        json.writeEndObject();
        json.close();
    }
}
