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
        FitTold told = FitTold.of(fit, placing, units);
        Page page = new Page(told.rig() + ", fit, " + told.when());
        page.head(told.rig(), told.when() + ", held against its readings", "");
        List<String> sentences = told.sentences();
        if (!sentences.isEmpty()) page.verdict(sentences.get(0));
        List<Cautions.Caution> rest = new ArrayList<>();
        for (int i = 1; i < sentences.size(); i++) rest.add(new Cautions.Caution(false, sentences.get(i)));
        rest.add(new Cautions.Caution(told.change().came(), told.change().words()));
        page.cautions(rest);
        page.title(
                "What was learnt",
                "Each number as a factor on what the rig file says. The interval holds the truth nine "
                        + "times in ten; \"hardly\" means that the readings add little to the guess they began with.");
        List<String[]> rows = new ArrayList<>();
        for (FitTold.Factor f : told.factors()) rows.add(new String[] {f.what(), f.factor(), f.interval(), f.known()});
        page.table("factors", new String[] {"what", "factor", "90 %", "known"}, rows);
        if (!told.open().isEmpty()) {
            page.title("What these readings cannot tell apart", "");
            page.remarks(told.open());
        }
        for (Picture p : told.pictures()) page.title(p.title(), p.note()).figure(p.desk(), p.phone());
        if (!told.holdout().isEmpty()) {
            List<String[]> kept = new ArrayList<>();
            for (FitTold.Kept k : told.holdout())
                kept.add(new String[] {k.place(), k.hours(), k.model(), k.dayBefore()});
            page.title(
                    "Nights kept back",
                    "Predicted without having been seen, beside saying that all will be as it was the "
                            + "day before.");
            page.table("compare", new String[] {"place", "hours", "model", "day before"}, kept);
        }
        List<NightFacts.Fact> facts = new ArrayList<>();
        for (FitTold.Sensor s : told.sensors()) facts.add(new NightFacts.Fact(s.name(), s.place() + ", " + s.why()));
        page.title("The sensors", "").facts(facts);
        return page.end(String.format(FitTold.NO_DANGER, "ask ./stokewell check"));
    }
}
