package stokewell.matter;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * What was reckoned lately, by what it was reckoned from: a rig that differs from the last one in a single size is not
 * reckoned from nothing. For results that depend on their key alone and that nobody changes.
 */
public final class Recent<K, V> {

    private final Map<K, V> kept;

    /** @param most results that are kept; the one not asked for longest goes first */
    public Recent(int most) {
        kept = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > most;
            }
        };
    }

    /** The result for a key: reckoned where it is not known. */
    public V of(K key, Function<K, V> reckon) {
        synchronized (kept) {
            V known = kept.get(key);
            if (known != null) return known;
        }
        V fresh = reckon.apply(key);
        synchronized (kept) {
            kept.put(key, fresh);
        }
        return fresh;
    }
}
