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

    private NightPicture() {}

    /** The picture as a drawing, to be told as SVG or painted. */
    public static Drawing drawing(Night night, CardFacts known, UnitSystem units) {
        CardFacts facts = known.spoken(units);
        Measure as = Measure.printed(units);
        List<String> dangers = Cautions.found(night, facts, units).stream()
                .filter(Cautions.Caution::danger)
                .map(Cautions.Caution::text)
                .toList();
        return Poster.of(
                night.rig(),
                Clock.dayAndHour(night.at(night.from())) + " to " + Clock.dayAndHour(night.at(night.until())),
                Stops.lead(facts.check(), Verdict.of(night).sentence(night, as)),
                dangers,
                List.of(
                        new Poster.Part("", new NightChart(night, as, Poster.WIDTH).course()),
                        new Poster.Part(
                                "Where the heat went", new HeatFlow(night.ledger(), as, Poster.WIDTH).drawing())));
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
