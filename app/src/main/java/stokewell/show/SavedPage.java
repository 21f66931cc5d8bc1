package stokewell.show;

import java.util.ArrayList;
import java.util.List;
import stokewell.file.UnitSystem;
import stokewell.fit.Saving;

/** A comparison as one HTML file to look at and to print. */
public final class SavedPage {

    private SavedPage() {}

    /** The whole file. Nothing in it asks for anything outside it. */
    public static String html(SavedFacts facts, UnitSystem units) {
        Saving s = facts.saving();
        Measure as = Measure.printed(units);
        SavedWords words = new SavedWords(facts, units, true);
        SavedTable table = new SavedTable(facts, as, "±");
        Page page = new Page("Wood before and after");
        String[] from = table.periods().get(0);
        String[] to = table.periods().get(1);
        page.head("Wood before and after", from[1] + " to " + to[1] + ", against " + from[2] + " to " + to[2], "");
        page.verdict(words.verdict());
        List<Cautions.Caution> told = new ArrayList<>();
        for (String sentence : words.sentences()) told.add(new Cautions.Caution(false, sentence));
        page.cautions(told);
        page.title(
                "Wood a day, over "
                        + (s.comfort() ? "how much warmer the room was than outdoors" : "the cold outdoors"),
                "Rings: before. Full marks: after. The band holds nine of ten marks of the period before; each mark is "
                        + (s.length() == 1 ? "a day" : s.length() == 7 ? "a week" : s.length() + " days")
                        + ". Wood as if it held 20 % water.");
        page.figure(new SavedChart(s, as, Page.DESK).scatter(), new SavedChart(s, as, Page.PHONE).scatter());
        page.title("The two periods", "");
        page.table("compare", new String[] {"", "before", "after"}, table.periods());
        page.title(
                "How sure it is",
                "The line of the period before is carried to the days after (whole-facility comparison: IPMVP option C, "
                        + "ASHRAE Guideline 14).");
        page.facts(table.figures());
        return page.end("A saving says nothing of safety: ask ./stokewell check.");
    }
}
