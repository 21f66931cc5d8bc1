package stokewell.show;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import stokewell.check.Check;
import stokewell.check.Drills;
import stokewell.file.UnitSystem;

/** All drills of a rig as one picture. */
public final class DrillPicture {

    private static final double EDGE = 30;

    private DrillPicture() {}

    /** The picture as a drawing, to be told as SVG or painted. */
    public static Drawing drawing(String rig, Drills.Outcome outcome, Check check, UnitSystem units) {
        Drawing chart = new DrillChart(outcome.drills(), Measure.printed(units), Page.DESK).drawing();
        List<String> lead = Wrapped.lines(Stops.lead(check, DrillPage.sentence(outcome)), 92);
        List<String> stops = new ArrayList<>();
        for (String text : Stops.told(check)) stops.addAll(Wrapped.lines("DANGER  " + text, 112));
        double wide = Page.DESK + 2 * EDGE;
        double height = EDGE + 46 + 27 * lead.size() + 20 * stops.size() + 10 + chart.height() + 50;
        Drawing on = new Drawing(wide, height, chart.title());
        on.box(0, 0, wide, height, Ink.PAPER);
        double y = EDGE;
        on.heavy(EDGE, y + 8, Plain.name(rig, 60), Ink.TEXT, 16, Drawing.Anchor.START);
        on.words(EDGE + Page.DESK, y + 8, DrillPage.moment(outcome), Ink.FAINT, 14, Drawing.Anchor.END);
        on.line(EDGE, y + 18, EDGE + Page.DESK, y + 18, Ink.TEXT, 1.5);
        y += 46;
        for (String line : lead) {
            on.words(EDGE, y, line, Ink.TEXT, 19, Drawing.Anchor.START);
            y += 27;
        }
        for (String line : stops) {
            on.heavy(EDGE, y, line, Ink.DANGER, 13.5, Drawing.Anchor.START);
            y += 20;
        }
        on.inset(EDGE, y + 4, chart);
        y += chart.height() + 24;
        for (String line : Wrapped.lines(Cautions.DECIDES, 122)) {
            on.words(EDGE, y, line, Ink.FAINT, 12.5, Drawing.Anchor.START);
            y += 17;
        }
        return on;
    }

    /** Writes a PNG, and leaves the stream open. */
    public static void png(String rig, Drills.Outcome outcome, Check check, UnitSystem units, OutputStream out)
            throws IOException {
        Painter.png(drawing(rig, outcome, check, units), out);
    }
}
