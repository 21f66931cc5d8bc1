package stokewell.show;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import stokewell.file.UnitSystem;
import stokewell.run.Night;

class CardTest {

    private static final CardFacts SI = CardFacts.of(400, UnitSystem.SI).in("low -12 C, high -3 C");
    private static final CardFacts US = CardFacts.of(400, UnitSystem.US);

    private static String golden(String name) throws IOException {
        try (InputStream in = CardTest.class.getResourceAsStream("/show/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void theCardOfANightReadsAsWritten() throws IOException {
        assertThat(NightCard.text(FakeRuns.cold(), SI, UnitSystem.SI)).isEqualTo(golden("night-si.txt"));
    }

    @Test
    void theCardInCustomaryUnitsReadsAsWritten() throws IOException {
        assertThat(NightCard.text(FakeRuns.cold(), US, UnitSystem.US)).isEqualTo(golden("night-us.txt"));
    }

    @Test
    void theCardOfASeasonReadsAsWritten() throws IOException {
        assertThat(SeasonCard.text(FakeRuns.season(), SI, UnitSystem.SI)).isEqualTo(golden("season-si.txt"));
    }

    @Test
    void thePlotOfANightReadsAsWritten() throws IOException {
        assertThat(TerminalPlot.night(FakeRuns.cold(), UnitSystem.SI, 80, 18)).isEqualTo(golden("night-plot.txt"));
    }

    @Test
    void aRigThatKeepsItsLimitCarriesTheNight() {
        assertThat(NightCard.text(FakeRuns.warm(), SI, UnitSystem.SI))
                .contains("It carries the night: the room is 8.4 C at 07:30, 3.4 K over the limit of 5 C.");
    }

    /** 20 °C at 18:00 less 12/14 K an hour is 10 °C after 11 h 40 min. */
    @Test
    void theRoomFallsBelowItsLimitWhenTheTraceSays() {
        Night night = FakeRuns.cold();
        Verdict verdict = Verdict.of(night);
        assertThat(verdict.carries()).isFalse();
        assertThat(Clock.hour(night.at(verdict.below()))).isEqualTo("05:40");
    }

    /** Below by 0 to 1.571 K over 1 h 50 min: 1.44 K h, times what the building lost per kelvin in this night. */
    @Test
    void whatIsMissingIsTheShortfallTimesTheLoss() {
        Night night = FakeRuns.cold();
        double perKelvin = Verdict.lossPerKelvin(night);
        assertThat(Verdict.of(night).missing() / perKelvin / 3600).isBetween(1.40, 1.65);
    }

    @Test
    void aNightWithoutWaterSaysNothingOfWater() {
        String card = NightCard.text(FakeRuns.dry(), US, UnitSystem.US);
        assertThat(card)
                .doesNotContain("boil")
                .doesNotContain("store")
                .doesNotContain("header")
                .doesNotContain("pump");
        assertThat(card).doesNotContain("NaN").doesNotContain("Infinity").doesNotContain("null");
        assertThat(TerminalPlot.night(FakeRuns.dry(), UnitSystem.US, 60, 12))
                .doesNotContain("store")
                .contains("ROOM");
    }

    @Test
    void everyLineFitsTheScreenAndNothingSteersIt() {
        String text = NightCard.text(
                        FakeRuns.hostile(), SI.against(FakeRuns.cold(), "a very long name of a rig"), UnitSystem.SI)
                + SeasonCard.text(FakeRuns.season(), US, UnitSystem.US)
                + TerminalPlot.night(FakeRuns.hostile(), UnitSystem.US, 80, 20)
                + TerminalPlot.season(FakeRuns.season(), UnitSystem.SI, 80, 20);
        for (String line : text.split("\n")) assertThat(line.length()).as(line).isLessThanOrEqualTo(80);
        assertThat(text.chars().filter(c -> c != '\n' && Character.isISOControl(c)))
                .isEmpty();
    }

    @Test
    void dangerComesFirstAndTheLastWordIsOfWhoDecides() {
        List<String> said = Cautions.of(FakeRuns.cold());
        assertThat(said.get(0)).contains("of boiling (coil, 17:00)");
        assertThat(said.get(1)).contains("If the flow stops at 16:24, the water in coil boils in about 6 min");
        assertThat(said.get(said.size() - 1)).contains("local code and a licensed person decide");
        assertThat(Cautions.of(FakeRuns.season(), UnitSystem.US).get(0))
                .contains("BOILS for 34 min (coil)")
                .contains("1.76 lb leaves as steam");
    }

    @Test
    void cautionsGivenStandOnTheCard() {
        CardFacts facts = SI.warning(List.of("The vent is not checked."));
        assertThat(NightCard.text(FakeRuns.warm(), facts, UnitSystem.SI)).contains("! The vent is not checked.");
    }

    /** A difference of temperatures has no offset: 3.43 K is 6.2 °F. */
    @Test
    void differencesHaveNoOffset() {
        assertThat(NightCard.text(FakeRuns.warm(), US, UnitSystem.US)).contains("6.2 F over the limit of 41 F");
    }

    @Test
    void twoNightsStandBesideEachOther() {
        String text = NightCard.compare(FakeRuns.dry(), FakeRuns.cold(), "no water", SI, UnitSystem.SI);
        assertThat(text).contains("no water").contains("now").contains("change");
        assertThat(text).containsPattern("room at 07:30 +8.4 C +8.4 C +same");
        assertThat(text).containsPattern("store mean +- +33 C");
        assertThat(text).containsPattern("hours carried after the fire +all +11.5 h");
    }
}
