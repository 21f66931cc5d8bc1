package stokewell.show;

/** Words for a terminal that knows only ASCII. */
public final class Ascii {

    private Ascii() {}

    /** The same words with signs that any terminal shows. */
    public static String of(String text) {
        StringBuilder out = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '°' -> {}
                case '²' -> out.append('2');
                case '³' -> out.append('3');
                case '⅓' -> out.append("(1/3)");
                case '√' -> out.append("sqrt ");
                case '−', '–' -> out.append('-');
                case '·' -> out.append(' ');
                case 'ν' -> out.append("nu");
                default -> out.append(c);
            }
        }
        return out.toString();
    }
}
