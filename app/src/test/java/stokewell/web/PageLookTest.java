package stokewell.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.PrintsPage;
import org.openqa.selenium.print.PrintOptions;

/** The page can be read and used by everybody, on a desk, on a phone, at night and on paper. */
final class PageLookTest {

    private static final List<String> PLACES = List.of(
            "night/example:boat-shed",
            "safe/example:boat-shed",
            "help/example:boat-shed",
            "winter/example:boat-shed",
            "side/example:boat-shed",
            "sensors/example:boat-shed",
            "fit/example:boat-shed",
            "share/example:boat-shed",
            "home");

    @TempDir
    static Path folder;

    private static Browser page;

    @BeforeAll
    static void open() {
        page = Browser.start(folder).enter();
    }

    @AfterAll
    static void close() {
        page.close();
    }

    @BeforeEach
    void atADeskOnLightPaper() {
        page.wide(1200, 900, false);
        page.media("prefers-color-scheme", "light");
    }

    private static void come(String place) {
        page.turnTo(place);
        page.see("main");
        if (place.equals("home")) page.see(".cards");
        else page.see("nav a[aria-current][href='#" + place.substring(0, place.indexOf('/')) + "']");
        page.until("rest", () -> !page.has(".busy") && !page.has(".waiting"));
    }

    @Test
    void everyViewPassesTheAccessibilityEngineOnLightAndDarkPaper() throws IOException {
        for (String place : PLACES) {
            come(place);
            for (String paper : List.of("light", "dark")) {
                page.media("prefers-color-scheme", paper);
                assertThat(page.violations())
                        .as(place + " on " + paper + " paper")
                        .isEmpty();
            }
        }
    }

    @Test
    void theAccessibilityEngineSeesWhatIsWrong() throws IOException {
        come("home");
        page.js(
                "document.querySelector('main').insertAdjacentHTML('beforeend', '<img src=\"look/mark.svg\" id=\"bad\">')");
        assertThat(page.violations()).contains("image-alt");
        page.js("document.getElementById('bad').remove()");
    }

    /** On both papers, and on a phone nothing reaches out. */
    private static void sound(String what) throws IOException {
        for (String paper : List.of("light", "dark")) {
            page.media("prefers-color-scheme", paper);
            assertThat(page.violations()).as(what + " on " + paper + " paper").isEmpty();
        }
        page.media("prefers-color-scheme", "light");
        page.wide(360, 740, true);
        assertThat(page.reachesOut()).as(what + " on a phone").isFalse();
        page.wide(1200, 900, false);
    }

    private static void worked(String what) {
        page.untilDone("the work is done", () -> page.has(what) && !page.has(".progress"));
    }

    @Test
    void whatComesOfLongWorkPassesTheAccessibilityEngine() throws IOException {
        come("safe/example:saddlery");
        page.press("Run the drills");
        worked(".drills li");
        assertThat(page.text(".drills .guards"))
                .contains("gravity circulation: boils in ", " without it, never with it; keeps ");
        sound("drills");
        come("help/example:saddlery");
        page.press("Try the changes");
        worked(".helps li");
        sound("changes");
        come("night/example:saddlery");
        page.press("Pin this night");
        page.see(".pins");
        come("side/example:saddlery");
        page.see(".compare");
        sound("side by side");
        page.press("Drop 1. as filed");
    }

    @Test
    void aWinterIsWatchedToItsEndOrStopped() throws IOException {
        come("winter/example:joinery");
        page.press("Run the winter", "Stop");
        page.says("Stopped.");
        page.press("Run it again");
        worked(".mornings li");
        assertThat(page.count(".month-table tbody tr")).isGreaterThanOrEqualTo(6);
        assertThat(page.text(".big")).contains("kg");
        sound("winter");
    }

    @Test
    void theWayInAndTheQuestionsPassTheAccessibilityEngine() throws IOException {
        come("home");
        page.press("Start with nothing");
        page.see(".start li");
        sound("questions");
        page.turnTo("join");
        page.see("#code");
        sound("the way in");
    }

