package stokewell.show;

import stokewell.fit.Cause;
import stokewell.fit.Change;

/**
 * How soon a change was told in invented shops, and how often one where there was none: measured, see docs/fit.md, by few
 * shops.
 */
final class Delay {

    /** Of {@value #QUIET_SHOPS} shops in which nothing changed so many were told of a change in a month's readings. */
    static final int FALSE_ALARMS = 4;

    static final int QUIET_SHOPS = 60;
    /** Days after a fault at which the trials ended. */
    static final int LAST = 8;

    private static final int NOT = LAST + 1;

    private Delay() {}

    /** Days by which a change was told in half of the shops and in nine of ten, for two sizes of the logarithm or share. */
    private record Tried(double small, int smallHalf, int smallMost, double large, int largeHalf, int largeMost) {}

    private static Tried tried(Cause cause) {
        if (cause instanceof Cause.Loose) return new Tried(0.2, 4, 8, 0.5, 4, 4);
        if (!(cause instanceof Cause.Turned t)) return null;
        return switch (t.knob()) {
            case PICKUP -> new Tried(0.35, 4, 8, 0.9, 1, 1);
            case PUMP -> new Tried(0.5, 4, NOT, 1.2, 2, 8);
            case EMITTER -> new Tried(0.35, 8, NOT, 0.9, 4, NOT);
            case LEAKAGE -> new Tried(0.69, 8, NOT, 1.38, 1, 2);
            case JACKET -> new Tried(0.53, NOT, NOT, 1.1, NOT, NOT);
            case WOOD -> new Tried(0.13, 2, 8, 0.33, 1, 1);
            default -> null;
        };
    }

    /** How soon a change of that kind and size was told; empty where none was tried. */
    static String of(Change change) {
        Tried t = tried(change.cause());
        double size = Math.abs(change.size());
        if (t == null) return "";
        if (size < 0.9 * t.small()) return "None so small of that kind was tried.";
        boolean large = size >= 0.9 * t.large();
        int half = large ? t.largeHalf() : t.smallHalf();
        int most = large ? t.largeMost() : t.smallMost();
        if (half == NOT)
            return "A change of this size was told within " + LAST + " days in less than half of a few trial shops.";
        return "A change of this size was told after " + days(half) + " in half of a few trial shops"
                + (most == NOT
                        ? ", and not within " + LAST + " days in one of ten or more."
                        : most == half ? " and in nine of ten." : ", after " + days(most) + " in nine of ten.");
    }

    /** How often a change is told where there was none. */
    static String falseAlarms() {
        return "In a month's readings of " + QUIET_SHOPS + " trial shops in which nothing changed, " + FALSE_ALARMS
                + " were told of a change: look before you mend.";
    }

    /** What would not have been seen. */
    static String unseen() {
        return "In trial shops soot on the pickup, wet wood and a door left open showed within one or two days where they "
                + "were strong; a weaker pump or emitter took up to " + LAST
                + " or more, and a jacket's loss times three "
                + "mostly did not show within " + LAST + ".";
    }

    private static String days(int n) {
        return n == 1 ? "1 day" : n + " days";
    }
}
