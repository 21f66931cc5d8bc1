package stokewell.file;

/**
 * One thing wrong with a rig file.
 *
 * @param file  its name as the user knows it, or the setting given beside it
 * @param line  counted from 1; 0 where there is none
 * @param key   path of the entry
 * @param what  what is wrong, with the number as it was written
 * @param right what would be right; may have several lines
 */
public record Fault(String file, int line, String key, String what, String right) {

    @Override
    public String toString() {
        StringBuilder out = new StringBuilder(file);
        if (line > 0) out.append(':').append(line);
        if (!key.isEmpty()) out.append("  ").append(key);
        out.append("\n    ").append(what.replace("\n", "\n    "));
        if (!right.isEmpty()) out.append("\n    ").append(right.replace("\n", "\n    "));
        return out.append('\n').toString();
    }
}
