package stokewell.show;

import java.util.List;
import stokewell.file.UnitSystem;

/** A comparison as one HTML file to look at and to print. */
public final class SavedPage {

    private SavedPage() {}

    /** The whole file. Nothing in it asks for anything outside it. */
    public static String html(SavedFacts facts, UnitSystem units) {
        SavedTold told = SavedTold.of(facts, units);
        Page page = new Page("Wood before and after");
        List<String> from = told.periods().get(0);
        List<String> to = told.periods().get(1);
        String days = from.get(1) + " to " + to.get(1) + ", against " + from.get(2) + " to " + to.get(2);
        page.head("Wood before and after", days, "");
        page.verdict(told.verdict());
        page.cautions(told.sentences().stream()
                .map(s -> new Cautions.Caution(false, s))
                .toList());
        Picture picture = told.picture();
        page.title(picture.title(), picture.note()).figure(picture.desk(), picture.phone());
        page.title("The two periods", "");
        List<String[]> periods =
                told.periods().stream().map(row -> row.toArray(String[]::new)).toList();
        page.table("compare", new String[] {"", "before", "after"}, periods);
        page.title("How sure it is", SavedTold.METHOD);
        page.facts(told.figures().stream()
                .map(f -> new NightFacts.Fact(f.get(0), f.get(1)))
                .toList());
        return page.end("A saving says nothing of safety: ask ./stokewell check.");
    }
}
