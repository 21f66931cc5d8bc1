package stokewell.web;

import java.util.LinkedHashMap;
import java.util.Map;
import stokewell.check.Check;
import stokewell.weather.Weather;

/**
 * The last checks with all drills run. Some stops show only in a drill: once found, every later view of the same rig says so.
 */
final class Checks {

    private static final int MOST = 64;

    /** @param weather that the drills were run in: a file that has changed is other weather */
    private record Kept(Check check, Weather weather) {}

    private final Map<Nights.Ready, Kept> kept = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Nights.Ready, Kept> eldest) {
            return size() > MOST;
        }
    };

    /** Of that rig in that weather; null where its drills were not run. */
    synchronized Check of(Nights.Ready ready, Weather weather) {
        Kept found = kept.get(ready.anyUnits());
        return found != null && found.weather() == weather ? found.check() : null;
    }

    synchronized void keep(Nights.Ready ready, Check check, Weather weather) {
        kept.put(ready.anyUnits(), new Kept(check, weather));
    }
}
