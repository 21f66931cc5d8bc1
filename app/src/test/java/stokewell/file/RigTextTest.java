package stokewell.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

class RigTextTest {

    private static final String BARN = RigFileTest.BARN;

    private static List<String> changed(String before, String after) {
        List<String> lines = new ArrayList<>(after.lines().toList());
        for (String line : before.lines().toList()) lines.remove(line);
        return lines;
    }

    @Test
    void aValueChangesAndNothingElse() throws RigFileFault {
        assertThat(RigText.set(BARN, "place.altitude", "400 m"))
                .isEqualTo(BARN.replace("altitude: 1200 ft ", "altitude: 400 m "));
        assertThat(RigText.set(BARN, "emitters.fan.count", "30")).isEqualTo(BARN.replace("count: 24", "count: 30"));
        assertThat(RigText.set(BARN, "story", "plain"))
                .isEqualTo(BARN.replaceFirst("story: \".*\"", "story: \"plain\""));
        assertThat(RigText.set(BARN, "name", "a: b #c")).contains("name: \"a: b #c\"\n");
    }

    @Test
    void aMissingKeyIsAddedWhereTheRecordNamesIt() throws RigFileFault {
        assertThat(RigText.set(BARN, "stove.height", "90 cm"))
                .isEqualTo(BARN.replace("  surface: 2.6 m2\n", "  surface: 2.6 m2\n  height: 90 cm\n"));
        assertThat(RigText.set(BARN, "switches.0.differential.cold.lag", "1 min"))
                .contains("cold: {at: store, height: 10 %, lag: 1 min}");
        assertThat(RigText.set(BARN, "loop.back.bore", "40 mm")).contains("  back: {length: 5 m, bore: 40 mm}\n");
        assertThat(RigText.set(BARN, "emitters.0.fan.speed", "80 %"))
                .contains("        power: 60 W\n        speed: 80 %\n  - radiator:");
        assertThat(RigText.set(BARN, "switches.1.hours.from", "15:00"))
                .contains("    hours: {from: 15:00, until: 06:00}\n");
    }

    @Test
    void aPartLeftOutIsWrittenWithItsNeededEntries() throws RigFileFault {
        assertThat(RigText.set("name: a\n", "store.jacket", "2 in XPS"))
                .isEqualTo("name: a\nstore: {jacket: 2 in XPS}\n");
        assertThat(RigText.set("", "name", "a")).isEqualTo("name: a\n");
        assertThat(RigText.set("# mine\n", "name", "a")).isEqualTo("# mine\nname: a\n");
        assertThat(RigText.set("name: a", "story", "b")).isEqualTo("name: a\nstory: b");
        assertThat(RigText.set("name: a\r\nstory: b\r\n", "fuel.moisture", "20 %"))
                .isEqualTo("name: a\r\nstory: b\r\nfuel: {moisture: 20 %}\r\n");
        assertThat(RigText.set("name:\n", "name", "a")).isEqualTo("name: a\n");
        assertThat(RigText.set("fuel: {}\n", "fuel.basis", "dry")).isEqualTo("fuel: {basis: dry}\n");
        assertThat(RigText.set("story: b\n", "name", "a")).isEqualTo("name: a\nstory: b\n");
        assertThat(RigText.set("stove:\n  air: hand # by hand\n", "stove.air.burning", "40 %"))
                .isEqualTo("stove:\n  air: {hand: {burning: 40 %}} # by hand\n");
        assertThat(RigText.set("story: |\n  long\n  tale\n\nfuel: {}\n", "fuel.basis", "dry"))
                .isEqualTo("story: |\n  long\n  tale\n\nfuel: {basis: dry}\n");
    }

    @Test
    void anotherKindTakesTheOldOnesPlace() throws RigFileFault {
        String edited = RigText.set(BARN, "store.shape.square", "{width: 1 m, length: 1 m, height: 1 m}");
        assertThat(edited).contains("  shape:\n    {square: {width: 1 m, length: 1 m, height: 1 m}}\n  nodes: 12\n");
    }

