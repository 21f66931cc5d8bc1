package stokewell.show;

import java.util.List;
import stokewell.file.UnitSystem;
import stokewell.sheet.SheetFacts;

/**
 * A sheet in words and drawings.
 *
 * @param html     XHTML; on paper it leaves places for the drawings
 * @param drawings that go there, in order; none for a screen
 */
record SheetText(String html, List<Drawing> drawings) {

    static SheetText of(SheetFacts facts, UnitSystem units, Paper paper, SheetSetting set) {
        SheetMarkup page = new SheetMarkup(Plain.name(facts.rig().name(), 60), alarm(facts), paper, set);
        Measure as = Measure.printed(units);
        new SheetFront(facts, as).write(page);
        new SheetBuild(facts, as).write(page, paper, set);
        new SheetTests(facts, as).write(page, paper.inside());
        new SheetWall(facts, as).write(page);
        return page.done();
    }

    /** What every page says first. */
    static String alarm(SheetFacts facts) {
        int stops = facts.stops();
        return stops == 0 ? "" : "DO NOT BUILD, DO NOT LIGHT: " + stops + (stops == 1 ? " stop" : " stops");
    }
}
