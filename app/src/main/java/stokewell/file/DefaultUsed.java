package stokewell.file;

/**
 * A default that stood in for an entry left out.
 *
 * @param key  path of the entry
 * @param text the default as a person would write it
 * @param says what the entry is
 */
public record DefaultUsed(String key, String text, String says) {}
