package stokewell.show;

import stokewell.file.UnitSystem;
import stokewell.fit.Fit;
import stokewell.fit.Placing;

/** The card of a fit: what it says, the numbers with their intervals, how well it predicts. */
public final class FitCard {

    private static final int COLUMN = 26;

    private FitCard() {}

    /** The card as text. */
    public static String text(Fit fit, Placing placing, UnitSystem units) {
        Measure as = Measure.plain(units);
        Plain out = new Plain(COLUMN);
        FitWords words = new FitWords(fit, as, "+/-");
        ChangeWords more = new ChangeWords(fit, as, "+/-");
        out.raw(Plain.name(fit.filed().name(), Plain.WIDTH));
        out.raw(Clock.dayAndHour(fit.at(fit.from())) + " to " + Clock.dayAndHour(fit.at(fit.until())) + ", "
                + Numbers.of((fit.until() - fit.from()) / 86400, 1) + " days, "
                + fit.burns().size() + " loads");
        out.blank();
        for (String s : words.sentences()) out.words(fit.astray() == null ? "" : "! ", s);
        boolean changed = fit.watch().deviation() != null && fit.astray() == null;
        out.words(changed ? "! " : "", more.changed());
        out.blank();
        out.raw(Plain.left("what", 12) + Plain.right("times the file", 15) + Plain.right("90 % between", 18)
                + "   known from the readings");
        for (Fit.Factor f : fit.factors()) {
            out.raw(Plain.left(f.knob().name().toLowerCase(java.util.Locale.ROOT), 12)
                    + Plain.right(Numbers.of(f.factor(), 2), 15)
                    + Plain.right(Numbers.of(f.low(), 2) + " and " + Numbers.of(f.high(), 2), 18) + "   "
                    + FitWords.told(f));
        }
        for (String s : words.confused()) out.words("? ", s);
        for (String s : more.closely()) out.words("? ", s);
        if (!fit.estimate().settled()) out.words("! ", "The fit has not come to rest: take its numbers as rough.");
        out.blank();
        for (Fit.Trace t : fit.traces()) {
            out.line(
                    t.spot().words,
                    "off by " + as.difference(t.rms(), 2) + " (rms); "
                            + Numbers.percent(t.within()) + " inside the 90 % band; sensor reads "
                            + as.difference(Math.abs(t.offset()), 1) + (t.offset() < 0 ? " too little" : " too much"));
        }
        if (fit.holdout() == null) out.line("held out", "too few days to keep a night back");
        else {
            for (Fit.Holdout h : fit.holdout()) {
                out.line(
                        "predicted " + h.spot().words,
                        as.difference(h.rms(), 2) + " off over " + as.hours(h.hours())
                                + " it had not seen; \"as the day before\": " + as.difference(h.persistence(), 2));
            }
        }
        out.blank();
        for (int i = 0; i < placing.names().size(); i++) {
            out.line(
                    placing.names().get(i),
                    placing.spots().get(i).words + ", " + placing.why().get(i));
        }
        out.words(
                "! ",
                "Factors are on what the rig file says. A fit finds losses and strengths; it finds no danger: "
                        + "ask ./stokewell check.");
        out.words("! ", Cautions.DECIDES);
        return out.toString();
    }
}
