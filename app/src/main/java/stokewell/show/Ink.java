package stokewell.show;

/**
 * A colour of the picture language: named ones are light on dark paper and dark on light paper, others stay as they are.
 *
 * @param name  of the CSS variable; empty for a plain colour
 * @param light 0xRRGGBB on light paper
 * @param dark  0xRRGGBB on dark paper
 */
public record Ink(String name, int light, int dark) {

    /** The paper itself. */
    public static final Ink PAPER = new Ink("paper", 0xf7f1e3, 0x1d1a16);

    /** What is written. */
    public static final Ink TEXT = new Ink("text", 0x2a241d, 0xece3d2);

    /** What stands back. */
    public static final Ink FAINT = new Ink("faint", 0x655b4d, 0xb0a48f);

    /** Rules and grids. */
    public static final Ink RULE = new Ink("rule", 0xd8ccb6, 0x463f35);

    /** Fire and all that is hot by it. */
    public static final Ink FIRE = new Ink("fire", 0xa8401a, 0xf08c55);

    /** Water and what it holds. */
    public static final Ink WATER = new Ink("water", 0x1c6580, 0x74bfdc);

    /** What can hurt someone: always beside the word. */
    public static final Ink DANGER = new Ink("danger", 0xa01722, 0xff8f84);

    /** A colour that stays as it is on any paper. */
    public static Ink plain(int rgb) {
        return new Ink("", rgb, rgb);
    }

    static Ink[] named() {
        return new Ink[] {PAPER, TEXT, FAINT, RULE, FIRE, WATER, DANGER};
    }

    /** {@code var(--fire,#a8401a)}, or the plain colour. */
    String css() {
        return name.isEmpty() ? hex(light) : "var(--" + name + "," + hex(light) + ")";
    }

    static String hex(int rgb) {
        String digits = Integer.toHexString(rgb & 0xffffff);
        return "#" + "000000".substring(digits.length()) + digits;
    }
}
