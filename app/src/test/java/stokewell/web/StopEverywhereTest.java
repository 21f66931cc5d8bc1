package stokewell.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.support.ui.Select;

/** A rig on which no fire may be lit says so on every view and in every file; under a hand that drags it, too. */
final class StopEverywhereTest {

    private static final List<String> VIEWS = List.of("night", "safe", "help", "winter", "side", "share");

    /** The saddlery with a valve in its vent. */
    private static final String VALVED = "\nsafety: {valve to open: yes}\n";

    @TempDir
    static Path folder;

    private static Browser page;

    @BeforeAll
    static void open() throws IOException {
        String text = new String(
                Browser.class
                        .getResourceAsStream("/stokewell/examples/saddlery.yaml")
                        .readAllBytes(),
                StandardCharsets.UTF_8);
        Files.writeString(folder.resolve("valved.yaml"), text + VALVED);
        Files.copy(Path.of("src/test/resources/jobs/spoke-barn.yaml"), folder.resolve("barn.yaml"));
        page = Browser.start(folder).enter();
    }

    @AfterAll
    static void close() {
        page.close();
    }

    private static void come(String view) {
        page.turnTo(view + "/valved");
        page.see("nav a[aria-current][href='#" + view + "']");
        page.until("rest", () -> !page.has(".busy") && !page.has(".waiting"));
    }

    @Test
    void everyViewBeginsWithTheStopAndWhatToDo() {
        for (String view : VIEWS) {
            come(view);
            assertThat(page.text(".banner.stop")).as(view).contains("STOP").contains("Do not light a fire");
            if (!view.equals("safe"))
                assertThat(page.text(".banner.stop")).as(view).contains("Do:");
        }
        page.driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
        come("night");
        assertThat(page.text(".banner.stop")).as("on paper").contains("STOP");
        page.driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", ""));
    }

    /** The barn boils on a normal day, and its file names no weather by the hour. */
    @Test
    void aWinterThatNamesNoWeatherAsksForSome() {
        page.turnTo("winter/barn");
        page.see("nav a[aria-current][href='#winter']");
        page.until("the choice", () -> page.has("#winter-weather option"));
        page.until("rest", () -> !page.has(".busy") && !page.has(".waiting"));
        assertThat(page.text("#winter-weather")).startsWith("choose the place most like yours");
        page.press("Run the winter");
        assertThat(page.text("[role=alert].fault")).contains("this rig names none");
        new Select(page.see("#winter-weather")).selectByValue("example:pvgis_tmy_45n_8e_2005_2023.csv");
        page.press("Run the winter");
        page.untilDone("the winter", () -> page.has(".mornings"));
        assertThat(page.has("[role=alert].fault")).isFalse();
        assertThat(page.text(".banner.stop")).contains("Do not light a fire");
    }

    @Test
    void aHandThatMovesNeverHidesIt() {
        come("night");
        page.touch("store");
        page.slider("jacket");
        page.driver.executeAsyncScript("""
                const done = arguments[0], hand = document.querySelector(".sheet input[aria-label='jacket']");
                window.without = 0; window.anew = 0;
                const watch = new MutationObserver(() => {
                  if (!document.querySelector('.banner.stop')) window.without++;
                  if (document.querySelector('.banner .anew')) window.anew++;
                });
                watch.observe(document.body, {subtree: true, childList: true, characterData: true, attributes: true});
                let moves = 0;
                const clock = setInterval(() => {
                  hand.value = Number(hand.value) + Number(hand.step);
                  hand.dispatchEvent(new Event('input', {bubbles: true}));
                  if (++moves === 12) { clearInterval(clock); setTimeout(() => { hand.dispatchEvent(new Event('change', {bubbles: true})); setTimeout(done, 800); }, 300); }
                }, 60);""");
        page.until("saved", () -> page.has("button[aria-label='Take back']:enabled"));
        page.settled();
        assertThat(page.js("return window.without")).isEqualTo(0L);
        assertThat((Long) page.js("return window.anew")).isPositive();
        assertThat(page.has(".banner .anew")).isFalse();
        assertThat(page.text(".banner.stop")).contains("STOP");
    }

    @Test
    void everyFileSaysIt() throws Exception {
        for (String units : List.of("si", "us")) {
            Map<String, Object> ask = Map.of("rig", "valved", "units", units);
            assertThat(new String(page.export("html", ask), StandardCharsets.UTF_8))
                    .as("html")
                    .contains("STOP");
            assertThat(new String(page.export("csv", ask), StandardCharsets.UTF_8))
                    .as("csv")
                    .startsWith("# STOP, do not light a fire");
            assertThat(Body.JSON.readTree(page.export("json", ask)).path("stop").asBoolean())
                    .isTrue();
            assertThat(page.export("png", ask)).as("a picture").startsWith(0x89, 'P', 'N', 'G');
            try (PDDocument sheet = Loader.loadPDF(page.export("pdf", ask))) {
                for (int i = 1; i <= sheet.getNumberOfPages(); i++) {
                    PDFTextStripper words = new PDFTextStripper();
                    words.setStartPage(i);
                    words.setEndPage(i);
                    assertThat(words.getText(sheet)).as("page " + i).containsPattern("DO NOT .*stop|STOP");
                }
            }
        }
    }
}
