package stokewell.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.ZoneId;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stokewell.file.SensorUnit;

class ShopTest {

    private static final SensorUnit CELSIUS = SensorUnit.named("C").orElseThrow();
    private static final long START = 1_700_000_000L;

    @TempDir
    Path folder;

    private Shop shop() {
        return Shop.open(folder.resolve("a.stokewell"));
    }

    static Readings readings(long from, int n, long step, double celsius) {
        long[] times = new long[n];
        double[] values = new double[n];
        for (int i = 0; i < n; i++) {
            times[i] = from + i * step;
            values[i] = CELSIUS.toSi(Math.rint((celsius + Math.sin(i / 30.0)) * 10) / 10);
        }
        return new Readings(times, values);
    }

    @Test
    void whatWentInComesOutAfterANewStart() {
        Readings week = readings(START, 2016, 300, 20);
        try (Shop shop = shop()) {
            shop.take(List.of(new Batch("room", CELSIUS, week)), false);
            shop.setZone(ZoneId.of("Europe/Oslo"));
            shop.add(new Load(0, START, 6.5, 0.18, "birch", ""));
            shop.add(new Event(0, START, "ash", "two buckets"));
            RigVersion rig = shop.keepRig(START, "Shed", "name: Shed\n");
            shop.saveFit(START, rig.id(), "{\"ua\":410}");
        }
        try (Shop shop = shop()) {
            Sensor room = shop.sensor("room").orElseThrow();
            assertThat(shop.readings(room)).isEqualTo(week);
            assertThat(shop.extent(room)).isEqualTo(new Extent(2016, START, START + 2015 * 300));
            assertThat(shop.zone()).contains(ZoneId.of("Europe/Oslo"));
            assertThat(shop.loads(0, Long.MAX_VALUE)).containsExactly(new Load(1, START, 6.5, 0.18, "birch", ""));
            assertThat(shop.events(0, Long.MAX_VALUE)).hasSize(1);
            assertThat(shop.rigs()).singleElement().extracting(RigVersion::text).isEqualTo("name: Shed\n");
            assertThat(shop.fits()).singleElement().extracting(SavedFit::body).isEqualTo("{\"ua\":410}");
        }
    }

    @Test
    void aSpanGoesFromItsFirstSecondToBeforeItsLast() {
        try (Shop shop = shop()) {
            shop.take(List.of(new Batch("room", CELSIUS, readings(START, 1000, 300, 20))), false);
            Sensor room = shop.sensor("room").orElseThrow();
            Readings span = shop.readings(room, START + 300, START + 900);
            assertThat(span.times()).containsExactly(START + 300, START + 600);
            assertThat(shop.readings(room, START + 1, START + 2).size()).isZero();
            assertThat(shop.readings(room, 0, 10).size()).isZero();
            assertThat(shop.readings(room, 500, 100).size()).isZero();
            assertThat(shop.readings(room, Long.MIN_VALUE, Long.MAX_VALUE).size())
                    .isEqualTo(1000);
        }
    }

    /** The pieces of a log in any order, overlapping, some twice: always the same log. Seeded. */
    @Test
    void overlappingPiecesInAnyOrderMakeTheWhole() {
        Random random = new Random(12);
        Readings whole = readings(START, 1500, 300, 20);
        for (int round = 0; round < 10; round++) {
            try (Shop shop = Shop.open(folder.resolve(round + ".stokewell"))) {
                int added = 0;
                for (int piece = 0; piece < 12; piece++) {
                    int from = piece < 11 ? random.nextInt(1500) : 0;
                    int to = piece < 11 ? from + random.nextInt(1501 - from) : 1500;
                    Taken taken = shop.take(List.of(new Batch("room", CELSIUS, whole.slice(from, to))), false)
                            .get(0);
                    assertThat(taken.added() + taken.known()).isEqualTo(to - from);
                    added += taken.added();
                }
                assertThat(added).isEqualTo(1500);
                assertThat(shop.readings(shop.sensor("room").orElseThrow())).isEqualTo(whole);
            }
        }
    }

