package stokewell.file;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stokewell.rig.Dimension;
import stokewell.rig.Entries;
import stokewell.rig.Entry;

/** What the record types tell about how a value may be written; asked by the binder, the edits, the schema, the tables. */
final class Shape {

    private Shape() {}

    static RecordComponent[] components(Class<?> type) {
        return Entries.of(type.asSubclass(Record.class));
    }

    static Entry entry(RecordComponent component) {
        Entry entry = component.getAnnotation(Entry.class);
        if (entry == null) throw new IllegalStateException(component + " carries no entry");
        return entry;
    }

    static boolean required(RecordComponent component) {
        return entry(component).orElse().equals(Entry.REQUIRED);
    }

    static Class<?> raw(Type type) {
        return type instanceof ParameterizedType generic ? (Class<?>) generic.getRawType() : (Class<?>) type;
    }

    static boolean list(Type type) {
        return raw(type) == List.class;
    }

    static boolean optional(Type type) {
        return raw(type) == Optional.class;
    }

    /** What a list or an optional holds. */
    static Type held(Type type) {
        return ((ParameterizedType) type).getActualTypeArguments()[0];
    }

    /** Whether it is one of several kinds of record. */
    static boolean kinds(Class<?> type) {
        return type.isSealed() && type.isInterface();
    }

    /** The kind of that name, or {@code null}. */
    static Class<?> kind(Class<?> family, String name) {
        String plain = Key.plain(name);
        for (Class<?> each : family.getPermittedSubclasses()) {
            if (Key.plain(each.getSimpleName()).equals(plain)) return each;
        }
        return null;
    }

    static List<String> kindNames(Class<?> family) {
        List<String> names = new ArrayList<>();
        for (Class<?> each : family.getPermittedSubclasses()) names.add(Key.of(each));
        return names;
    }

    static List<String> keys(Class<?> type) {
        List<String> keys = new ArrayList<>();
        for (RecordComponent component : components(type)) keys.add(component.getName());
        return keys;
    }

    static int indexOf(Class<?> type, String key) {
        RecordComponent[] components = components(type);
        for (int i = 0; i < components.length; i++) if (components[i].getName().equals(key)) return i;
        String plain = Key.plain(key);
        for (int i = 0; i < components.length; i++)
            if (Key.plain(components[i].getName()).equals(plain)) return i;
        return -1;
    }

    /** The one entry that must be given, which may then be written alone in the record's place; or {@code null}. */
    static RecordComponent shortForm(Class<?> type) {
        RecordComponent only = null;
        for (RecordComponent component : components(type)) {
            if (!required(component)) continue;
            if (only != null) return null;
            only = component;
        }
        return only;
    }

    static boolean needsNothing(Class<?> type) {
        for (RecordComponent component : components(type)) if (required(component)) return false;
        return true;
    }

    /** Two times of day and nothing else: may be written {@code 16:00-22:00}. */
    static boolean clockSpan(Class<?> type) {
        if (!type.isRecord()) return false;
        RecordComponent[] components = components(type);
        return components.length == 2
                && entry(components[0]).is() == Dimension.CLOCK
                && entry(components[1]).is() == Dimension.CLOCK;
    }
}
