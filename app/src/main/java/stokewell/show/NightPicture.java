package stokewell.show;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import stokewell.file.UnitSystem;
import stokewell.run.Night;

/** A night as one picture: the sentence, the chart of its hours and where the heat went. */
public final class NightPicture {

    private static final double WIDTH = 960;
    private static final double EDGE = 30;

    private NightPicture() {}

    /** The picture as a drawing, to be told as SVG or painted. */
    public static Drawing drawing(Night night, CardFacts known, UnitSystem units) {
        CardFacts facts = known.spoken(units);
        Measure as = Measure.printed(units);
        Drawing course = new NightChart(night, as, WIDTH).course();
        Drawing flow = new HeatFlow(night.ledger(), as, WIDTH).drawing();
        List<String> verdict =
                Wrapped.lines(Stops.lead(facts.check(), Verdict.of(night).sentence(night, as)), 92);
        List<Cautions.Caution> cautions = Cautions.found(night, facts, units);
        double y = EDGE;
        double height = EDGE + 50 + 27 * verdict.size() + course.height() + 40 + flow.height() + EDGE + 40;
        for (Cautions.Caution c : cautions)
            if (c.danger()) height += 20 * Wrapped.lines(danger(c), 112).size();
        Drawing on = new Drawing(WIDTH + 2 * EDGE, height, night.rig());
        on.box(0, 0, WIDTH + 2 * EDGE, height, Ink.PAPER);
        String when = Clock.dayAndHour(night.at(night.from())) + " to " + Clock.dayAndHour(night.at(night.until()));
        on.heavy(EDGE, y + 8, Plain.name(night.rig(), 60), Ink.TEXT, 16, Drawing.Anchor.START);
        on.words(EDGE + WIDTH, y + 8, when, Ink.FAINT, 14, Drawing.Anchor.END);
        on.line(EDGE, y + 18, EDGE + WIDTH, y + 18, Ink.TEXT, 1.5);
        y += 46;
        for (String line : verdict) {
            on.words(EDGE, y, line, Ink.TEXT, 19, Drawing.Anchor.START);
            y += 27;
        }
        for (Cautions.Caution c : cautions) {
            if (!c.danger()) continue;
            for (String line : Wrapped.lines(danger(c), 112)) {
                on.heavy(EDGE, y, line, Ink.DANGER, 13.5, Drawing.Anchor.START);
                y += 20;
            }
        }
        on.inset(EDGE, y, course);
        y += course.height() + 26;
        on.heavy(EDGE, y, "Where the heat went", Ink.TEXT, 15, Drawing.Anchor.START);
        on.inset(EDGE, y + 8, flow);
        y += flow.height() + 26;
        for (String line : Wrapped.lines(Cautions.DECIDES, 122)) {
            on.words(EDGE, y, line, Ink.FAINT, 12.5, Drawing.Anchor.START);
            y += 17;
        }
        return on;
    }

    private static String danger(Cautions.Caution c) {
        return "DANGER  " + c.text();
    }

    /** Writes a PNG, and leaves the stream open. Needs no display; sets {@code java.awt.headless} where nobody has. */
    public static void png(Night night, CardFacts facts, UnitSystem units, OutputStream out) throws IOException {
        Painter.png(drawing(night, facts, units), out);
    }

    /** Writes a PNG file. */
    public static void png(Night night, CardFacts facts, UnitSystem units, Path file) throws IOException {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            png(night, facts, units, out);
        }
    }
}
