package stokewell.file;

import java.lang.reflect.Type;
import stokewell.rig.Entry;

/** What is being made: its type, its entry, its path in the file, and whether a default stands in for it. */
record Place(Type type, Entry entry, String path, boolean standIn) {

    Class<?> raw() {
        return Shape.raw(type);
    }

    String key() {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    Place as(Type other) {
        return new Place(other, entry, path, standIn);
    }

    Place inside(String step, Type other) {
        return new Place(other, entry, join(path, step), standIn);
    }

    /** What a person calls it. */
    String name() {
        if (path.isEmpty()) return Key.words(raw().getSimpleName());
        return Character.isDigit(key().charAt(0)) ? Key.words(raw().getSimpleName()) : Key.words(key());
    }

    /** Where a part of it stands. */
    String at(String step) {
        return join(path, step);
    }

    /** By {@code concat}, since the first {@code +} of a program costs its start some 20 ms. */
    private static String join(String path, String step) {
        return path.isEmpty() ? step : path.concat(".").concat(step);
    }
}
