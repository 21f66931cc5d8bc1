package stokewell.show;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import stokewell.file.UnitSystem;
import stokewell.run.Season;

/** A season as one picture: the sentence, the wood of each month, the room day by day and where the heat went. */
public final class SeasonPicture {

    private SeasonPicture() {}

    /** The picture as a drawing, to be told as SVG or painted. */
    public static Drawing drawing(Season season, CardFacts known, UnitSystem units) {
        CardFacts facts = known.spoken(units);
        Measure as = Measure.printed(units);
        SeasonChart chart = new SeasonChart(season, facts, as, Poster.WIDTH);
        List<String> dangers = Cautions.found(season, facts, units).stream()
                .filter(Cautions.Caution::danger)
                .map(Cautions.Caution::text)
                .toList();
        return Poster.of(
                season.rig(),
                Clock.date(season.at(season.from())) + " to " + Clock.date(season.at(season.until())),
                Stops.lead(facts.check(), SeasonCard.sentence(season, facts, as)),
                dangers,
                List.of(
                        new Poster.Part("Wood, month by month", chart.months()),
                        new Poster.Part("The room, day by day", chart.days()),
                        new Poster.Part(
                                "Where the heat went", new HeatFlow(season.ledger(), as, Poster.WIDTH).drawing())));
    }

    /** Writes a PNG, and leaves the stream open. Needs no display. */
    public static void png(Season season, CardFacts facts, UnitSystem units, OutputStream out) throws IOException {
        Painter.png(drawing(season, facts, units), out);
    }
}
