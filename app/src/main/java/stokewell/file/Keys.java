package stokewell.file;

import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stokewell.rig.Dimension;
import stokewell.rig.Entry;

/** The table of all keys of a rig file, made from the record types. */
public final class Keys {

    private final StringBuilder out = new StringBuilder();
    private final UnitSystem system;
    private final Map<Class<?>, LeafReader<?>> leaves;
    private final List<Class<?>> above = new ArrayList<>();

    private Keys(UnitSystem system, Map<Class<?>, LeafReader<?>> leaves) {
        this.system = system;
        this.leaves = leaves;
    }

    /** The table in Markdown. */
    public static String describe(Class<? extends Record> root) {
        return describe(root, UnitSystem.SI, RigFile.LEAVES);
    }

    /** The table in Markdown, its ranges in the units of a system. */
    public static String describe(
            Class<? extends Record> root, UnitSystem system, Map<Class<?>, LeafReader<?>> leaves) {
        Keys keys = new Keys(system, leaves);
        keys.out.append("| key | what | written | range | if left out |\n|---|---|---|---|---|\n");
        keys.record(root, "");
        return keys.out.toString();
    }

    private void record(Class<?> type, String path) {
        if (above.contains(type)) return;
        above.add(type);
        for (RecordComponent component : Shape.components(type)) {
            String key = path + component.getName();
            Entry entry = Shape.entry(component);
            row(key, component.getGenericType(), entry);
            below(component.getGenericType(), key);
        }
        above.remove(above.size() - 1);
    }

    private void below(Type type, String key) {
        Class<?> raw = Shape.raw(type);
        if (Shape.list(type)) below(Shape.held(type), key + "[]");
        else if (Shape.optional(type)) below(Shape.held(type), key);
        else if (Shape.kinds(raw)) {
            for (Class<?> kind : raw.getPermittedSubclasses()) record(kind, key + "." + Key.of(kind) + ".");
        } else if (raw.isRecord() && !leaves.containsKey(raw)) record(raw, key + ".");
    }

    private void row(String key, Type type, Entry entry) {
        String orElse = entry.orElse();
        String left = orElse.equals(Entry.REQUIRED)
                ? "must be given"
                : orElse.equals(Entry.ABSENT) || orElse.isEmpty()
                        ? "none"
                        : orElse.equals("{}") ? "as below" : "`" + orElse + "`";
        out.append("| `").append(key).append("` | ").append(cell(entry.says())).append(" | ");
        out.append(cell(written(type, entry)))
                .append(" | ")
                .append(range(entry, system))
                .append(" | ");
        out.append(cell(left)).append(" |\n");
    }

    private String written(Type type, Entry entry) {
        Class<?> raw = Shape.raw(type);
        if (Shape.list(type)) return "list of " + written(Shape.held(type), entry);
        if (Shape.optional(type)) return written(Shape.held(type), entry);
        if (leaves.containsKey(raw)) return leaves.get(raw).example();
        if (raw == String.class) return "text";
        if (raw == boolean.class || raw == Boolean.class) return "yes or no";
        if (raw.isEnum()) {
            List<String> words = new ArrayList<>();
            for (Object each : raw.getEnumConstants()) words.add(Key.of((Enum<?>) each));
            return String.join(", ", words);
        }
        if (Shape.kinds(raw)) return String.join(" or ", Shape.kindNames(raw));
        if (Shape.clockSpan(raw)) return "16:00-22:00";
        if (raw.isRecord()) return Key.words(raw.getSimpleName());
        if (raw == int.class && entry.is() == Dimension.NONE) return "whole number";
        return Quantity.noun(entry.is());
    }

    /** From what to what, in words; empty where anything goes. */
    static String range(Entry entry, UnitSystem system) {
        boolean low = entry.low() != Double.NEGATIVE_INFINITY;
        boolean high = entry.high() != Double.POSITIVE_INFINITY;
        String from = low ? Quantity.write(entry.low(), entry.is(), system, 3) : "";
        String to = high ? Quantity.write(entry.high(), entry.is(), system, 3) : "";
        if (low && high) return from + " to " + to;
        return low ? "at least " + from : high ? "at most " + to : "";
    }

    private static String cell(String text) {
        return text.replace("|", "\\|").replace("\n", " ").strip();
    }
}
