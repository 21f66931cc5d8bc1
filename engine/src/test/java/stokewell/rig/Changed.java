package stokewell.rig;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;

/** Copies of records that differ in some components. */
public final class Changed {

    private Changed() {}

    /** A record with components changed: name, value, name, value. */
    public static <R extends Record> R with(R record, Object... namesAndValues) {
        try {
            RecordComponent[] parts = record.getClass().getRecordComponents();
            Class<?>[] types = new Class<?>[parts.length];
            Object[] values = new Object[parts.length];
            int found = 0;
            for (int i = 0; i < parts.length; i++) {
                types[i] = parts[i].getType();
                parts[i].getAccessor().setAccessible(true);
                values[i] = parts[i].getAccessor().invoke(record);
                for (int k = 0; k < namesAndValues.length; k += 2) {
                    if (!parts[i].getName().equals(namesAndValues[k])) continue;
                    values[i] = namesAndValues[k + 1];
                    found++;
                }
            }
            if (2 * found != namesAndValues.length) {
                throw new IllegalArgumentException(
                        java.util.Arrays.toString(namesAndValues) + " do not all stand in " + record.getClass());
            }
            @SuppressWarnings("unchecked")
            Constructor<R> constructor = (Constructor<R>) record.getClass().getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
