package stokewell.web;

import java.util.LinkedHashMap;
import java.util.Map;
import stokewell.check.Check;

/**
 * The last checks with all drills run. Some stops show only in a drill: once found, every later view of the same rig says so.
 */
final class Checks {

    private static final int MOST = 64;

    private final Map<Nights.Ready, Check> kept = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Nights.Ready, Check> eldest) {
            return size() > MOST;
        }
    };

    /** Of that rig in that weather; null where its drills were not run. */
    synchronized Check of(Nights.Ready ready) {
        return kept.get(ready.anyUnits());
    }

    synchronized void keep(Nights.Ready ready, Check check) {
        kept.put(ready.anyUnits(), check);
    }
}
