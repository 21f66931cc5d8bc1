package stokewell.rig;

import java.lang.reflect.RecordComponent;

/** Reads the {@link Entry} of each record once and checks values against it. */
public final class Entries {

    private static final ClassValue<RecordComponent[]> COMPONENTS = new ClassValue<>() {
        @Override
        protected RecordComponent[] computeValue(Class<?> type) {
            return type.getRecordComponents();
        }
    };

    private Entries() {}

    /** The components of a record type in order; each carries an {@link Entry}. */
    public static RecordComponent[] of(Class<? extends Record> type) {
        return COMPONENTS.get(type).clone();
    }

    /**
     * Checks the numbers of a record against their entries, in the order of its components; other kinds of component are
     * passed over. An absent number ({@code NaN}) passes only where the entry may be absent.
     *
     * @throws RigFault at the first number out of its range
     */
    static void check(Class<? extends Record> type, String part, Object... values) {
        RecordComponent[] components = COMPONENTS.get(type);
        for (int i = 0; i < values.length; i++) {
            Entry entry = components[i].getAnnotation(Entry.class);
            if (values[i] == null && entry.orElse().equals(Entry.REQUIRED)) {
                throw new RigFault(part, components[i].getName(), "is missing", entry.says());
            }
            if (!(values[i] instanceof Number number)) continue;
            double value = number.doubleValue();
            if (Double.isNaN(value) && entry.orElse().equals(Entry.ABSENT)) continue;
            if (!(value >= entry.low() && value <= entry.high())) {
                throw new RigFault(part, components[i].getName(), value, entry.is(), entry.low(), entry.high());
            }
        }
    }
}