    @Test
    void whatCannotBeChangedInPlaceIsRefused() {
        String aliased = "loop:\n  supply: &p {length: 3 m}\n  back: *p\n";
        assertThatThrownBy(() -> RigText.set(aliased, "loop.back.length", "4 m"))
                .isInstanceOf(RigFileFault.class)
                .hasMessageContaining("cannot be changed where it stands");
        assertThatThrownBy(() -> RigText.set(BARN, "store.jaket", "4 m"))
                .isInstanceOf(RigFileFault.class)
                .hasMessageContaining("Nearest: jacket");
    }

    private static final List<String> PATHS = List.of(
            "name",
            "story",
            "place.altitude",
            "place.longitude",
            "weather.file",
            "room.walls.framing",
            "room.walls.layers.1",
            "room.roof.layers.2.thickness",
            "room.windows.0.tilt",
            "room.doors.0.opens.1.lasting",
            "stove.air.band",
            "stove.height",
            "fuel.species",
            "fuel.stackSolid",
            "habit.loads.2.mass",
            "habit.skipAbove",
            "pickups.flat box.bore",
            "loop.supply.where",
            "loop.back.bore",
            "loop.glycol",
            "loop.pump.speed",
            "store.shape.height",
            "store.coil.top",
            "store.supplyPort",
            "emitters.fan.bottom",
            "emitters.bench radiator.metal",
            "emitters.1.circuit.supply.bore",
            "switches.0.differential.hot.lag",
            "switches.1.thermostat.off",
            "switches.0.hours");

    @Property(tries = 1000)
    void unrelatedLinesStayAsTheyAre(@ForAll("paths") String path, @ForAll("values") String value) throws RigFileFault {
        String edited = RigText.set(BARN, path, value);
        List<String> changed = changed(BARN, edited);
        assertThat(changed.size()).as(edited).isLessThanOrEqualTo(1);
        List<String> lost = changed(edited, BARN);
        assertThat(lost.size()).as(edited).isLessThanOrEqualTo(1);
        assertThat(RigText.set(edited, path, value)).isEqualTo(edited);
    }

    @Provide
    Arbitrary<String> paths() {
        return Arbitraries.of(PATHS);
    }

    @Provide
    Arbitrary<String> values() {
        return Arbitraries.oneOf(
                Arbitraries.of(
                        "20 %",
                        "5' 3 1/2\"", "17:00", "a, b", "x: y", "# no", "it's", "\"q", "- d", "é½", "a\nb", "C:"),
                Arbitraries.strings()
                        .ascii()
                        .ofMaxLength(12)
                        .filter(t -> !t.isBlank() && "[{'\"".indexOf(t.strip().charAt(0)) < 0));
    }

    @Test
    void mutatedFilesAreReadOrRefused() {
        Random random = new Random(20261125);
        String signs = "{}[]:,-#&*!|>'\"%@`? \n\t\r09aä½\0\ufeff\ud83d~<=\\";
        Assertions.assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
            for (int i = 0; i < 1500; i++) {
                StringBuilder text = new StringBuilder(BARN);
                for (int k = random.nextInt(6); k >= 0; k--) mutate(text, random, signs);
                String setting =
                        PATHS.get(random.nextInt(PATHS.size())) + "=" + signs.charAt(random.nextInt(signs.length()));
                try {
                    RigFile.parse("f", text.toString(), random.nextBoolean() ? List.of() : List.of(setting));
                } catch (RigFileFault fault) {
                    assertThat(fault.faults()).isNotEmpty();
                }
                try {
                    RigText.set(text.toString(), PATHS.get(random.nextInt(PATHS.size())), "20 %");
                } catch (RigFileFault fault) {
                    assertThat(fault.faults()).isNotEmpty();
                }
            }
        });
    }

    private static void mutate(StringBuilder text, Random random, String signs) {
        int at = random.nextInt(text.length());
        switch (random.nextInt(5)) {
            case 0 -> text.setCharAt(at, signs.charAt(random.nextInt(signs.length())));
            case 1 -> text.insert(at, signs.charAt(random.nextInt(signs.length())));
            case 2 -> text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(20)));
            case 3 -> text.insert(at, text.substring(at, Math.min(text.length(), at + random.nextInt(200))));
            default -> {
                int line = text.indexOf("\n", at);
                int next = line < 0 ? -1 : text.indexOf("\n", line + 1);
                if (next > 0) text.delete(line, next);
            }
        }
    }
}
