package stokewell.cli;

import java.io.StringWriter;
import java.util.List;
import stokewell.file.ReadingsSeries;
import stokewell.shop.Doubts;
import stokewell.shop.Import;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** What imports did, for programs. */
final class ReadingsVerbJson {

    private ReadingsVerbJson() {}

    static String of(List<Import> imports) {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(ObjectWriteContext.empty(), out)) {
            json.writeStartArray();
            for (Import done : imports) {
                json.writeStartObject();
                json.writeStringProperty("file", done.file().name());
                json.writeStringProperty("zone", done.file().zone().getId());
                json.writeBooleanProperty("changed", done.changed());
                json.writeArrayPropertyStart("told");
                for (String told : done.file().told()) json.writeString(told);
                json.writeEndArray();
                json.writeArrayPropertyStart("sensors");
                for (Import.Line line : done.lines()) line(json, line);
                json.writeEndArray();
                json.writeEndObject();
            }
            json.writeEndArray();
        }
        return out.toString();
    }

    private static void line(JsonGenerator json, Import.Line line) {
        ReadingsSeries s = line.series();
        ReadingsSeries.Tale t = s.tale();
        Doubts d = line.doubts();
        int n = s.size();
        json.writeStartObject();
        json.writeStringProperty("sensor", s.name());
        json.writeStringProperty("kind", s.unit().kind().word());
        json.writeStringProperty("unit", s.unit().symbol());
        json.writeNumberProperty("readings", n);
        json.writeNumberProperty("new", line.taken().added());
        json.writeNumberProperty("known", line.taken().known());
        json.writeNumberProperty("differ", line.taken().differed());
        json.writeNumberProperty("replaced", line.taken().replaced());
        if (n > 0) {
            json.writeStringProperty("first", ShopChoice.utc(s.times()[0]));
            json.writeStringProperty("last", ShopChoice.utc(s.times()[n - 1]));
        }
        json.writeNumberProperty("stepSeconds", d.step());
        json.writeBooleanProperty("steady", d.steady());
        json.writeNumberProperty("missing", t.missing());
        json.writeNumberProperty("twice", t.twice());
        json.writeNumberProperty("differingInFile", t.differing());
        json.writeNumberProperty("impossible", t.impossible());
        json.writeNumberProperty("clockUnset", t.unset());
        json.writeNumberProperty("jumpsBack", t.jumps().size());
        json.writeNumberProperty("gaps", d.gaps().size());
        json.writeNumberProperty("spikes", d.spikes().size());
        json.writeNumberProperty("stuckReadings", Doubts.count(d.stuck()));
        json.writeEndObject();
    }
}