    @Test
    void everyControlIsReachedByTheTabKeyAndShowsIt() {
        come("night/example:boat-shed");
        page.touch("store");
        page.see(".sheet");
        page.js("document.activeElement.blur(); window.scrollTo(0, 0)");
        long controls = (Long) page.js("""
                window.reached = new Set();
                window.dim = [];
                document.addEventListener('focusin', e => {
                  window.reached.add(e.target);
                  if (getComputedStyle(e.target).outlineStyle === 'none') window.dim.push(e.target.outerHTML.slice(0, 90));
                });
                window.wanted = [...document.querySelectorAll('button, a[href], input, select, summary, [tabindex="0"]')]
                  .filter(n => !n.disabled && n.getClientRects().length && !n.closest('details:not([open]) > :not(summary)'));
                return window.wanted.length;""");
        for (int i = 0; i < controls + 10; i += 10) page.keys(Keys.TAB, 10);
        assertThat((List<?>) page.js(
                        "return window.wanted.filter(n => !window.reached.has(n)).map(n => n.outerHTML.slice(0, 120))"))
                .as("not reached")
                .isEmpty();
        assertThat((List<?>) page.js("return window.dim"))
                .as("no sign of the focus")
                .isEmpty();
        page.key(Keys.ESCAPE);
    }

    @Test
    void whoAsksForLessMotionHasNone() {
        page.media("prefers-reduced-motion", "reduce");
        come("night/example:boat-shed");
        Object moving = page.js("return document.getAnimations().filter(a => a.playState === 'running').length");
        page.media("prefers-reduced-motion", "");
        assertThat(moving).isEqualTo(0L);
    }

    @Test
    void aPartsSheetPassesTheAccessibilityEngine() throws IOException {
        come("night/example:boat-shed");
        page.touch("store");
        page.see(".sheet");
        assertThat(page.violations()).isEmpty();
    }

    @Test
    void nothingReachesOutOfAPhoneOf360Pixels() {
        page.wide(360, 740, true);
        for (String place : PLACES) {
            come(place);
            assertThat(page.reachesOut()).as(place).isFalse();
        }
        page.at("night/example:joinery").settled();
        assertThat(page.reachesOut()).isFalse();
        page.touch("store");
        page.see(".sheet");
        assertThat(page.reachesOut()).isFalse();
    }

    @Test
    void thePaperTurnsDarkByTheDeviceAndByChoice() {
        page.media("prefers-color-scheme", "dark");
        come("home");
        String ground = "return getComputedStyle(document.documentElement).backgroundColor";
        assertThat(page.js(ground)).isEqualTo("rgb(29, 26, 22)");
        page.press("Light or dark paper");
        page.until("light paper", () -> page.js(ground).equals("rgb(247, 241, 227)"));
        page.js("localStorage.clear()");
    }

    @Test
    void thePrintedPageHoldsTheRigAndLeavesTheControlsOut() {
        come("night/example:boat-shed");
        page.driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
        assertThat(page.js("return getComputedStyle(document.querySelector('nav')).display"))
                .isEqualTo("none");
        assertThat(page.js("return getComputedStyle(document.querySelector('.drawing')).display"))
                .isEqualTo("block");
        page.driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", ""));
        assertThat(((PrintsPage) page.driver)
                        .print(new PrintOptions())
                        .getContent()
                        .length())
                .isGreaterThan(20_000);
    }

    @Test
    void everyPartIsReachedAndOpenedByTheKeyboard() {
        come("night/example:boat-shed");
        page.js("document.querySelector(\".drawing [data-part='store']\").focus()");
        page.key(Keys.ENTER);
        page.see(".sheet");
        page.until(
                "the sheet's name has the focus",
                () -> "sheet-name".equals(page.js("return document.activeElement.id")));
        page.key(Keys.ESCAPE);
        page.until("closed", () -> !page.has(".sheet"));
    }
}
