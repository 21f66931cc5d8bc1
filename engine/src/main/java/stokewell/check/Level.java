package stokewell.check;

/** How bad it is, worst first. */
public enum Level {
    /** Do not light a fire on this rig. */
    STOP,
    /** Mend it before it is relied on. */
    MEND,
    /** Mind it: an open question, or something to watch. */
    MIND,
    /** Looked at and in order. */
    FINE;

    /** Whether this is at least as bad as another. */
    public boolean asBadAs(Level other) {
        return compareTo(other) <= 0;
    }
}
