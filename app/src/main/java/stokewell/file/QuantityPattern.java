package stokewell.file;

import stokewell.rig.Dimension;

/** Regular expressions, in the part that Java and ECMA share, for the texts of a dimension. Looser than the reader. */
final class QuantityPattern {

    private static final String GLYPHS = "½¼¾⅛⅜⅝⅞⅓⅔";
    private static final String NUMBER =
            "[0-9" + GLYPHS + "][0-9.,/" + GLYPHS + " \u00a0\u2009\u202f-]*(?:[eE][-+]?[0-9]+)?";
    private static final String SIGN = "[-+−]? ?";
    private static final String HALF = " ?[aApP]\\.?[mM]\\.?";

    /** A pipe as it is sold. */
    static final String PIPE = "^.*[0-9" + GLYPHS
            + "].*(?:[sS]ch|[tT]ype|[cC]opper|[sS]teel|[sS]tainless|[iI]ron|[pP][eE][xX]|[gG]alv).*$";

    private QuantityPattern() {}

    static String of(Dimension is) {
        return switch (is) {
            case NONE, COUNT -> "^" + SIGN + NUMBER + "$";
            case SHARE -> "^" + SIGN + NUMBER + "(?:" + units(is) + ")?$";
            case CLOCK ->
                "^(?:[0-9]{1,2}(?::[0-9]{2}){1,2}(?:\\.[0-9]+)?(?:" + HALF + ")?|[0-9]{1,2}" + HALF
                        + "|[0-9]{1,2}h(?:[0-9]{2})?|[nN]oon|[mM]idnight)$";
            case LENGTH -> "^" + SIGN + "(?:" + compound(is) + "|[0-9 -]*[0-9]+/[0-9]+|[0-9 ]*[" + GLYPHS + "])$";
            case MASS -> "^" + SIGN + compound(is) + "$";
            case TIME -> "^" + SIGN + "(?:" + compound(is) + "|[0-9]{1,3}(?::[0-9]{2}){1,2} ?h?)$";
            case ANGLE ->
                "^(?:" + SIGN + compound(is) + " ?[NESWnesw]?|" + NUMBER + "[NESWnesw]|"
                        + "(?:[nN]orth|[sS]outh|[eE]ast|[wW]est|[nesw]|[NESW]|[ -])+)$";
            case THERMAL_RESISTANCE -> "^(?:" + SIGN + NUMBER + units(is) + "|[rR](?:[sS][iI])?[ -]?" + NUMBER + ")$";
            default -> "^" + SIGN + NUMBER + units(is) + "$";
        };
    }

    private static String compound(Dimension is) {
        return NUMBER + units(is) + "(?:[ -]*" + NUMBER + "(?:" + units(is) + ")?)*";
    }

    private static String units(Dimension is) {
        StringBuilder out = new StringBuilder(" ?(?:");
        boolean first = true;
        for (Unit unit : Units.of(is)) {
            first = add(out, unit.symbol(), first);
            for (String other : unit.others()) first = add(out, other, first);
        }
        if (is == Dimension.TEMPERATURE || is == Dimension.TEMPERATURE_DIFFERENCE) out.append("|° ?[cCfFkK]");
        if (is == Dimension.ANGLE) out.append("|°");
        return out.append(")").toString();
    }

    private static boolean add(StringBuilder out, String name, boolean first) {
        if (name.isEmpty()) return first;
        if (!first) out.append('|');
        int denominator = name.indexOf('/');
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            switch (c) {
                case '.' -> out.append("[ .·⋅*]*");
                case ' ' -> out.append(" ?");
                case '2' -> out.append("\\^?[2²]");
                case '3' -> out.append("\\^?[3³]");
                case '/' -> out.append(" ?/ ?").append(denominator == i ? "\\(?" : "");
                case '\'' -> out.append("['′’]");
                case '"' -> out.append("[\"″”]");
                case 'F', 'C' ->
                    out.append("°?[").append(c).append(Character.toLowerCase(c)).append(']');
                default -> {
                    if (Character.isLetter(c)) {
                        out.append('[')
                                .append(Character.toUpperCase(c))
                                .append(Character.toLowerCase(c))
                                .append(']');
                    } else {
                        out.append(c);
                    }
                }
            }
        }
        if (denominator >= 0) out.append("\\)?");
        return false;
    }
}
