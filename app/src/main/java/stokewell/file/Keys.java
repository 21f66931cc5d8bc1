package stokewell.file;

import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stokewell.rig.Dimension;
import stokewell.rig.Entry;
import stokewell.rig.Rig;

/** The table of all keys of a rig file, made from the record types. */
public final class Keys {

    private static final Pattern LAYER = Pattern.compile("(\\d+ mm)( \\D.*)");

    private final List<Row> rows = new ArrayList<>();
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
        keys.record(root, "");
        StringBuilder out =
                new StringBuilder("| key | what | written | range | if left out |\n|---|---|---|---|---|\n");
        for (Row row : keys.rows) out.append(row.line());
        return out.toString();
    }

    /** All keys of a rig file in the order of the table, for programs. */
    public static List<Row> rows(UnitSystem system) {
        Keys keys = new Keys(system, RigFile.LEAVES);
        keys.record(Rig.class, "");
        return List.copyOf(keys.rows);
    }

    /**
     * One key.
     *
     * @param key     its path; an element of a list is {@code []}
     * @param kind    as in {@link RigValue#kind}; of what has entries of its own: {@code part}, or {@code kinds}
     * @param says    what it is
     * @param written how it is written, in words
     * @param low     least value, SI; negative infinity for none
     * @param high    greatest value, SI
     * @param range   both in words
     * @param orElse  the default as one would write it, empty for none, {@code {}} for the defaults of all that is in it
     * @param needed  must be given
     * @param choices the words or kinds to choose from; empty where anything goes
     * @param list    whether there may be several
     */
    public record Row(
            String key,
            String kind,
            String says,
            String written,
            double low,
            double high,
            String range,
            String orElse,
            boolean needed,
            List<String> choices,
            boolean list) {

        private String line() {
            String left = needed
                    ? "must be given"
                    : orElse.isEmpty() ? "none" : orElse.equals("{}") ? "as below" : "`" + orElse + "`";
            return "| `" + key + "` | " + cell(says) + " | " + cell(written) + " | " + range + " | " + cell(left)
                    + " |\n";
        }
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
        boolean needed = orElse.equals(Entry.REQUIRED);
        rows.add(new Row(
                key,
                kind(type, entry),
                entry.says(),
                written(type, entry),
                entry.low(),
                entry.high(),
                range(entry, system),
                needed || orElse.equals(Entry.ABSENT) ? "" : spoken(orElse, entry, system),
                needed,
                choices(type),
                Shape.list(type)));
    }

    private String kind(Type type, Entry entry) {
        if (Shape.list(type) || Shape.optional(type)) return kind(Shape.held(type), entry);
        Class<?> raw = Shape.raw(type);
        if (Shape.kinds(raw)) return "kinds";
        if (raw.isRecord() && !leaves.containsKey(raw)) return "part";
        return RigValue.kind(raw, entry);
    }

    private static List<String> choices(Type type) {
        if (Shape.list(type) || Shape.optional(type)) return choices(Shape.held(type));
        Class<?> raw = Shape.raw(type);
        if (Shape.kinds(raw)) return Shape.kindNames(raw);
        List<String> words = new ArrayList<>();
        if (raw.isEnum()) for (Object each : raw.getEnumConstants()) words.add(Key.of((Enum<?>) each));
        return words;
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

    /** A default as one would write it in these units: those that are written in SI are turned, all else stands as it is. */
    static String spoken(String text, Entry entry, UnitSystem system) {
        if (system == UnitSystem.SI || text.startsWith("{") || text.startsWith("[")) return text;
        Matcher layer = LAYER.matcher(text);
        if (layer.matches()) {
            return Quantity.write(Quantity.parse(layer.group(1), Dimension.LENGTH), Dimension.LENGTH, system, 2)
                    + layer.group(2);
        }
        if (text.startsWith("(")
                || entry.is() == Dimension.NONE
                || entry.is() == Dimension.COUNT
                || entry.is() == Dimension.SHARE) {
            return text;
        }
        return Quantity.write(Quantity.parse(text, entry.is()), entry.is(), system, 3);
    }

    private static String cell(String text) {
        return text.replace("|", "\\|").replace("\n", " ").strip();
    }
}
