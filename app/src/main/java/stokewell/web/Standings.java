package stokewell.web;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import stokewell.run.Standing;

/** Where the last nights settled, for each hand and for each rig: what the next night of a drag begins from. */
final class Standings {

    private static final int MOST = 256;

    private final Map<String, Standing> kept = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Standing> eldest) {
            return size() > MOST;
        }
    };

    /** The hand's own last one with this rig, or anyone's; null for none. */
    synchronized Standing near(String who, Path rig) {
        Standing own = kept.get(who + "\n" + rig);
        return own != null ? own : kept.get("\n" + rig);
    }

    synchronized void keep(String who, Path rig, Standing standing) {
        kept.put(who + "\n" + rig, standing);
        kept.put("\n" + rig, standing);
    }
}
