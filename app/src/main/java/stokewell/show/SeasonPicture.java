package stokewell.show;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import stokewell.file.UnitSystem;
import stokewell.run.Season;

/** A season as one picture: the sentence, the wood of each month, the room day by day and where the heat went. */
public final class SeasonPicture {

    private static final double WIDTH = 960;
    private static final double EDGE = 30;

    private SeasonPicture() {}

    /** The picture as a drawing, to be told as SVG or painted. */
    public static Drawing drawing(Season season, CardFacts known, UnitSystem units) {
        CardFacts facts = known.spoken(units);
        Measure as = Measure.printed(units);
        SeasonChart chart = new SeasonChart(season, facts, as, WIDTH);
        Drawing months = chart.months();
        Drawing days = chart.days();
        Drawing flow = new HeatFlow(season.ledger(), as, WIDTH).drawing();
        List<String> verdict = Wrapped.lines(Stops.lead(facts.check(), SeasonCard.sentence(season, facts, as)), 92);
        List<String> dangers = Cautions.found(season, facts, units).stream()
                .filter(Cautions.Caution::danger)
                .flatMap(c -> Wrapped.lines("DANGER  " + c.text(), 112).stream())
                .toList();
        double height = EDGE
                + 46
                + 27 * verdict.size()
                + 20 * dangers.size()
                + months.height()
                + days.height()
                + flow.height()
                + 3 * 34
                + 3 * 17
                + EDGE;
        Drawing on = new Drawing(WIDTH + 2 * EDGE, height, season.rig());
        on.box(0, 0, WIDTH + 2 * EDGE, height, Ink.PAPER);
        String when = Clock.date(season.at(season.from())) + " to " + Clock.date(season.at(season.until()));
        double y = EDGE;
        on.heavy(EDGE, y + 8, Plain.name(season.rig(), 60), Ink.TEXT, 16, Drawing.Anchor.START);
        on.words(EDGE + WIDTH, y + 8, when, Ink.FAINT, 14, Drawing.Anchor.END);
        on.line(EDGE, y + 18, EDGE + WIDTH, y + 18, Ink.TEXT, 1.5);
        y += 46;
        for (String line : verdict) {
            on.words(EDGE, y, line, Ink.TEXT, 19, Drawing.Anchor.START);
            y += 27;
        }
        for (String line : dangers) {
            on.heavy(EDGE, y, line, Ink.DANGER, 13.5, Drawing.Anchor.START);
            y += 20;
        }
        y = part(on, y, "Wood, month by month", months);
        y = part(on, y, "The room, day by day", days);
        y = part(on, y, "Where the heat went", flow);
        for (String line : Wrapped.lines(Cautions.DECIDES, 122)) {
            on.words(EDGE, y, line, Ink.FAINT, 12.5, Drawing.Anchor.START);
            y += 17;
        }
        return on;
    }

    private static double part(Drawing on, double y, String title, Drawing drawing) {
        on.heavy(EDGE, y + 10, title, Ink.TEXT, 15, Drawing.Anchor.START);
        on.inset(EDGE, y + 18, drawing);
        return y + 34 + drawing.height();
    }

    /** Writes a PNG, and leaves the stream open. Needs no display. */
    public static void png(Season season, CardFacts facts, UnitSystem units, OutputStream out) throws IOException {
        Painter.png(drawing(season, facts, units), out);
    }
}
