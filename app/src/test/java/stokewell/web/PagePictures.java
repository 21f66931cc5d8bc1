package stokewell.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.support.ui.Select;

/**
 * Makes the handbook's pictures of the page. Not one of the tests:
 * {@code mvn -pl engine,app -am test -Dtest=PagePictures -Dsurefire.failIfNoSpecifiedTests=false}.
 */
final class PagePictures {

    private static final Path INTO = Path.of("..", "docs", "pictures");

    @TempDir
    Path folder;

    private static void evening(Browser page) {
        page.settled();
        page.js("""
                const clock = document.querySelector('.scrub input');
                clock.value = 112;
                clock.dispatchEvent(new Event('input', {bubbles: true}));""");
        page.until("the hour", () -> page.text(".clock").equals("17:20"));
    }

    @Test
    void make() throws IOException {
        Files.createDirectories(INTO);
        try (Browser page = Browser.start(folder)) {
            page.enter().at("night/example:boat-shed").see(".drawing svg");
            evening(page);
            page.picture(INTO.resolve("page-night.png"), 1500);

            page.touch("store");
            page.drag("height", 14);
            page.until("saved", () -> page.has("button[aria-label='Take back']:enabled"));
            page.settled();
            page.picture(INTO.resolve("page-store.png"), 1000);

            page.media("prefers-color-scheme", "dark");
            page.at("night/example:joinery").see(".drawing svg");
            evening(page);
            page.picture(INTO.resolve("page-dark.png"), 1000);
            page.media("prefers-color-scheme", "light");

            page.at("safe/example:saddlery").see(".findings");
            page.press("Run the drills");
            page.see(".drills li");
            page.until("the drills", () -> !page.has(".progress"));
            page.js("document.querySelector('.findings').remove()");
            page.picture(INTO.resolve("page-drills.png"), 1100);

            page.at("help/example:boat-shed").see("main");
            page.press("Try the changes");
            page.see(".helps li");
            page.until("the helps", () -> !page.has(".progress"));
            page.picture(INTO.resolve("page-helps.png"), 1000);

            page.at("sensors/example:boat-shed")
                    .see("#readings-file")
                    .sendKeys(Path.of("../examples/readings/boat-shed.csv")
                            .toRealPath()
                            .toString());
            page.press("If the file does not say");
            page.see("#readings-zone").sendKeys("-05:00");
            page.press("Take it in");
            page.see(".taken");
            page.at("fit/example:boat-shed").see("#fit-weather");
            new Select(page.see("#fit-weather")).selectByValue("example:eccc_prince_george_bc_2016h1_hourly.csv");
            page.press("Hold it against the readings");
            page.untilDone("the fit", () -> page.has(".fit-told .made"));
            page.until("rest", () -> !page.has(".busy"));
            page.js("document.querySelectorAll('.places, .fit > .note, .fit > .ask').forEach(e => e.remove())");
            // down to the foot of the first curves
            Number foot = (Number) page.js(
                    "return document.querySelector('.fit-told .pictured').getBoundingClientRect().bottom + scrollY");
            page.picture(INTO.resolve("page-fit.png"), foot.intValue() + 12);

            page.wide(360, 740, true);
            page.at("night/example:saddlery").see(".drawing svg");
            evening(page);
            page.picture(INTO.resolve("page-phone.png"), 1400);
        }
    }
}
