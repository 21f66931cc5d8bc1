package stokewell.show;

import java.util.Locale;
import stokewell.check.Drill;
import stokewell.file.UnitSystem;

/** In one line what a protection, or a hand, buys in a drill. */
public final class GuardTold {

    private GuardTold() {}

    /** Such as "by hand, air shut after 2 min: boils in 9 min, else 3 min; keeps 10.8 kg from boiling off". */
    public static String line(Drill.Guard g, UnitSystem units) {
        if (!Double.isNaN(g.pressureWithout())) {
            return g.name() + ": without it " + pressed(g.pressureWithout(), units) + ", with it at most "
                    + pressed(g.pressureWith(), units);
        }
        String kept = g.steam() > 0.05
                ? Spoken.in(String.format(Locale.ROOT, "; keeps %.1f kg from boiling off", g.steam()), units)
                : g.byHand() && Double.isFinite(g.with()) ? "; saves no water" : "";
        boolean never = Double.isInfinite(g.with()) && Double.isInfinite(g.without());
        if (never && !g.byHand()) return g.name() + ": nothing boils, with it or without it" + kept;
        String how = g.byHand()
                ? boils(g.with()) + ", else " + DrillChart.span(g.without())
                : boils(g.without()) + " without it, " + DrillChart.span(g.with()) + " with it";
        return (g.byHand() ? "by hand, " : "") + g.name() + ": " + how + kept;
    }

    private static String boils(double after) {
        return Double.isFinite(after) ? "boils in " + DrillChart.span(after) : "never boils";
    }

    private static String pressed(double pascal, UnitSystem units) {
        if (pascal == Double.POSITIVE_INFINITY) return "nothing holds the pressure: it bursts";
        return Spoken.in(String.format(Locale.ROOT, "%.2f bar", pascal / 1e5), units);
    }
}
