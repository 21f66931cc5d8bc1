package stokewell.file;

import stokewell.rig.Entry;

/**
 * A default that stood in for an entry left out.
 *
 * @param key  path of the entry
 * @param text the default as a person would write it
 * @param entry what belongs there
 */
public record DefaultUsed(String key, String text, Entry entry) {

    /** What the entry is. */
    public String says() {
        return entry.says();
    }

    /** The default in the units of a system. */
    public String in(UnitSystem units) {
        return Keys.spoken(text, entry, units);
    }
}
