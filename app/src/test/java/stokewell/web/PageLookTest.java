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
        page.at(place).see("main");
        if (place.equals("home")) page.see(".cards");
        else page.see("nav a[aria-current]");
        page.until("rest", () -> !page.has(".busy") && !page.has(".waiting"));
    }

    @Test
    void everyViewPassesTheAccessibilityEngineOnLightAndDarkPaper() throws IOException {
        for (String paper : List.of("light", "dark")) {
            page.media("prefers-color-scheme", paper);
            for (String place : PLACES) {
                come(place);
                assertThat(page.violations())
                        .as(place + " on " + paper + " paper")
                        .isEmpty();
            }
        }
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
