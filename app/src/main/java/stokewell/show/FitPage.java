package stokewell.show;

import java.util.ArrayList;
import java.util.List;
import stokewell.file.UnitSystem;
import stokewell.fit.Fit;
import stokewell.fit.Placing;

/** A fit as one HTML file to look at and to print: what it says, the numbers, readings and model, what is left over. */
public final class FitPage {

    private FitPage() {}

    /** The whole file. Nothing in it asks for anything outside it. */
    public static String html(Fit fit, Placing placing, UnitSystem units) {
        Measure as = Measure.printed(units);
        FitWords words = new FitWords(fit, as, "±");
        ChangeWords more = new ChangeWords(fit, as, "±");
        String when = Clock.date(fit.at(fit.from())) + " to " + Clock.date(fit.at(fit.until()));
        Page page = new Page(fit.filed().name() + ", fit, " + when);
        page.head(fit.filed().name(), when + ", held against its readings", "");
        List<String> sentences = words.sentences();
        if (!sentences.isEmpty()) page.verdict(sentences.get(0));
        List<Cautions.Caution> rest = new ArrayList<>();
        for (int i = 1; i < sentences.size(); i++) rest.add(new Cautions.Caution(false, sentences.get(i)));
        rest.add(new Cautions.Caution(fit.watch().deviation() != null, more.changed()));
        page.cautions(rest);
        page.title(
                "What was learnt",
                "Each number as a factor on what the rig file says. The interval holds the truth nine "
                        + "times in ten; \"hardly\" means that the readings add little to the guess they began with.");
        List<String[]> rows = new ArrayList<>();
        for (Fit.Factor f : fit.factors()) {
            rows.add(new String[] {
                f.knob().words,
                Numbers.of(f.factor(), 2),
                Numbers.of(f.low(), 2) + " to " + Numbers.of(f.high(), 2),
                FitWords.told(f)
            });
        }
        page.table("factors", new String[] {"what", "factor", "90 %", "known"}, rows);
        List<String> open = new ArrayList<>(words.confused());
        open.addAll(more.closely());
        if (!open.isEmpty()) {
            page.title("What these readings cannot tell apart", "");
            page.cautions(open.stream().map(s -> new Cautions.Caution(false, s)).toList());
        }
        page.title(
                "Day by day",
                "How far each sensor was off the model from one morning to the next, in standard errors, the part that "
                        + "the hours before foretold left out. Beyond 3 is more than chance.");
        page.figure(new FitChart(fit, as, Page.DESK).days(), new FitChart(fit, as, Page.PHONE).days());
        for (Fit.Trace t : fit.traces()) {
            page.title(
                    "Read and modelled: " + t.spot().words,
                    "Off by " + as.difference(t.rms(), 2) + " in the mean square; " + Numbers.percent(t.within())
                            + " of the readings are inside the band. Below: read less modelled.");
            page.figure(new FitChart(fit, as, Page.DESK).trace(t), new FitChart(fit, as, Page.PHONE).trace(t));
        }
        if (fit.holdout() != null) {
            List<String[]> kept = new ArrayList<>();
            for (Fit.Holdout h : fit.holdout()) {
                kept.add(new String[] {
                    h.spot().words, as.hours(h.hours()), as.difference(h.rms(), 2), as.difference(h.persistence(), 2)
                });
            }
            page.title(
                    "Nights kept back",
                    "Predicted without having been seen, beside saying that all will be as it was the "
                            + "day before.");
            page.table("compare", new String[] {"place", "hours", "model", "day before"}, kept);
        }
        List<NightFacts.Fact> facts = new ArrayList<>();
        for (int i = 0; i < placing.names().size(); i++) {
            facts.add(new NightFacts.Fact(
                    placing.names().get(i),
                    placing.spots().get(i).words + ", " + placing.why().get(i)));
        }
        page.title("The sensors", "").facts(facts);
        return page.end("A fit finds losses and strengths; it finds no danger: ask ./stokewell check.");
    }
}
