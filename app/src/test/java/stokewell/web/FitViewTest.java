package stokewell.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** A person brings his logger's file, says where a sensor sits, fits and reads what came of it. The readings are invented. */
final class FitViewTest {

    private static final String WEATHER = "example:eccc_prince_george_bc_2016h1_hourly.csv";

    @TempDir
    Path folder;

    /** Sixty hours of the boat shed's invented readings, with one sensor whose name says nothing. */
    private Path log() throws IOException {
        List<String> lines = Files.readAllLines(Path.of("../examples/readings/boat-shed.csv"));
        String all = lines.stream()
                .filter(line -> line.startsWith("time") || line.compareTo("2016-01-22 19:00") < 0)
                .map(line -> line.replace("store bottom (C)", "probe 3 (C)"))
                .collect(Collectors.joining("\n", "", "\n"));
        return Files.writeString(folder.resolve("log.csv"), all);
    }

    private static void choose(Browser page, String id, String word) {
        new Select(page.see("#" + id)).selectByValue(word);
    }

    @Test
    void readingsAreBroughtFittedAndRead() throws IOException {
        Path log = log();
        try (Browser page = Browser.start(folder)) {
            page.enter().at("fit/example:boat-shed").says("There are no readings yet");
            assertThat(page.violations()).isEmpty();
            page.press("Bring a logger's file");
            WebElement file = page.see("#readings-file");
            file.sendKeys(log.toString());
            page.driver.findElement(By.cssSelector(".intake summary")).click();
            page.see("#readings-zone").sendKeys("-05:00");
            page.press("Take it in");
            page.says("log.csv: 6 sensors");
            page.see(".places select");
            page.see(".week");
            look(page, "sensors");

            page.press("Hold the rig against these readings");
            int places = page.count(".places select");
            assertThat(places).isEqualTo(5);
            WebElement probe = page.driver.findElement(By.xpath("//li[label='probe 3']//select"));
            new Select(probe).selectByValue("store bottom");
            page.until("said", () -> page.text(".places").contains("as you said"));
            page.until("the weather files", () -> page.has("#fit-weather"));
            choose(page, "fit-weather", WEATHER);
            page.press("Hold it against the readings", "Stop");
            page.says("Stopped.");
            choose(page, "fit-weather", WEATHER);
            page.press("Once more");
            page.untilDone("the fit", () -> page.has(".fit-told"));
            page.until("rest", () -> !page.has(".busy") && !page.has(".progress"));
            assertThat(page.text(".fit-told"))
                    .contains("What was learnt", "Read and modelled: room", "Day by day", "probe 3", "°C");
            assertThat(page.count(".fit-told .rows tbody tr")).isGreaterThan(8);
            assertThat(page.count(".kept li")).isEqualTo(1);
            look(page, "fit");

            page.press("Units: SI. Change to US");
            page.until("in °F", () -> page.text(".fit-told").contains("°F"));
            assertThat(page.text(".fit-told .verdict")).doesNotContain("°C");
            page.restart();
            page.enter().at("fit/example:boat-shed").see(".kept li");
            page.driver.findElement(By.cssSelector(".kept button")).click();
            page.see(".fit-told");
            assertThat(page.text(".fit-told"))
                    .contains("The curves are not kept")
                    .doesNotContain("Day by day");
            assertThat(page.errors()).isEmpty();
        }
    }

    /** On both papers and on a phone. */
    private static void look(Browser page, String what) throws IOException {
        for (String paper : List.of("light", "dark")) {
            page.media("prefers-color-scheme", paper);
            assertThat(page.violations()).as(what + " on " + paper + " paper").isEmpty();
        }
        page.media("prefers-color-scheme", "light");
        page.wide(360, 740, true);
        assertThat(page.reachesOut()).as(what + " on a phone").isFalse();
        String pictures = System.getProperty("stokewell.pictures");
        if (pictures != null) page.picture(Path.of(pictures, what + "-phone.png"), 6000);
        page.wide(1200, 900, false);
        if (pictures != null) page.picture(Path.of(pictures, what + ".png"), 6000);
    }

    @Test
    void woodBeforeAndAfterIsComparedInBothUnits() throws IOException {
        try (Browser page = Browser.start(folder)) {
            page.enter();
            for (String side : List.of("before", "after")) {
                Path table = Path.of("../examples/readings/boat-shed-" + side + ".csv")
                        .toRealPath();
                page.at("sensors/example:boat-shed").see("#readings-file").sendKeys(table.toString());
                page.press("Take it in");
                page.see(".taken");
            }
            page.at("fit/example:boat-shed").see("#saved-change");
            page.js("document.getElementById('saved-change').value = '2016-01-31'");
            page.press("Compare the wood");
            page.see(".saved-told");
            assertThat(page.text(".saved-told .verdict")).contains("% less wood than before");
            assertThat(page.text(".saved-told")).contains("kg", "How sure it is");
            look(page, "saved");
            page.press("Units: SI. Change to US");
            page.until("in lb", () -> page.text(".saved-told").contains("lb"));
            assertThat(page.text(".saved-told")).doesNotContain(" kg");
            assertThat(page.errors()).isEmpty();
        }
    }

    private static Caller.Answer take(Caller caller, String name, String table) {
        return caller.send("PUT", "/api/readings/" + name, table, Map.of("Content-Type", "text/csv"));
    }

