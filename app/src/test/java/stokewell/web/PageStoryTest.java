package stokewell.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person does with the page, from nothing to a file to take along, and what goes wrong on the way. */
final class PageStoryTest {

    @TempDir
    Path folder;

    private static Browser page;

    @BeforeAll
    static void open(@TempDir Path first) {
        page = Browser.start(first);
    }

    @BeforeEach
    void anew() {
        page.anew(folder);
    }

    @AfterEach
    void online() {
        line(false, 0);
    }

    @AfterAll
    static void close() {
        page.close();
    }

    private String onDisk() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return Files.readString(files.filter(f -> f.toString().endsWith(".yaml"))
                    .findFirst()
                    .orElseThrow());
        }
    }

    private String boatShed() throws IOException {
        String text = new String(
                Browser.class
                        .getResourceAsStream("/stokewell/examples/boat-shed.yaml")
                        .readAllBytes(),
                java.nio.charset.StandardCharsets.UTF_8);
        Files.writeString(folder.resolve("boat-shed.yaml"), text);
        return text;
    }

    @Test
    void fromNothingToAFirstNightADragAPinAMendedFindingAndAFile() throws IOException {
        page.enter();
        page.press("Start with nothing");
        page.see(".start li");
        page.press("Run the first night");
        page.settled();
        assertThat(page.text(".verdict")).contains("night");
        String before = onDisk();

        page.press("Pin this night");
        page.touch("store");
        page.drag("height", 12);
        page.until("the change is on the disk", () -> {
            try {
                return !onDisk().equals(before);
            } catch (IOException e) {
                return false;
            }
        });
        page.settled();
        page.see(".ghost.room");

        page.press("Is it safe?");
        int open = page.driver
                .findElements(org.openqa.selenium.By.cssSelector(".answer"))
                .size();
        assertThat(open).isPositive();
        page.js("document.querySelector('.answer button').click()");
        page.until(
                "one question less",
                () -> page.driver
                                .findElements(org.openqa.selenium.By.cssSelector(".answer"))
                                .size()
                        < open);
        assertThat(onDisk()).contains("safety");

        page.press("Which is better? 1");
        page.see(".compare");
        assertThat(page.driver.findElements(org.openqa.selenium.By.cssSelector(".compare thead th")))
                .hasSize(2);

        page.press("Take it along?");
        page.press("Table");
        page.until("a table among the downloads", () -> {
            try (Stream<Path> files = Files.list(folder)) {
                return files.anyMatch(f -> f.toString().endsWith(".csv"));
            } catch (IOException e) {
                return false;
            }
        });
        assertThat(page.errors()).isEmpty();
    }

    @Test
    void whatIsTakenBackIsTakenBackOnTheDiskAndCommentsStand() throws IOException {
        String filed = boatShed();
        page.enter().at("night/boat-shed").settled();
        page.touch("store");
        page.drag("height", 10);
        page.until("something to take back", () -> page.has("button[aria-label='Take back']:enabled"));
        page.settled();
        String changed = onDisk();
        assertThat(changed).isNotEqualTo(filed).contains("# a stainless dairy tank from an auction");
        page.js("document.activeElement.blur()");
        page.control("z");
        page.until("the old text", () -> same(filed));
        page.settled();
        page.control("y");
        page.until("the new text", () -> same(changed));
    }

    private boolean same(String text) {
        try {
            return onDisk().equals(text);
        } catch (IOException e) {
            return false;
        }
    }

    @Test
    void aReloadAndANewStartOfTheServerLoseNothing() throws IOException {
        String filed = boatShed();
        page.enter().at("night/boat-shed").settled();
        page.press("Pin this night");
        page.see(".pins");
        page.touch("store");
        page.drag("height", 5);
        page.until("something to take back", () -> page.has("button[aria-label='Take back']:enabled"));
        page.settled();
        page.press("Pin this one too");
        page.until("two pins", () -> page.text(".pins").contains("2"));
        page.driver.navigate().refresh();
        page.settled();
        page.restart();
        page.press("Take back");
        page.says("May I come in?");
        page.enter().at("side/boat-shed").see(".compare");
        page.until("both and the bench", () -> page.count(".compare thead th") == 3 && !page.has(".waiting-pins"));
        assertThat(page.text(".compare")).contains("as filed").contains("Store: height");
        page.press("Take back");
        page.until("the old text", () -> same(filed));
    }

    @Test
    void aFailedRequestIsToldAndCanBeTriedAgain() throws IOException {
        boatShed();
        page.enter().at("night/boat-shed").settled();
        line(true, 0);
        page.press("Units: SI. Change to US");
        page.says("The server does not answer.");
        line(false, 0);
        page.press("Try again");
        page.until("told no more", () -> !page.has(".notice"));
        page.settled();
        assertThat(page.text(".big")).contains("°F");
    }

    private static void line(boolean off, int latency) {
        page.driver.executeCdpCommand("Network.enable", Map.of());
        page.driver.executeCdpCommand(
                "Network.emulateNetworkConditions",
                Map.of("offline", off, "latency", latency, "downloadThroughput", -1, "uploadThroughput", -1));
    }

    @Test
    void onASlowLineTheNewestDragWins() throws IOException {
        boatShed();
        page.enter().at("night/boat-shed").settled();
        line(false, 300);
        page.touch("store");
        page.drag("height", 15);
        Object asked = page.js("return String(Number(Number(document.querySelector("
                + "\".sheet input[aria-label='height']\").value).toFixed(2)))");
        page.until("kept", () -> page.has("button[aria-label='Take back']:enabled"));
        page.settled();
        assertThat(page.js("return [...document.querySelectorAll('.sheet .field')].find(f => f.querySelector('label')"
                        + ".textContent === 'height').querySelector('.typed input').value"))
                .isEqualTo(asked);
    }

    @Test
    void anEditElsewhereIsNeverOverwrittenUnasked() throws IOException {
        String filed = boatShed();
        page.enter().at("night/boat-shed").settled();
        Files.writeString(
                folder.resolve("boat-shed.yaml"), filed.replace("Tern Ledge boat shed", "Tern Ledge long shed"));
        page.touch("store");
        page.drag("height", 5);
        page.says("The rig was changed elsewhere");
        assertThat(onDisk()).contains("Tern Ledge long shed").contains("5 ft 6 in");
        page.press("Take what is on the disk");
        page.says("Tern Ledge long shed");
    }

    @Test
    void aDragIsPaintedSoonAfterTheHandRests() throws Exception {
        boatShed();
        page.enter().at("night/boat-shed").settled();
        page.touch("store");
        page.slider("height");
        dragged("as soon as the page is there");
        Thread.sleep(8000);
        dragged("after looking at it for some seconds");
    }

    private static void dragged(String when) {
        page.js("performance.clearMeasures('stokewell-drag')");
        page.driver.executeAsyncScript("""
                const done = arguments[0], hand = document.querySelector(".sheet input[aria-label='height']");
                let moves = 0;
                const clock = setInterval(() => {
                  hand.value = Number(hand.value) + (moves % 20 < 10 ? 1 : -1) * Number(hand.step);
                  hand.dispatchEvent(new Event('input', {bubbles: true}));
                  if (++moves === 60) { clearInterval(clock); setTimeout(done, 1500); }
                }, 50);""");
        @SuppressWarnings("unchecked")
        List<Number> taken = (List<Number>) page.js(
                "return performance.getEntriesByName('stokewell-drag').map(m => m.duration).sort((a, b) => a - b)");
        assertThat(taken).isNotEmpty();
        double median = taken.get(taken.size() / 2).doubleValue();
        double late = taken.get((int) (0.95 * (taken.size() - 1))).doubleValue();
        System.out.printf(
                "drag %s: %d answers painted, median %.0f ms, 95th percentile %.0f ms from the hand's last move%n  %s%n",
                when, taken.size(), median, late, page.js("""
                        const all = performance.getEntriesByName('stokewell-drag').map(m => ({...m.detail, paint: m.duration - m.detail.waited - m.detail.answered - m.detail.drawn}));
                        const of = (name, share) => all.map(d => d[name]).sort((a, b) => a - b)[Math.floor(share * (all.length - 1))].toFixed(0);
                        return ['waited', 'answered', 'server', 'drawn', 'paint'].map(n => n + ' ' + of(n, .5) + '/' + of(n, .95)).join(', ');"""));
    }
}
