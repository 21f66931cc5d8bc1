package stokewell.fit;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.function.UnaryOperator;
import stokewell.rig.RigFault;

/** A record with one component changed; the record checks itself anew. */
final class Altered {

    private Altered() {}

    /**
     * @param component its name
     * @throws RigFault where the record refuses the new value
     */
    @SuppressWarnings("unchecked")
    static <R extends Record, V> R of(R record, String component, UnaryOperator<V> change) {
        RecordComponent[] parts = record.getClass().getRecordComponents();
        Class<?>[] types = new Class<?>[parts.length];
        Object[] values = new Object[parts.length];
        boolean found = false;
        try {
            for (int i = 0; i < parts.length; i++) {
                types[i] = parts[i].getType();
                values[i] = parts[i].getAccessor().invoke(record);
                if (parts[i].getName().equals(component)) {
                    values[i] = change.apply((V) values[i]);
                    found = true;
                }
            }
            if (!found) throw new IllegalArgumentException(record.getClass() + " has no " + component);
            Constructor<?> constructor = record.getClass().getDeclaredConstructor(types);
            return (R) constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof RuntimeException fault) throw fault;
            throw new IllegalStateException(e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The same with a number multiplied, held inside limits. */
    static <R extends Record> R times(R record, String component, double factor, double low, double high) {
        return of(record, component, (Double v) -> Math.max(low, Math.min(high, v * factor)));
    }
}
