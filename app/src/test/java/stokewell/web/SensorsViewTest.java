package stokewell.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stokewell.file.SensorUnit;
import stokewell.shop.Batch;
import stokewell.shop.Readings;
import stokewell.shop.Shop;

/** What the shop's own file holds is seen on the page, and only there where there is one. */
final class SensorsViewTest {

    private static final long BEGIN = 1_768_435_200L;

    @TempDir
    Path folder;

    /** Ten days of a room that swings between 10 and 20 °C, by the half hour; invented. */
    private void shop() {
        long[] times = new long[480];
        double[] kelvin = new double[480];
        for (int i = 0; i < times.length; i++) {
            times[i] = BEGIN + 1800L * i;
            kelvin[i] = 288.15 + 5 * Math.sin(2 * Math.PI * i / 48);
        }
        SensorUnit celsius = SensorUnit.named("C").orElseThrow();
        try (Shop shop = Shop.open(folder.resolve("shop.stokewell"))) {
            shop.take(List.of(new Batch("bench", celsius, new Readings(times, kelvin))), false);
        }
    }

    @Test
    void aWeekOfEachSensorIsDrawnInTheUnitsChosen() throws IOException {
        shop();
        try (Browser page = Browser.start(folder)) {
            page.enter().at("sensors/example:saddlery").see(".week");
            assertThat(page.text(".sensors")).contains("bench").contains("480 readings");
            String said = "return document.querySelector('.week').getAttribute('aria-label')";
            assertThat((String) page.js(said)).contains("10 °C").contains("20 °C");
            assertThat(page.violations()).isEmpty();
            page.wide(360, 740, true);
            assertThat(page.reachesOut()).isFalse();
            page.press("Units: SI. Change to US");
            page.until("in °F", () -> ((String) page.js(said)).contains("50 °F"));
            assertThat(page.errors()).isEmpty();
        }
    }

    @Test
    void sensorsThatHaveSaidNothingYetAreListed() {
        SensorUnit celsius = SensorUnit.named("C").orElseThrow();
        try (Shop shop = Shop.open(folder.resolve("shop.stokewell"))) {
            shop.take(List.of(new Batch("bench", celsius, new Readings(new long[0], new double[0]))), false);
            assertThat(shop.sensors()).hasSize(1);
        }
        try (Caller caller = new Caller(folder)) {
            Caller.Answer told = caller.get("/api/shop");
            assertThat(told.status()).isEqualTo(200);
            assertThat(told.json().path("until").isNull()).isTrue();
            assertThat(told.json().path("sensors").path(0).path("count").asInt())
                    .isZero();
        }
    }

    @Test
    void withoutAShopThereIsNothingToAsk() {
        try (Caller caller = new Caller(folder)) {
            assertThat(caller.get("/api/shop").status()).isEqualTo(404);
            assertThat(caller.get("/api/session").json().path("shop").asBoolean())
                    .isFalse();
        }
    }
}
