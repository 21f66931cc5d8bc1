package stokewell.file;

/** When a text needs quotes in YAML, and how to put them. */
final class Quoting {

    private Quoting() {}

    static boolean needed(String text, boolean insideFlow) {
        if (text.isEmpty() || !text.equals(text.strip())) return true;
        char first = text.charAt(0);
        if ("!&*|>'\"%@`#,[]{}".indexOf(first) >= 0) return true;
        if ((first == '-' || first == '?' || first == ':') && (text.length() == 1 || text.charAt(1) == ' '))
            return true;
        if (text.startsWith("---") || text.startsWith("...")) return true;
        if (text.endsWith(":") || text.contains(": ") || text.contains(" #")) return true;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' || c >= 0x7f && c <= 0xa0 || c == '\u2028' || c == '\u2029' || c == '\ufeff') return true;
            if (Character.isSurrogate(c) || c >= 0xfffe) return true;
            if (insideFlow && ",[]{}:".indexOf(c) >= 0 && !clockColon(text, i)) return true;
        }
        return false;
    }

    /** The colon of 17:00 is harmless. */
    private static boolean clockColon(String text, int i) {
        return text.charAt(i) == ':' && i + 1 < text.length() && Numeral.digit(text.charAt(i + 1));
    }

    static void quote(StringBuilder out, String text) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c == '\n') {
                out.append("\\n");
            } else if (c < ' ' || c >= 0x7f && c <= 0xa0 || c == '\u2028' || c == '\u2029' || c == '\ufeff') {
                String hex = Integer.toHexString(c);
                out.append("\\u").append("0".repeat(4 - hex.length())).append(hex);
            } else {
                out.append(c);
            }
        }
        out.append('"');
    }
}
