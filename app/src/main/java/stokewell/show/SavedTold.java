package stokewell.show;

import java.util.List;
import stokewell.file.UnitSystem;
import stokewell.fit.Saving;

/**
 * All that a comparison has to tell a person, in the units chosen.
 *
 * @param verdict   the answer
 * @param sentences what it comes to, what to mind
 * @param picture   wood a day over what drives it
 * @param periods   rows of what, before, after
 * @param figures   how sure it is: what, value
 */
public record SavedTold(
        String verdict,
        List<String> sentences,
        Picture picture,
        List<List<String>> periods,
        List<List<String>> figures) {

    /** How the numbers under {@link #figures} come about. */
    public static final String METHOD = "The line of the period before is carried to the days after (whole-facility "
            + "comparison: IPMVP option C, ASHRAE Guideline 14).";

    /** Tells it for print and page. */
    public static SavedTold of(SavedFacts facts, UnitSystem units) {
        Saving s = facts.saving();
        Measure as = Measure.printed(units);
        SavedWords words = new SavedWords(facts, units, true);
        SavedTable table = new SavedTable(facts, as, "±");
        Picture picture = new Picture(
                "Wood a day, over "
                        + (s.comfort() ? "how much warmer the room was than outdoors" : "the cold outdoors"),
                "Rings: before. Full marks: after. The band holds nine of ten marks of the period before; each mark is "
                        + (s.length() == 1 ? "a day" : s.length() == 7 ? "a week" : s.length() + " days")
                        + ". Wood as if it held 20 % water.",
                new SavedChart(s, as, Page.DESK).scatter(),
                new SavedChart(s, as, Page.PHONE).scatter());
        return new SavedTold(
                words.verdict(),
                words.sentences(),
                picture,
                table.periods().stream().map(List::of).toList(),
                table.figures().stream().map(f -> List.of(f.label(), f.value())).toList());
    }
}
