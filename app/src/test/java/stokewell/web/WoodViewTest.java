package stokewell.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.support.ui.Select;
import stokewell.shop.Load;
import stokewell.shop.Shop;

/** A person notes his loads on the page, and asks the model of his old rig what they saved. */
final class WoodViewTest {

    @TempDir
    Path folder;

    private List<Load> noted() {
        try (Shop shop = Shop.openExisting(folder.resolve("shop.stokewell"))) {
            return shop.loads(Long.MIN_VALUE, Long.MAX_VALUE);
        }
    }

    private static Caller.Answer load(Caller caller, String... words) {
        Map<String, Object> said = new java.util.LinkedHashMap<>();
        for (int i = 0; i < words.length; i += 2) said.put(words[i], words[i + 1]);
        return caller.post("/api/shop/loads", said);
    }

    @Test
    void aLoadIsNotedOnThePageAndStruckOut() throws IOException {
        try (Browser page = Browser.start(folder)) {
            page.enter().at("sensors/example:boat-shed").see("#load-mass").sendKeys("6.5");
            page.driver.findElement(By.id("load-moisture")).sendKeys("18");
            page.js("document.getElementById('load-at').value = '2026-01-15T18:00'");
            page.press("Note it");
            page.says("1 load is noted");
            assertThat(page.text(".loads")).contains("6.5 kg").contains("18 % water");
            assertThat(noted()).singleElement().satisfies(load -> {
                assertThat(load.mass()).isEqualTo(6.5);
                assertThat(load.moisture()).isEqualTo(0.18);
            });
            assertThat(page.violations()).isEmpty();
            page.press("Units: SI. Change to US");
            page.until("in lb", () -> page.text(".loads").contains("14.3 lb"));
            page.see("#load-mass").sendKeys("heavy");
            page.press("Note it");
            page.says("is not a mass");
            page.driver.findElement(By.cssSelector(".loads button")).click();
            page.until("struck out", () -> page.count(".loads li") == 0);
            assertThat(noted()).isEmpty();
            page.wide(360, 740, true);
            assertThat(page.reachesOut()).isFalse();
            assertThat(page.errors()).isEmpty();
        }
    }

    @Test
    void aLoadIsNotedOnceAndWhatIsNoneIsRefused() {
        try (Caller caller = new Caller(folder)) {
            assertThat(caller.get("/api/shop/loads").json().path("count").asInt())
                    .isZero();
            assertThat(load(caller, "mass", "12 kg", "at", "2026-01-15T18:00").status())
                    .isEqualTo(201);
            Caller.Answer again = load(caller, "mass", "12 kg", "at", "2026-01-15T18:00");
            assertThat(again.json().path("added").asBoolean()).isFalse();
            assertThat(load(caller).status()).isEqualTo(400);
            assertThat(load(caller, "mass", "12").code()).isEqualTo("request");
            assertThat(load(caller, "mass", "-3 kg").code()).isEqualTo("readings");
            assertThat(load(caller, "mass", "12 kg", "moisture", "90 %").code()).isEqualTo("readings");
            assertThat(load(caller, "mass", "12 kg", "at", "../shop").code()).isEqualTo("request");
            assertThat(load(caller, "mass", "12 kg", "at", "2026-02-30T18:00").code())
                    .isEqualTo("request");
            assertThat(load(caller, "mass", "12 kg", "at", "2999-01-01T00:00").code())
                    .isEqualTo("request");
            assertThat(load(caller, "mass", "12 kg", "note", "x".repeat(201)).code())
                    .isEqualTo("request");
            Caller.Answer all = caller.get("/api/shop/loads?units=us");
            assertThat(all.json().path("count").asInt()).isEqualTo(1);
            assertThat(all.json().path("loads").path(0).path("mass").asString()).isEqualTo("26.5 lb");
            String one = "/api/shop/loads/"
                    + all.json().path("loads").path(0).path("load").asInt();
            assertThat(caller.delete(one).status()).isEqualTo(204);
            assertThat(caller.delete(one).status()).isEqualTo(404);
            assertThat(caller.errors()).isEmpty();
        }
    }

    @Test
    void theModelOfTheRigAsItWasIsAskedToo() throws IOException {
        try (Browser page = Browser.start(folder)) {
            page.enter();
            for (String side : List.of("before", "after")) {
                Path table = Path.of("../examples/readings/boat-shed-" + side + ".csv");
                page.at("sensors/example:boat-shed")
                        .see("#readings-file")
                        .sendKeys(table.toRealPath().toString());
                page.press("Take it in");
                page.see(".taken");
            }
            page.at("fit/example:boat-shed").see("#saved-model");
            new Select(page.see("#saved-model")).selectByValue("example:boat-shed");
            page.js("document.getElementById('saved-change').value = '2016-01-31'");
            page.press("Compare the wood", "Stop");
            page.says("Stopped.");
            page.press("Compare the wood");
            page.untilDone("the comparison", () -> page.has(".saved-told"));
            assertThat(page.text(".saved-told")).contains("The model of Tern Ledge boat shed");
            assertThat(page.errors()).isEmpty();
        }
    }
}
