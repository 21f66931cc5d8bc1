package stokewell.web;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import stokewell.run.Standing;

/** Where the last nights settled, for each hand and for each rig: what the next night of a drag begins from. */
final class Standings {

    private static final int MOST = 128;

    /** Whose, of which rig, in which weather from when on. */
    private record Of(String who, Path rig, String weather, Path file, String from) {}

    private record Kept(Standing standing, long turn) {}

    private final Map<Of, Kept> kept = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Of, Kept> eldest) {
            return size() > MOST;
        }
    };
    private long turn;

    private static Of of(String who, Nights.Ready ready) {
        Asking.Wish wish = ready.wish();
        return new Of(who, ready.beside(), wish.weather(), wish.file(), wish.from());
    }

    /** The newer of the hand's own last one with this rig and of the last at rest; null for none. */
    synchronized Standing near(String who, Nights.Ready ready) {
        Kept own = kept.get(of(who, ready));
        Kept rest = kept.get(of("", ready));
        if (own == null || rest == null) return own != null ? own.standing : rest != null ? rest.standing : null;
        return own.turn > rest.turn ? own.standing : rest.standing;
    }

    /** @param who whose; empty for a night at rest, which is anyone's */
    synchronized void keep(String who, Nights.Ready ready, Standing standing) {
        Kept one = new Kept(standing, ++turn);
        kept.put(of(who, ready), one);
        kept.putIfAbsent(of("", ready), one);
    }
}
