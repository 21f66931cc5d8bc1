package stokewell.show;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import stokewell.file.UnitSystem;
import stokewell.fit.Cause;
import stokewell.fit.Figure;
import stokewell.fit.Fit;
import stokewell.fit.Knob;
import stokewell.fit.Learnt;
import stokewell.fit.Spot;
import stokewell.fit.Watch;
import stokewell.rig.Changed;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a fit says, word for word, on card, page and JSON. */
class FitWordsTest {

    private static final Watch.Suspect PUMP = FakeFits.suspect(new Cause.Turned(Knob.PUMP), Math.log(0.5), 0.1, 0.6);
    private static final Watch.Suspect PICKUP =
            FakeFits.suspect(new Cause.Turned(Knob.PICKUP), Math.log(0.6), 0.1, 0.35);

    private static List<String> sentences(UnitSystem units) {
        return new FitWords(FakeFits.quiet(), Measure.plain(units), "+/-").sentences();
    }

    private static List<String> told(Fit fit) {
        return new FitWords(fit, Measure.plain(UnitSystem.SI), "+/-").sentences();
    }

    /** Nights foretold 14 K wrong where "as the day before" is 0.2 K wrong: the file is of another rig, and nothing is advised. */
    @Test
    void aFileOfAnotherRigIsToldBeforeAllElseAndNothingElseIs() {
        Fit astray = Changed.with(
                FakeFits.changed(PUMP), "holdout", List.of(new Fit.Holdout(Spot.STORE_TOP, 48, 14.41, 0.18)));
        assertThat(told(astray))
                .singleElement()
                .satisfies(s -> assertThat(s)
                        .startsWith("The rig file does not describe this rig")
                        .contains("store top 14.4 K wrong", "Believe none"));
        assertThat(change(astray, UnitSystem.SI)).contains("cannot tell").doesNotContain("Something changed");
        Fit better = Changed.with(astray, "holdout", List.of(new Fit.Holdout(Spot.STORE_TOP, 48, 6, 5)));
        assertThat(told(better)).hasSameSizeAs(told(FakeFits.changed(PUMP)));
    }

    /** A jacket turned as far as its key goes. */
    @Test
    void aNumberAtItsLimitIsTold() {
        Fit held = Changed.with(FakeFits.quiet(), "factors", List.of(new Fit.Factor(Knob.JACKET, 6.5, 2, 20, 0.5)));
        assertThat(told(held).get(0)).startsWith("As far as a fit may go, and not far enough: jacket.");
        assertThat(told(FakeFits.quiet()).get(0)).startsWith("Your store loses");
    }

    @Test
    void aLossThatIsHardlyToldHasNoErrorAndBringsNoFoam() {
        Fit hardly =
                Changed.with(FakeFits.quiet(), "factors", List.of(new Fit.Factor(Knob.JACKET, 1.5, 0.6, 3.75, 0.1)));
        assertThat(told(hardly).get(0))
                .isEqualTo(
                        "These readings hardly tell what your store loses: 410 W at 70 C by the best fit, but 0.4 to 2.5 "
                                + "times that would do as well.");
    }

    @Test
    void theStoresLossIsToldWithWhatFoamWouldBring() {
        assertThat(sentences(UnitSystem.SI).get(0))
                .isEqualTo(
                        "Your store loses 410 +/- 40 W at 70 C, 62 +/- 5 % of it through the base; 50 mm of foam at its"
                                + " base brings it to 190 +/- 25 W and leaves the store 2.1 +/- 0.4 K warmer in the morning.");
        // 410 W x 3.412142; 2.1 K x 1.8
        assertThat(sentences(UnitSystem.US).get(0))
                .startsWith(
                        "Your store loses 1399 +/- 136 Btu/h at 158 F, 62 +/- 5 % of it through the base; 2 in of foam")
                .contains("to 648 +/- 85 Btu/h")
                .contains("3.8 +/- 0.7 F");
    }

    @Test
    void aLoopThatMovesAThirdIsToldWithItsInterval() {
        for (UnitSystem units : UnitSystem.values()) {
            assertThat(sentences(units).get(2))
                    .isEqualTo("The loop moves 33 % of what the pump should (29 % to 37 %): look for air, a valve half"
                            + " shut, a full strainer.");
        }
    }

