package stokewell.file;

/**
 * A unit as people write it.
 *
 * @param symbol how it is shown
 * @param factor SI value of one of it
 * @param zero   SI value of none of it; not 0 only for temperatures on a scale
 * @param system whose unit it is; {@code null} where both use it
 * @param others other ways to write it
 */
record Unit(String symbol, double factor, double zero, UnitSystem system, String... others) {

    double toSi(double number) {
        return number * factor + zero;
    }

    double fromSi(double si) {
        return (si - zero) / factor;
    }

    boolean isCalled(String plain) {
        if (plain(symbol).equals(plain)) return true;
        for (String other : others) if (plain(other).equals(plain)) return true;
        return false;
    }

    /** The letters of a unit alone: no blanks, dots, brackets or degree signs, all lower case. */
    static String plain(String text) {
        StringBuilder out = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '.', '·', '⋅', '*', '×', '^', '(', ')', '°', '_' -> {}
                case '²' -> out.append('2');
                case '³' -> out.append('3');
                case '′', '’' -> out.append('\'');
                case '″', '”' -> out.append('"');
                default -> {
                    if (!Character.isWhitespace(c) && !Character.isSpaceChar(c)) out.append(Character.toLowerCase(c));
                }
            }
        }
        return out.toString();
    }
}
