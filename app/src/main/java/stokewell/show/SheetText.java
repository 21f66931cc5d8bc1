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

    /** In place of a size of type: for a screen. */
    static final double SCREEN = 0;

    /** @param type size of type, points */
    static SheetText of(SheetFacts facts, UnitSystem units, Paper paper, double type) {
        SheetMarkup page = new SheetMarkup(Plain.name(facts.rig().name(), 60), alarm(facts), paper, type);
        Measure as = Measure.printed(units);
        new SheetFront(facts, as).write(page, paper.inside());
        new SheetBuild(facts, as).write(page, paper.inside());
        new SheetTests(facts, as).write(page);
        new SheetWall(facts, as).write(page);
        return page.done();
    }

    /** What every page says first. */
    static String alarm(SheetFacts facts) {
        int stops = facts.stops();
        return stops == 0 ? "" : "DO NOT BUILD, DO NOT LIGHT: " + stops + (stops == 1 ? " stop" : " stops");
    }
}
