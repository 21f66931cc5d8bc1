package stokewell.file;

import java.util.Locale;
import stokewell.rig.Dimension;
import stokewell.rig.Entry;
import stokewell.rig.Layer;

/**
 * One value of a rig as it was read.
 *
 * @param key     path of the entry, elements of lists by their place: {@code emitters.0.airTubes.count}
 * @param entry   what the entry may hold
 * @param type    of the value
 * @param value   SI number, text, truth, constant or layer
 * @param written as the file has it; null where a default stands in
 */
public record RigValue(String key, Entry entry, Class<?> type, Object value, String written) {

    /** Digits that a value is told with: enough for a dimension of steel, too few to show the rounding of a unit. */
    private static final int DIGITS = 4;

    /** Whether the file leaves it out. */
    public boolean isDefault() {
        return written == null;
    }

    /** The key without the places in lists, as the table of keys has it: {@code emitters[].airTubes.count}. */
    public String general() {
        return key.replaceAll("\\.\\d+(?=\\.|$)", "[]");
    }

    /** A dimension, or one of text, yes-no, choice, layer, number, count. */
    public String kind() {
        return kind(type, entry);
    }

    static String kind(Class<?> type, Entry entry) {
        if (type == Layer.class) return "layer";
        if (type == String.class) return "text";
        if (type == boolean.class || type == Boolean.class) return "yes-no";
        if (type.isEnum()) return "choice";
        Dimension is = dimension(type, entry);
        return is == Dimension.NONE
                ? "number"
                : is.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Dimension dimension(Class<?> type, Entry entry) {
        boolean whole = type == int.class || type == Integer.class || type == long.class || type == Long.class;
        return whole && entry.is() == Dimension.NONE ? Dimension.COUNT : entry.is();
    }

    /** The number in SI; a layer's is its thickness; NaN where there is none. */
    public double si() {
        if (value instanceof Layer layer) return layer.thickness();
        return value instanceof Number number ? number.doubleValue() : Double.NaN;
    }

    /** As a person writes it in those units. */
    public String text(UnitSystem units) {
        if (value instanceof Layer layer) return LayerReader.write(layer, units);
        if (value instanceof Number number) {
            return Quantity.write(number.doubleValue(), dimension(type, entry), units, DIGITS);
        }
        if (value instanceof Boolean yes) return yes ? "yes" : "no";
        if (value instanceof Enum<?> constant) return Key.of(constant);
        return String.valueOf(value);
    }

    /** The unit that the text has; empty where there is none. */
    public String unit(UnitSystem units) {
        if (value instanceof Layer layer) return units.unit(Dimension.LENGTH, layer.thickness());
        return value instanceof Number ? units.unit(dimension(type, entry), si()) : "";
    }
}
