package stokewell.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stokewell.file.SensorKind;
import stokewell.file.SensorUnit;

/** The ways out of a shop and back into it. */
class BackupTest {

    private static final LocalDateTime NOW = LocalDateTime.of(2026, 1, 20, 8, 0);
    private static final long START = 1_700_000_000L;

    @TempDir
    Path folder;

    private Path full(String name) {
        Path file = folder.resolve(name);
        try (Shop shop = Shop.open(file)) {
            shop.setZone(ZoneId.of("America/Denver"));
            SensorUnit fahrenheit = SensorUnit.named("F").orElseThrow();
            long[] times = {START, START + 300, START + 86400};
            double[] odd = {0.1 + 0.2, 1e-9, Math.PI};
            shop.take(
                    List.of(
                            new Batch("room, \"upper\"", fahrenheit, readings(times, fahrenheit, 68.1, 68.2, 50)),
                            new Batch("odd", SensorUnit.si(SensorKind.NUMBER), new Readings(times, odd)),
                            new Batch("mixed", fahrenheit, new Readings(times.clone(), new double[] {
                                293.15, 294.123456789, 300
                            }))),
                    false);
            shop.place(shop.sensor("odd").orElseThrow(), "store top");
            shop.add(new Load(0, START, 7.25, 0.18, "ash", "two lines\nof note"));
            shop.add(new Load(0, START + 60, 7.25, Double.NaN, "", ""));
            shop.add(new Event(0, START, "sweep", "flue, \"pipe\""));
            RigVersion rig = shop.keepRig(START, "Shed", "name: Shed # \u00e5\n");
            shop.saveFit(START, rig.id(), "{\"ua\":410}");
            shop.saveFit(START, 0, "{}");
        }
        return file;
    }

    private static Readings readings(long[] times, SensorUnit unit, double... written) {
        double[] values = new double[written.length];
        for (int i = 0; i < values.length; i++) values[i] = unit.toSi(written[i]);
        return new Readings(times, values);
    }

    /** Everything that a shop tells, as text. */
    private static Map<String, Object> all(Path file) {
        Map<String, Object> all = new TreeMap<>();
        try (Shop shop = Shop.openExisting(file)) {
            all.put("zone", shop.zone());
            for (Sensor s : shop.sensors()) {
                all.put("sensor " + s.name(), List.of(s.unit(), s.place(), shop.readings(s)));
            }
            all.put("loads", shop.loads(0, Long.MAX_VALUE));
            all.put("events", shop.events(0, Long.MAX_VALUE));
            all.put("rigs", shop.rigs());
            all.put("fits", shop.fits());
        }
        return all;
    }

