package stokewell.show;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import stokewell.file.UnitSystem;
import stokewell.run.Night;

class PageTest {

    private static CardFacts facts(UnitSystem units) {
        return CardFacts.of(400, units).in("cold & bright").warning(List.of("The <vent> is not checked."));
    }

    private static Document parsed(String html) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
    }

    private static void standsAlone(String html) throws Exception {
        Document page = parsed(html);
        for (String tag : new String[] {"script", "link", "img", "iframe", "object", "image", "use", "foreignObject"}) {
            assertThat(page.getElementsByTagName(tag).getLength()).as(tag).isZero();
        }
        assertThat(html)
                .doesNotContain("http://")
                .doesNotContain("https://")
                .doesNotContain("url(")
                .doesNotContain("@import")
                .doesNotContain("src=");
        assertThat(html).doesNotContain("NaN").doesNotContain("Infinity").doesNotContain("null");
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void everyPageIsWellFormedAndAsksForNothing(UnitSystem units) throws Exception {
        for (Night night : List.of(FakeRuns.cold(), FakeRuns.warm(), FakeRuns.hostile(), FakeRuns.dry())) {
            standsAlone(NightPage.html(night, facts(units), units));
        }
        standsAlone(NightPage.html(FakeRuns.cold(), facts(units).against(FakeRuns.dry(), "<b>dry"), units));
        standsAlone(SeasonPage.html(FakeRuns.season(), facts(units), units));
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void oneSwitchChangesEveryUnit(UnitSystem units) {
        String night = NightPage.html(FakeRuns.cold(), CardFacts.of(400, units), units);
        String season = SeasonPage.html(FakeRuns.season(), CardFacts.of(400, units), units);
        String[] others = units == UnitSystem.US
                ? new String[] {"°C", "\u00a0kg", "\u00a0K", "stere", "\u00a0kW<"}
                : new String[] {"°F", "\u00a0lb", "kBtu", "cord", "\u00a0gal"};
        for (String other : others) assertThat(night + season).doesNotContain(other);
    }

    @Test
    void namesCannotBecomeMarkup() throws Exception {
        String html = NightPage.html(FakeRuns.hostile(), facts(UnitSystem.SI), UnitSystem.SI);
        assertThat(html).doesNotContain("<script").contains("&lt;script&gt;").contains("The &lt;vent&gt; is not");
        NodeList heads = parsed(html).getElementsByTagName("h1");
        assertThat(heads.item(0).getTextContent()).startsWith("<script>alert(\"a&b\")</script>");
    }

    @Test
    void dangerStandsBeforeTheNumbersAndInWords() {
        String html = NightPage.html(FakeRuns.cold(), facts(UnitSystem.SI), UnitSystem.SI);
        assertThat(html.indexOf("DANGER")).isPositive().isLessThan(html.indexOf("class=\"big\""));
        assertThat(html).contains("local code and a licensed person decide");
    }

    @Test
    void thePageIsTheSameEveryTime() {
        CardFacts facts = facts(UnitSystem.US);
        assertThat(NightPage.html(FakeRuns.cold(), facts, UnitSystem.US))
                .isEqualTo(NightPage.html(FakeRuns.cold(), facts, UnitSystem.US));
    }

    @Test
    void thePictureIsAPngWithInkOnIt() throws Exception {
        for (Night night : List.of(FakeRuns.cold(), FakeRuns.dry())) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            NightPicture.png(night, facts(UnitSystem.SI), UnitSystem.SI, out);
            var image = ImageIO.read(new ByteArrayInputStream(out.toByteArray()));
            assertThat(image.getWidth()).isEqualTo(1530);
            int paper = 0;
            for (int x = 0; x < image.getWidth(); x++) {
                if ((image.getRGB(x, 500) & 0xffffff) == Ink.PAPER.light()) paper++;
            }
            assertThat(paper).isBetween(800, 1520);
        }
    }

    @Test
    void thePictureCanBeToldAsSvgToo() throws Exception {
        String svg = NightPicture.drawing(FakeRuns.hostile(), facts(UnitSystem.SI), UnitSystem.SI)
                .svg();
        assertThat(parsed(svg).getElementsByTagName("path").getLength()).isGreaterThan(20);
    }
}
