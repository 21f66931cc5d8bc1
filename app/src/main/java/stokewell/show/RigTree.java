package stokewell.show;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stokewell.rig.Entries;
import stokewell.rig.Rig;
import tools.jackson.core.JsonGenerator;

/**
 * A rig for programs, with the keys of a rig file and all defaults filled in: numbers in SI, one of several kinds as
 * {@code {"round": {...}}}, what is absent as null.
 */
public final class RigTree {

    private RigTree() {}

    /** Writes the rig as a JSON object where the generator stands. */
    public static void write(Rig rig, JsonGenerator json) {
        record(rig, json);
    }

    private static void record(Record record, JsonGenerator json) {
        json.writeStartObject();
        for (RecordComponent component : Entries.of(record.getClass())) {
            json.writeName(component.getName());
            value(read(component, record), component.getType(), json);
        }
        json.writeEndObject();
    }

    private static Object read(RecordComponent component, Record record) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(component + " cannot be read", e);
        }
    }

    private static void value(Object value, Class<?> as, JsonGenerator json) {
        if (value == null || value instanceof Optional<?> o && o.isEmpty()) json.writeNull();
        else if (value instanceof Optional<?> o) value(o.get(), o.get().getClass(), json);
        else if (value instanceof String text) json.writeString(text);
        else if (value instanceof Boolean yes) json.writeBoolean(yes);
        else if (value instanceof Integer count) json.writeNumber(count);
        else if (value instanceof Double number) number(number, json);
        else if (value instanceof Enum<?> constant)
            json.writeString(constant.name().toLowerCase(Locale.ROOT).replace('_', ' '));
        else if (value instanceof List<?> list) list(list, json);
        else if (value instanceof Record record) kind(record, as, json);
        else throw new IllegalStateException("no JSON for " + value.getClass());
    }

    private static void list(List<?> list, JsonGenerator json) {
        json.writeStartArray();
        for (Object each : list) value(each, family(each.getClass()), json);
        json.writeEndArray();
    }

    /** The sealed family that a kind belongs to, or the type itself. */
    private static Class<?> family(Class<?> type) {
        for (Class<?> each : type.getInterfaces()) if (each.isSealed()) return each;
        return type;
    }

    private static void kind(Record record, Class<?> as, JsonGenerator json) {
        if (!as.isSealed()) {
            record(record, json);
            return;
        }
        String name = record.getClass().getSimpleName();
        json.writeStartObject();
        json.writeName(name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1));
        record(record, json);
        json.writeEndObject();
    }

    private static void number(double value, JsonGenerator json) {
        if (Double.isFinite(value)) json.writeNumber(value);
        else json.writeNull();
    }
}