    @Test
    void whereTheStoresHeatAndTheShopsWentIsToldWithItsDays() {
        assertThat(sentences(UnitSystem.SI).get(1))
                .isEqualTo(
                        "Of the 90 +/- 4 kWh that the store gave in those 8 days, 52 +/- 6 % went through its base into"
                                + " the floor, 11 +/- 2 % through jacket and lid; the rest is what you drew from it.");
        assertThat(sentences(UnitSystem.SI))
                .contains(
                        "Of the heat that left the shop in those 8 days: out of open doors 48 +/- 2 %, through the walls"
                                + " 40 +/- 3 %, through the floor 12 +/- 2 %.");
    }

    @Test
    void doorsThatCostMoreThanWallsAreToldOnlyWhereTheIntervalsAgree() {
        assertThat(sentences(UnitSystem.SI))
                .anySatisfy(s -> assertThat(s)
                        .startsWith("The doors cost more than the walls: 120 +/- 6 kWh against 100 +/- 8 kWh"));
        assertThat(sentences(UnitSystem.US))
                .anySatisfy(s -> assertThat(s)
                        .startsWith("The doors cost more than the walls: ")
                        .doesNotContain("kWh"));
        var l = FakeFits.learnt();
        var unsure = new Learnt(
                l.store(),
                l.foam(),
                l.loop(),
                l.gave(),
                List.of(
                        new Learnt.Cost(
                                "open doors",
                                new Figure(110 * FakeFits.KWH, 20 * FakeFits.KWH),
                                new Figure(0.46, 0.04)),
                        l.costs().get(1)),
                l.days());
        assertThat(new FitWords(FakeFits.fit(unsure, null), Measure.plain(UnitSystem.SI), "+/-").sentences())
                .anySatisfy(s -> assertThat(s).startsWith("The doors may cost as much as the walls"))
                .noneSatisfy(s -> assertThat(s).contains("more than the walls"));
    }

    private static String change(Fit fit, UnitSystem units) {
        return new ChangeWords(fit, Measure.plain(units), "+/-").changed();
    }

    @Test
    void aChangeIsToldWithDayCauseAndLikelihood() {
        Watch.Suspect sure = FakeFits.suspect(new Cause.Turned(Knob.PUMP), Math.log(0.5), 0.1, 0.97);
        assertThat(change(FakeFits.changed(sure, PICKUP), UnitSystem.SI))
                .isEqualTo(
                        "Something changed about Sat 20 Jan (from Fri 19 Jan to Sat 20 Jan is possible): the pump drives"
                                + " 50 % (45 % to 55 %) of before: slipping, air, a full strainer, a valve half shut (likelihood"
                                + " 97 %). A change of this size was told after 4 days in half of a few trial shops, and"
                                + " not within 8 days in one of ten or more. In a month's readings of 60 trial shops in which"
                                + " nothing changed, 4 were told of a change: look before you mend.");
        assertThat(change(FakeFits.quiet(), UnitSystem.SI)).startsWith("Nothing changed");
    }

    @Test
    void suspectsThatCannotBeToldApartAreAllNamedWithWhatToLookAt() {
        assertThat(change(FakeFits.changed(PUMP, PICKUP), UnitSystem.SI))
                .contains("the pump drives 50 %")
                .contains("; or the pickup is 60 %")
                .contains("cannot tell one from the other")
                .contains("Read the flow pipe in full fire");
    }

    @Test
    void aSensorIsToldInTheUnitsAskedFor() {
        Watch.Suspect moved = FakeFits.suspect(new Cause.Drifted(Spot.ROOM), 2, 0.5, 1);
        assertThat(change(FakeFits.changed(moved), UnitSystem.SI)).contains("reads 2.0 K +/- 0.5 K more than before");
        assertThat(change(FakeFits.changed(moved), UnitSystem.US)).contains("reads 3.6 F +/- 0.9 F more than before");
    }