    @Test
    void whatIsNoTableIsRefusedAndNothingIsKept() throws IOException {
        try (Caller caller = new Caller(folder)) {
            String good = "time,room (C)\n2026-01-01 00:00,20\n2026-01-01 01:00,21\n";
            assertThat(take(caller, "..%2fshop.csv", good).status()).isIn(400, 404);
            assertThat(take(caller, "log.exe", good).code()).isEqualTo("request");
            assertThat(take(caller, ".hidden.csv", good).code()).isEqualTo("request");
            Caller.Answer broken = take(caller, "log.csv", good + "2026-01-01 02:00,none of it\n");
            assertThat(broken.status()).isEqualTo(422);
            assertThat(broken.code()).isEqualTo("readings");
            assertThat(take(caller, "log.csv", "\u0000\u0001\u0002").status()).isEqualTo(422);
            assertThat(take(caller, "log.csv", "").status()).isIn(400, 422);
            assertThat(take(caller, "log.csv?zone=Nowhere", good).code()).isEqualTo("request");
            assertThat(take(caller, "log.csv?dates=ydm", good).code()).isEqualTo("request");
            assertThat(take(caller, "log.csv?unit=X", good).code()).isEqualTo("request");
            assertThat(caller.send("PUT", "/api/readings/log.csv", good, Map.of("X-Stokewell", ""))
                            .code())
                    .isEqualTo("origin");
            assertThat(caller.put("/api/readings/log.csv", Map.of("a", "b")).status())
                    .isEqualTo(415);
            assertThat(caller.get("/api/fits").json().path("fits").size()).isZero();
            assertThat(take(caller, "log.csv", good).status()).isEqualTo(201);
            Caller.Answer again = take(caller, "log.csv", good);
            assertThat(again.json().path("changed").asBoolean()).isFalse();
            assertThat(caller.get("/api/shop").json().path("sensors").size()).isEqualTo(1);
            assertThat(caller.errors()).isEmpty();
        }
    }

    @Test
    void namesInATableAreWordsAndNoMarkup() {
        String name = "<img src=x onerror=alert(1)>";
        String table = "time," + name + " (C)\n2026-01-01 00:00,20\n2026-01-01 01:00,21\n2026-01-01 02:00,20\n";
        try (Browser page = Browser.start(folder)) {
            try (Caller caller = new Caller(folder)) {
                assertThat(take(caller, "log.csv", table).status()).isEqualTo(201);
            }
            page.enter().at("sensors/example:boat-shed").see(".week");
            assertThat(page.text(".sensors")).contains(name);
            assertThat(page.has("main img")).isFalse();
        }
    }

    @Test
    void aFitAsksForWhatIsMissingAndReadsNothingElse() throws IOException {
        Files.writeString(folder.resolve("secret..txt"), "the secret");
        Map<String, Object> fit = Map.of("kind", "fit", "rig", "example:boat-shed");
        try (Caller caller = new Caller(folder)) {
            assertThat(caller.post("/api/jobs", fit).code()).isEqualTo("readings");
            assertThat(caller.get("/api/fits/1").status()).isEqualTo(404);
            assertThat(caller.get("/api/fits/..%2f1").status()).isIn(400, 404);
            take(caller, "log.csv", Files.readString(log()));
            assertThat(with(caller, fit, "from", "secret..txt").code()).isEqualTo("request");
            assertThat(with(caller, fit, "weather", "-5 C / 0 C").code()).isEqualTo("weather");
            assertThat(with(caller, fit, "weather", "../secret..txt").code()).isEqualTo("weather");
            assertThat(with(caller, fit, "set", List.of(Map.of("key", "name", "value", "x")))
                            .code())
                    .isEqualTo("request");
            Map<String, Object> saved = Map.of("kind", "saved");
            String secret = folder.resolve("secret..txt").toString();
            assertThat(with(caller, saved, "before", Map.of("from", secret, "until", secret))
                            .code())
                    .isEqualTo("request");
            assertThat(with(caller, saved, "before", secret).code()).isEqualTo("request");
            assertThat(with(caller, saved, "change", secret).code()).isEqualTo("request");
            assertThat(with(caller, saved, "weather", secret).code()).isEqualTo("weather");
            assertThat(caller.put("/api/shop/places", Map.of("sensor", "room", "place", "attic"))
                            .code())
                    .isEqualTo("request");
            assertThat(caller.put("/api/shop/places", Map.of("sensor", "nobody's", "place", "room"))
                            .status())
                    .isEqualTo(404);
            // a sensor whose place nobody knows is asked for, not guessed
            String told = ended(caller, with(caller, fit, "places", List.of(Map.of("sensor", "x", "place", "room"))));
            assertThat(told).contains("\"code\":\"readings\"").contains("there is no sensor");
            assertThat(caller.errors()).isEmpty();
        }
    }

    private static Caller.Answer with(Caller caller, Map<String, Object> ask, String key, Object value) {
        Map<String, Object> more = new java.util.LinkedHashMap<>(ask);
        more.put(key, value);
        return caller.post("/api/jobs", more);
    }

    /** All events of a job. */
    private static String ended(Caller caller, Caller.Answer begun) throws IOException {
        assertThat(begun.status()).as(begun.text()).isEqualTo(202);
        String path = "/api/jobs/" + begun.json().path("job").asString() + "/events";
        return new String(
                caller.send("GET", path, null, Map.of("Accept", "text/event-stream"))
                        .text()
                        .getBytes(StandardCharsets.UTF_8),
                StandardCharsets.UTF_8);
    }
}
