package stokewell.cli;

import java.io.StringWriter;
import java.util.Locale;
import stokewell.check.Check;
import stokewell.check.Finding;
import stokewell.file.UnitSystem;
import stokewell.rig.Rig;
import stokewell.show.Spoken;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** The findings on a rig for programs. */
final class CheckVerbJson {

    private CheckVerbJson() {}

    static String of(Rig rig, Check check) {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(ObjectWriteContext.empty(), out)) {
            json.writeStartObject();
            json.writeStringProperty("rig", rig.name());
            json.writeStringProperty("worst", check.worst().name().toLowerCase(Locale.ROOT));
            json.writeBooleanProperty("stop", check.stops());
            json.writeArrayPropertyStart("findings");
            for (Finding f : Spoken.in(check, UnitSystem.SI).findings()) {
                json.writeStartObject();
                json.writeStringProperty("id", f.id());
                json.writeStringProperty("level", f.level().name().toLowerCase(Locale.ROOT));
                json.writeStringProperty("what", f.what());
                json.writeStringProperty("why", f.why());
                json.writeStringProperty("remedy", f.remedy());
                json.writeStringProperty("basis", f.basis());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        return out.toString();
    }
}