    @Test
    void takingTheSameInTwiceLeavesTheFileAsItWas() throws Exception {
        List<Batch> batches = List.of(new Batch("room", CELSIUS, readings(START, 3000, 60, 20)));
        Path file = folder.resolve("a.stokewell");
        try (Shop shop = shop()) {
            shop.take(batches, false);
        }
        byte[] before = Files.readAllBytes(file);
        try (Shop shop = shop()) {
            Taken taken = shop.take(batches, false).get(0);
            assertThat(taken.changed()).isFalse();
            assertThat(taken.known()).isEqualTo(3000);
        }
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    @Test
    void theShopsValueStandsUnlessAskedOtherwise() {
        try (Shop shop = shop()) {
            Sensor room = shop.take(List.of(new Batch("room", CELSIUS, readings(START, 10, 300, 20))), false)
                    .get(0)
                    .sensor();
            List<Batch> other = List.of(new Batch("room", CELSIUS, readings(START, 10, 300, 25)));
            assertThat(shop.take(other, false).get(0))
                    .extracting(Taken::differed, Taken::replaced)
                    .containsExactly(10, 0);
            assertThat(shop.readings(room).value(0)).isEqualTo(293.15);
            assertThat(shop.take(other, true).get(0))
                    .extracting(Taken::differed, Taken::replaced)
                    .containsExactly(10, 10);
            assertThat(shop.readings(room).value(0)).isEqualTo(298.15);
        }
    }

    @Test
    void oneBadBatchKeepsAllOut() {
        try (Shop shop = shop()) {
            shop.take(List.of(new Batch("room", CELSIUS, readings(START, 10, 300, 20))), false);
            Batch wrong = new Batch("room", SensorUnit.named("W").orElseThrow(), readings(START, 10, 300, 20));
            assertThatThrownBy(() ->
                            shop.take(List.of(new Batch("store", CELSIUS, readings(START, 10, 300, 60)), wrong), false))
                    .isInstanceOf(ShopFault.class)
                    .hasMessageContaining("\"room\" measures temperature in the shop, but power here");
            assertThat(shop.sensors()).extracting(Sensor::name).containsExactly("room");
        }
    }

    @Test
    void theSameLoadOrVersionIsKeptOnce() {
        try (Shop shop = shop()) {
            assertThat(shop.add(new Load(0, START, 6, Double.NaN, "", ""))).isTrue();
            assertThat(shop.add(new Load(0, START, 6, Double.NaN, "", ""))).isFalse();
            assertThat(shop.keepRig(START, "Shed", "x").id())
                    .isEqualTo(shop.keepRig(START, "Shed", "x").id());
            assertThat(shop.strikeLoad(1)).isTrue();
            assertThat(shop.strikeLoad(1)).isFalse();
            assertThat(shop.loads(0, Long.MAX_VALUE)).isEmpty();
        }
    }

    @Test
    void nobodyElsesFileIsTouched() throws Exception {
        Path text = Files.writeString(folder.resolve("log.csv"), "time,temperature\n");
        assertThatThrownBy(() -> Shop.open(text)).isInstanceOf(ShopFault.class).hasMessageContaining("is not a shop");
        assertThat(text).hasContent("time,temperature\n");
        Path other = folder.resolve("other.db");
        try (var c = DriverManager.getConnection("jdbc:sqlite:" + other);
                var s = c.createStatement()) {
            s.execute("CREATE TABLE songs (name TEXT)");
        }
        assertThatThrownBy(() -> Shop.open(other)).isInstanceOf(ShopFault.class).hasMessageContaining("not a shop's");
        assertThatThrownBy(() -> Shop.open(folder))
                .isInstanceOf(ShopFault.class)
                .hasMessageContaining("folder");
        assertThatThrownBy(() -> Shop.openExisting(folder.resolve("none")))
                .isInstanceOf(ShopFault.class)
                .hasMessageContaining("There is no shop");
        assertThat(folder.resolve("none")).doesNotExist();
    }

    @Test
    void aNewerShopIsLeftAlone() throws Exception {
        Path file = folder.resolve("a.stokewell");
        shop().close();
        try (var c = DriverManager.getConnection("jdbc:sqlite:" + file);
                var s = c.createStatement()) {
            s.execute("PRAGMA user_version = 999");
        }
        assertThatThrownBy(this::shop).isInstanceOf(ShopFault.class).hasMessageContaining("newer Stokewell");
    }
}
