package stokewell.cli;

import java.util.Locale;
import stokewell.check.Check;
import stokewell.check.Drill;
import stokewell.check.Drills;
import stokewell.file.UnitSystem;
import stokewell.rig.Rig;
import stokewell.show.DrillChart;
import stokewell.show.GuardTold;
import stokewell.show.Measure;
import stokewell.show.Spoken;

/** Drills as text: one line and one bar of time a fault, then a sentence each. */
final class DrillVerbPage {

    /** Ends of the bar of time, s: one minute to eight hours, evenly in its logarithm. */
    private static final double FIRST = 60;

    private static final double LAST = 8 * 3600;
    private static final int BAR = 28;

    private final UnitSystem units;
    private final Measure as;

    DrillVerbPage(UnitSystem units) {
        this.units = units;
        as = Measure.plain(units);
    }

    String text(Rig rig, Drills.Outcome outcome, Check check) {
        StringBuilder b = new StringBuilder();
        b.append(rig.name()).append(": what fails at the worst moment of a normal day");
        double start = outcome.drills().stream()
                .filter(Drill::possible)
                .mapToDouble(Drill::start)
                .findFirst()
                .orElse(Double.NaN);
        var at = outcome.day().at(start);
        if (at != null) b.append(", ").append(at.toLocalTime().withSecond(0).withNano(0));
        b.append(".\n");
        if (check.stops())
            b.append("STOP. ").append(check.findings().get(0).what()).append('\n');
        b.append('\n');
        b.append(String.format(
                Locale.ROOT,
                "%-28s %-5s %8s %6s %6s %6s %6s %6s  %s%n",
                "fault",
                "",
                "boils",
                "water",
                "metal",
                as.pressureUnit(),
                as.massUnit() + "/h",
                "lost",
                axis()));
        for (Drill d : outcome.drills()) line(b, d);
        b.append("\nB boils, D first metal dry, F first water freezes. Temperatures in ")
                .append(as.scaleUnit())
                .append(", lost water in ")
                .append(as.massUnit())
                .append(", pressure over the air's.\n\n");
        for (Drill d : outcome.drills()) {
            CheckVerbPage.wrap(
                    b, "", cap(d.fault().title()) + " (" + Spoken.in(d.fault().story(), units) + "): " + d.sentence());
            for (Drill.Guard g : d.guards()) {
                b.append("    ").append(GuardTold.line(g, units)).append('\n');
            }
        }
        b.append("\nA reckoning, not an approval: local code and a licensed person decide.\n");
        return b.toString();
    }

    private static String cap(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private void line(StringBuilder b, Drill d) {
        if (!d.possible()) {
            b.append(String.format(
                    Locale.ROOT, "%-28s %s%n", d.fault().title(), d.failed() ? "MEND  not reckoned" : "-"));
            return;
        }
        b.append(String.format(
                Locale.ROOT,
                "%-28s %-5s %8s %6s %6s %6s %6s %6s  %s%n",
                d.fault().title(),
                d.level(),
                DrillChart.boils(d),
                degrees(d.water().temperature()),
                degrees(d.metal().temperature()),
                d.pressure() == Double.POSITIVE_INFINITY ? "bursts" : tenth(as.pressureNumber(d.pressure())),
                whole(as.massNumber(d.steam() * 3600)),
                tenth(as.massNumber(d.waterLost())),
                bar(d)));
    }

    private String degrees(double kelvin) {
        return whole(as.scale(kelvin));
    }

    private static String whole(double v) {
        return Double.isFinite(v) ? Long.toString(Math.round(v)) : "-";
    }

    private static String tenth(double v) {
        return Double.isFinite(v) ? String.format(Locale.ROOT, "%.1f", v) : "-";
    }

    private static String axis() {
        return "1 min   5   20   1 h     8 h";
    }

    private static String bar(Drill d) {
        StringBuilder bar = new StringBuilder(".".repeat(BAR));
        mark(bar, d.freezing(), 'F');
        mark(bar, d.exposed(), 'D');
        if (!d.withoutIce()) mark(bar, d.firstBoil(), 'B');
        return bar.toString();
    }

    private static void mark(StringBuilder bar, double after, char sign) {
        if (!(after <= LAST)) return;
        double share = Math.log(Math.max(FIRST, after) / FIRST) / Math.log(LAST / FIRST);
        bar.setCharAt((int) Math.min(BAR - 1, Math.round(share * (BAR - 1))), sign);
    }
}
