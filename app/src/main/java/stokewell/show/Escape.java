package stokewell.show;

/** Text made safe to stand in a page, between tags or in quotes. */
final class Escape {

    private Escape() {}

    static String of(String text) {
        return into(new StringBuilder(text.length() + 16), text).toString();
    }

    /** Characters that XML cannot hold become blanks. */
    static StringBuilder into(StringBuilder out, String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '&' -> out.append("&amp;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> {
                    if (Character.isHighSurrogate(c)
                            && i + 1 < text.length()
                            && Character.isLowSurrogate(text.charAt(i + 1))) {
                        out.append(c).append(text.charAt(++i));
                    } else {
                        boolean stands = c >= 0x20 && !Character.isSurrogate(c) && c < 0xfffe || c == '\n' || c == '\t';
                        out.append(stands ? c : ' ');
                    }
                }
            }
        }
        return out;
    }
}