    @Test
    void anExportMakesTheSameShopAgain() throws IOException {
        Path a = full("a");
        Path b = folder.resolve("b");
        try (Shop shop = Shop.open(a)) {
            Export.write(shop, folder.resolve("out"));
        }
        try (Shop shop = Shop.open(b)) {
            Intake.of(shop, folder.resolve("out"));
            Intake.of(shop, folder.resolve("out"));
            Export.write(shop, folder.resolve("again"));
        }
        assertThat(all(b)).isEqualTo(all(a));
        try (var files = Files.walk(folder.resolve("out"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path other =
                        folder.resolve("again").resolve(folder.resolve("out").relativize(file));
                assertThat(other).hasSameBinaryContentAs(file);
            }
        }
        assertThat(folder.resolve("out/readings/003.csv"))
                .content()
                .startsWith("time,value [F]\n2023-11-14T22:13:20Z,68.1\n2023-11-14T22:18:20Z,68.2\n");
    }

    @Test
    void aBrokenExportChangesNothing() throws IOException {
        Path a = full("a");
        Path out = folder.resolve("out");
        try (Shop shop = Shop.open(a)) {
            Export.write(shop, out);
        }
        Files.writeString(out.resolve("loads.csv"), "time,mass [kg],moisture [1],wood,note\nyesterday,5,,,\n");
        try (Shop shop = Shop.open(folder.resolve("b"))) {
            assertThatThrownBy(() -> Intake.of(shop, out))
                    .isInstanceOf(ShopFault.class)
                    .hasMessageContaining("loads.csv:2");
            assertThat(shop.sensors()).isEmpty();
        }
        Files.writeString(out.resolve("rigs.csv"), "number,since,name,file\n1,2023-11-14T22:13:20Z,x,../../a\n");
        Files.writeString(out.resolve("loads.csv"), "time,mass [kg],moisture [1],wood,note\n");
        try (Shop shop = Shop.open(folder.resolve("b"))) {
            assertThatThrownBy(() -> Intake.of(shop, out)).hasMessageContaining("outside the folder");
            assertThatThrownBy(() -> Export.write(shop, out)).hasMessageContaining("not empty");
        }
    }

    @Test
    void aCopyRestoresTheShopWhileItIsInUse() throws IOException {
        Path a = full("a");
        Path copy = folder.resolve("copy");
        try (Shop writing = Shop.open(a);
                Shop shop = Shop.open(a)) {
            writing.add(new Event(0, START + 5, "note", "not yet in the main file"));
            assertThat(Backup.write(shop, copy, false)).isEqualTo(new Tally(3, 9, 2, 2, 1, 2));
            assertThatThrownBy(() -> Backup.write(shop, copy, false)).hasMessageContaining("there already");
            Backup.write(shop, copy, true);
        }
        Path b = folder.resolve("b");
        assertThat(Backup.restore(copy, b, false, NOW).kept()).isEmpty();
        assertThat(all(b)).isEqualTo(all(a));
    }

    @Test
    void theShopThatStoodThereIsKept() throws IOException {
        Path a = full("a");
        Path copy = folder.resolve("copy");
        try (Shop shop = Shop.open(a)) {
            Backup.write(shop, copy, false);
            shop.add(new Event(0, START + 5, "note", "later"));
        }
        Map<String, Object> before = all(a);
        assertThatThrownBy(() -> Backup.restore(copy, a, false, NOW)).hasMessageContaining("there already");
        assertThat(all(a)).isEqualTo(before);
        Path kept = Backup.restore(copy, a, true, NOW).kept().orElseThrow();
        assertThat(kept).hasFileName("a.before-20260120-080000");
        assertThat(all(kept)).isEqualTo(before);
        assertThat(all(a)).isNotEqualTo(before);
    }

    @Test
    void aDamagedCopyIsNotPutInPlace() throws IOException {
        Path a = full("a");
        Path copy = folder.resolve("copy");
        try (Shop shop = Shop.open(a)) {
            Backup.write(shop, copy, false);
        }
        Map<String, Object> before = all(a);
        byte[] whole = Files.readAllBytes(copy);
        int refused = 0;
        int tried = 0;
        for (int at = 1; at < whole.length; at += 331) {
            byte[] damaged = whole.clone();
            damaged[at] ^= (byte) (1 << at % 8);
            tried++;
            if (refusedOrWhole(damaged, "flip at " + at, before)) refused++;
        }
        for (int k = 1; k < 16; k++) {
            tried++;
            if (refusedOrWhole(java.util.Arrays.copyOf(whole, k * whole.length / 16), "cut at " + k, before)) refused++;
        }
        // much of a small file is empty pages, where a flip changes nothing that anyone reads
        assertThat(tried).isGreaterThan(100);
        assertThat(refused).isGreaterThan(15);
        Files.write(copy, java.util.Arrays.copyOf(whole, whole.length / 2));
        assertThatThrownBy(() -> Backup.restore(copy, a, true, NOW)).isInstanceOf(ShopFault.class);
        Files.writeString(copy, "not a shop at all");
        assertThatThrownBy(() -> Backup.restore(copy, a, true, NOW)).hasMessageContaining("is not a shop");
        assertThat(all(a)).isEqualTo(before);
        try (var files = Files.list(folder)) {
            assertThat(files.map(p -> p.getFileName().toString())).noneMatch(n -> n.endsWith("restoring"));
        }
    }

    /** Restores bytes: true where they are refused; where they are not, everything must be there and as it was. */
    private boolean refusedOrWhole(byte[] bytes, String how, Map<String, Object> whole) throws IOException {
        Path copy = folder.resolve("damaged");
        Path b = folder.resolve("restored");
        Files.write(copy, bytes);
        try {
            Backup.restore(copy, b, false, NOW);
        } catch (ShopFault fault) {
            assertThat(b).as(how).doesNotExist();
            return true;
        }
        assertThat(all(b)).as(how).isEqualTo(whole);
        Files.delete(b);
        return false;
    }

    /** A digit of a note, with the right length: no page and no row is broken, only what it says. */
    @Test
    void aCopyWhoseWordsWereChangedIsRefused() throws IOException {
        Path a = full("a");
        Path copy = folder.resolve("copy");
        try (Shop shop = Shop.open(a)) {
            Backup.write(shop, copy, false);
        }
        byte[] bytes = Files.readAllBytes(copy);
        byte[] note = "two lines".getBytes(java.nio.charset.StandardCharsets.US_ASCII);
        int at = 0;
        while (!java.util.Arrays.equals(note, java.util.Arrays.copyOfRange(bytes, at, at + note.length))) at++;
        bytes[at] = 'T';
        Files.write(copy, bytes);
        assertThatThrownBy(() -> Backup.restore(copy, folder.resolve("b"), false, NOW))
                .isInstanceOf(ShopFault.class)
                .hasMessageContaining("not what was copied");
    }

    @Test
    void aDamagedShopGivesWayToItsCopy() throws IOException {
        Path a = full("a");
        Path copy = folder.resolve("copy");
        try (Shop shop = Shop.open(a)) {
            Backup.write(shop, copy, false);
        }
        Map<String, Object> before = all(a);
        try (RandomAccessFile file = new RandomAccessFile(a.toFile(), "rw")) {
            file.write(new byte[100]);
        }
        assertThatThrownBy(() -> Shop.open(a)).isInstanceOf(ShopFault.class);
        assertThat(Backup.restore(copy, a, true, NOW).kept()).isPresent();
        assertThat(all(a)).isEqualTo(before);
    }

    @Test
    void aShopInUseIsNotReplaced() throws IOException {
        Path a = full("a");
        Path copy = folder.resolve("copy");
        try (Shop shop = Shop.open(a)) {
            Backup.write(shop, copy, false);
            assertThatThrownBy(() -> Backup.restore(copy, a, true, NOW)).hasMessageContaining("open in another run");
            shop.add(new Event(0, START + 7, "note", "still writing"));
        }
        try (Shop shop = Shop.open(a)) {
            assertThat(shop.events(0, Long.MAX_VALUE)).hasSize(2);
        }
    }
}