    @Test
    void whatTheReadingsCannotTellComesWithTheSensorThatWould() {
        List<String> closely = new ChangeWords(FakeFits.quiet(), Measure.plain(UnitSystem.SI), "+/-").closely();
        assertThat(closely.get(0)).contains("is 1.02 to 1.66 times the file");
        assertThat(closely.get(1))
                .startsWith("These readings do not tell the heat lost through the store's base (base)")
                .contains("What would tell: a sensor at slab (interval 37 % as wide); as many days again");
        assertThat(new FitWords(FakeFits.quiet(), Measure.plain(UnitSystem.SI), "+/-")
                        .confused()
                        .get(0))
                .isEqualTo("These readings cannot tell \"jacket\" from \"base\": more of the one looks like more of the"
                        + " other.");
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void theCardIsPlainTextThatFits(UnitSystem units) {
        String card = FitCard.text(FakeFits.changed(PUMP, PICKUP), FakeFits.placing(), units);
        assertThat(card.lines()).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(80));
        assertThat(card).matches("(?s)[\\x00-\\x7F]*");
        assertThat(card).contains("! Something changed about Sat 20 Jan").contains("local code and a licensed person");
        assertThat(card).doesNotContain("NaN").doesNotContain("Infinity");
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void thePageIsWellFormedStandsAloneAndShowsReadingsRestAndDays(UnitSystem units) throws Exception {
        for (Fit fit : List.of(FakeFits.quiet(), FakeFits.changed(PUMP, PICKUP))) {
            String html = FitPage.html(fit, FakeFits.placing(), units);
            Document page = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
            for (String tag : new String[] {"script", "link", "img", "iframe"}) {
                assertThat(page.getElementsByTagName(tag).getLength()).as(tag).isZero();
            }
            // two sensors and the days, each for a desk and for a phone
            assertThat(page.getElementsByTagName("svg").getLength()).isEqualTo(6);
            assertThat(html).doesNotContain("NaN").doesNotContain("Infinity").doesNotContain("https://");
            assertThat(html)
                    .contains("Read and modelled: store top")
                    .contains("Day by day")
                    .contains("Nights kept back");
            assertThat(html).contains("cannot tell").containsOnlyOnce(Cautions.DECIDES);
            assertThat(html).contains("Raum &amp; Bank");
        }
    }

    @Test
    void theJsonHoldsChangeProfilesAndAdvice() {
        StringWriter out = new StringWriter();
        FitJson.write(FakeFits.changed(PUMP, PICKUP), FakeFits.placing(), out);
        JsonNode json = JsonMapper.builder().build().readTree(out.toString());
        JsonNode what = json.get("changed").get("what");
        assertThat(what.get("suspects")).hasSize(2);
        assertThat(what.get("suspects").get(0).get("cause").asString()).isEqualTo("pump");
        assertThat(what.get("suspects").get(0).get("size").asDouble()).isEqualTo(0.5);
        assertThat(what.get("named").asString()).isEqualTo("false");
        assertThat(json.get("changed").get("days")).hasSize(16);
        assertThat(json.get("profiles").get(1).get("flat").asString()).isEqualTo("true");
        assertThat(json.get("profiles").get(1).get("high").isNull()).isTrue();
        assertThat(json.get("wouldTell").get(0).get("what").asString()).isEqualTo("sensor at slab");
        assertThat(json.get("learnt").get("store").get("lossW").get("half90").asDouble())
                .isEqualTo(40);
        assertThat(json.get("sentences").toString()).contains("Something changed");
        StringWriter quiet = new StringWriter();
        FitJson.write(FakeFits.quiet(), FakeFits.placing(), quiet);
        assertThat(JsonMapper.builder()
                        .build()
                        .readTree(quiet.toString())
                        .get("changed")
                        .get("what")
                        .isNull())
                .isTrue();
    }

    @Test
    void aChangeIsToldWithItsDelayAndTheRateOfFalseAlarms() {
        String pump =
                new ChangeWords(FakeFits.fit(FakeFits.learnt(), null), Measure.plain(UnitSystem.SI), "+/-").changed();
        assertThat(pump).contains("within 8");
        assertThat(Delay.of(PUMP.change()))
                .isEqualTo("A change of this size was told after 4 days in half of a few trial shops, and not within 8 "
                        + "days in one of ten or more.");
        assertThat(Delay.of(stokewell.fit.Change.lasting(new Cause.Turned(Knob.PICKUP), 0, Math.log(0.4))))
                .isEqualTo(
                        "A change of this size was told after 1 day in half of a few trial shops and in nine of ten.");
        assertThat(Delay.of(stokewell.fit.Change.lasting(new Cause.Turned(Knob.JACKET), 0, Math.log(3))))
                .contains("less than half");
        assertThat(Delay.of(stokewell.fit.Change.lasting(new Cause.Turned(Knob.BURN), 0, 1)))
                .isEmpty();
        assertThat(Delay.falseAlarms()).contains("60 trial shops").contains("4 were told");
    }
}
