package stokewell.file;

import java.io.StringWriter;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stokewell.rig.Dimension;
import stokewell.rig.Entry;
import stokewell.rig.Rig;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultPrettyPrinter;

/**
 * The JSON Schema (draft 2020-12) of rig files, made from the record types: editors complete and check by it. It asks no
 * more than the reader does, and less where only the reader can tell, such as whether a number is within its range.
 */
public final class RigSchema {

    private final Map<Class<?>, LeafReader<?>> leaves;
    private final Map<String, Object> definitions = new LinkedHashMap<>();

    private RigSchema(Map<Class<?>, LeafReader<?>> leaves) {
        this.leaves = leaves;
    }

    /** The schema of a rig file. */
    public static String json() {
        return json(Rig.class, "Stokewell rig", RigFile.LEAVES);
    }

    /** The schema of any record whose components carry entries. */
    public static String json(Class<? extends Record> root, String title, Map<Class<?>, LeafReader<?>> leaves) {
        RigSchema schema = new RigSchema(leaves);
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        all.put("title", title);
        all.putAll(schema.object(root));
        all.put("$defs", schema.definitions);
        StringWriter out = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(new Pretty(), out)) {
            write(json, all);
        }
        return out.append('\n').toString();
    }

    private static final class Pretty extends ObjectWriteContext.Base {
        @Override
        public PrettyPrinter getPrettyPrinter() {
            return new DefaultPrettyPrinter();
        }

        @Override
        public boolean hasPrettyPrinter() {
            return true;
        }
    }

    private static void write(JsonGenerator json, Object value) {
        if (value instanceof Map<?, ?> map) {
            json.writeStartObject();
            map.forEach((key, each) -> {
                json.writeName((String) key);
                write(json, each);
            });
            json.writeEndObject();
        } else if (value instanceof List<?> list) {
            json.writeStartArray();
            list.forEach(each -> write(json, each));
            json.writeEndArray();
        } else if (value instanceof Boolean truth) {
            json.writeBoolean(truth);
        } else if (value instanceof Double number) {
            json.writeNumber(number);
        } else {
            json.writeString((String) value);
        }
    }

    private Map<String, Object> object(Class<?> type) {
        Map<String, Object> properties = new LinkedHashMap<>();
        Map<String, Object> spellings = new LinkedHashMap<>();
        List<Object> required = new ArrayList<>();
        List<Object> either = new ArrayList<>();
        for (RecordComponent component : Shape.components(type)) {
            String key = component.getName();
            Map<String, Object> value = described(component);
            properties.put(key, value);
            String words = Key.words(key);
            if (words.indexOf(' ') > 0) spellings.put("^" + words.replace(" ", "[ _-]") + "$", value);
            if (!Shape.required(component)) continue;
            if (words.indexOf(' ') < 0) {
                required.add(key);
            } else {
                List<Object> any = new ArrayList<>();
                for (String each : List.of(key, words, words.replace(' ', '-'), words.replace(' ', '_'))) {
                    any.add(Map.of("required", List.of(each)));
                }
                either.add(Map.of("anyOf", any));
            }
        }
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("type", "object");
        object.put("properties", properties);
        if (!spellings.isEmpty()) object.put("patternProperties", spellings);
        if (!required.isEmpty()) object.put("required", required);
        if (!either.isEmpty()) object.put("allOf", either);
        object.put("additionalProperties", false);
        return object;
    }

    private Map<String, Object> described(RecordComponent component) {
        Entry entry = Shape.entry(component);
        Map<String, Object> schema = new LinkedHashMap<>(value(component.getGenericType(), entry));
        if (entry.orElse().equals(Entry.ABSENT) && component.getType() != String.class) {
            schema = new LinkedHashMap<>(Map.of("anyOf", List.of(schema, Map.of("const", "none"))));
        }
        String range = Keys.range(entry, UnitSystem.SI);
        schema.put("description", entry.says() + (range.isEmpty() ? "" : " " + range + "."));
        if (!entry.orElse().startsWith("(") && !entry.orElse().startsWith("{")) schema.put("default", entry.orElse());
        return schema;
    }

    private Map<String, Object> value(Type type, Entry entry) {
        Class<?> raw = Shape.raw(type);
        if (Shape.optional(type)) return value(Shape.held(type), entry);
        if (Shape.list(type)) return list(Shape.held(type), entry);
        if (raw.isRecord()) return reference(raw);
        if (Shape.kinds(raw)) return reference(raw);
        if (raw == String.class) return Map.of("type", List.of("string", "number"));
        if (raw == boolean.class || raw == Boolean.class) {
            return Map.of("anyOf", List.of(Map.of("type", "boolean"), words(List.of("yes", "no", "on", "off"))));
        }
        if (raw.isEnum()) {
            List<String> names = new ArrayList<>();
            for (Object each : raw.getEnumConstants()) names.add(Key.of((Enum<?>) each));
            return words(names);
        }
        boolean whole = raw != double.class && raw != Double.class;
        return quantity(whole && entry.is() == Dimension.NONE ? Dimension.COUNT : entry.is(), entry);
    }

    private static Map<String, Object> words(List<String> words) {
        return Map.of("enum", words);
    }

    private Map<String, Object> list(Type held, Entry entry) {
        Map<String, Object> array = new LinkedHashMap<>();
        array.put("type", "array");
        array.put("items", value(held, entry));
        Class<?> raw = Shape.raw(held);
        if (!leaves.containsKey(raw) && !raw.isEnum()) return array;
        return Map.of("anyOf", List.of(array, Map.of("type", "string")));
    }

    private Map<String, Object> quantity(Dimension is, Entry entry) {
        if (is == Dimension.NONE || is == Dimension.COUNT || is == Dimension.SHARE) {
            Map<String, Object> number = new LinkedHashMap<>();
            number.put("type", is == Dimension.COUNT ? "integer" : "number");
            if (Double.isFinite(entry.low())) number.put("minimum", entry.low());
            if (Double.isFinite(entry.high())) number.put("maximum", entry.high());
            return Map.of("anyOf", List.of(number, dimension(is)));
        }
        if (entry.pipe()) {
            return Map.of("anyOf", List.of(dimension(is), Map.of("type", "string", "pattern", QuantityPattern.PIPE)));
        }
        return dimension(is);
    }

    private Map<String, Object> dimension(Dimension is) {
        String name = Quantity.noun(is);
        if (!definitions.containsKey(name)) {
            Map<String, Object> schema = new LinkedHashMap<>();
            schema.put("type", "string");
            schema.put("pattern", QuantityPattern.of(is));
            schema.put("examples", List.of(Quantity.like(is).split(", | or ")));
            definitions.put(name, schema);
        }
        return refer(name);
    }

    private static Map<String, Object> refer(String name) {
        return Map.of("$ref", "#/$defs/" + name.replace(" ", "%20"));
    }

    private Map<String, Object> reference(Class<?> type) {
        Class<?> owner = type.getEnclosingClass();
        String name = (owner == null ? "" : owner.getSimpleName() + ".") + type.getSimpleName();
        if (!definitions.containsKey(name)) {
            definitions.put(name, Map.of());
            List<Object> forms = Shape.kinds(type) ? kinds(type) : forms(type);
            definitions.put(name, forms.size() == 1 ? forms.get(0) : new LinkedHashMap<>(Map.of("anyOf", forms)));
        }
        return refer(name);
    }

    private List<Object> forms(Class<?> type) {
        List<Object> forms = new ArrayList<>();
        forms.add(object(type));
        LeafReader<?> leaf = leaves.get(type);
        if (leaf != null) {
            List<String> examples = List.of(leaf.example().split(", | or "));
            forms.add(Map.of("type", "string", "minLength", 1.0, "examples", examples));
        }
        if (Shape.clockSpan(type)) {
            forms.add(Map.of("type", "string", "pattern", "^.+(?:-|–| to ).+$", "examples", List.of("16:00-22:00")));
        }
        RecordComponent alone = Shape.shortForm(type);
        if (alone != null) forms.add(value(alone.getGenericType(), Shape.entry(alone)));
        if (Shape.needsNothing(type)) forms.add(Map.of("type", "null"));
        return forms;
    }

    private List<Object> kinds(Class<?> family) {
        List<Object> forms = new ArrayList<>();
        List<String> bare = new ArrayList<>();
        for (Class<?> kind : family.getPermittedSubclasses()) {
            String key = Key.of(kind);
            Map<String, Object> form = new LinkedHashMap<>();
            form.put("type", "object");
            form.put("properties", Map.of(key, reference(kind)));
            String words = Key.words(key);
            if (words.indexOf(' ') > 0) {
                form.put("patternProperties", Map.of("^" + words.replace(" ", "[ _-]") + "$", reference(kind)));
            }
            form.put("minProperties", 1.0);
            form.put("maxProperties", 1.0);
            form.put("additionalProperties", false);
            forms.add(form);
            if (Shape.needsNothing(kind)) {
                bare.add(key);
                if (!words.equals(key)) bare.add(words);
            }
        }
        if (!bare.isEmpty()) forms.add(words(bare));
        return forms;
    }
}
