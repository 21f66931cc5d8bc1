package stokewell.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Rigs that strangers began with, and what they came to. */
class FirstRigsTest {

    @TempDir
    Path folder;

    private String begun(String... known) throws Exception {
        Path file = folder.resolve("shop.yaml");
        String[] words = new String[known.length + 2];
        words[0] = "begin";
        words[1] = file.toString();
        System.arraycopy(known, 0, words, 2, known.length);
        Shell.Said said = Shell.say(words);
        assertThat(said.err()).isEmpty();
        assertThat(said.status()).isZero();
        return file.toString();
    }

    /** Steps that were good but shrank without end, where the flow hopped about its balance of pressures. */
    @Test
    void aLargeStoveOnAHundredAndTwentyGallonsIsToldThatItBoils() throws Exception {
        String file = begun(
                "length=32ft",
                "width=24ft",
                "height=10ft",
                "low=-20F",
                "stove=large",
                "loop=pump",
                "emitter=fan",
                "store=275gal",
                "walls=1/2 in drywall, R-19 fiberglass, 1/2 in OSB",
                "--units",
                "us");
        // a first rig stops sooner, and does not boil; this one is fired on
        String[] boils = {"--set", "store.volume=120 gal", "--set", "habit.clock.skipAbove=85 C"};
        Shell.Said night = Shell.say("night", file, "--units", "us", boils[0], boils[1], boils[2], boils[3]);
        assertThat(night.err()).isEmpty();
        assertThat(night.status()).isEqualTo(CheckVerb.STOP);
        assertThat(night.out()).contains("STOP: do not light a fire").contains("loads left out");
        Shell.Said check = Shell.say("check", file, "--json", boils[0], boils[1], boils[2], boils[3]);
        assertThat(check.status())
                .as("a rig that boils each day is not to be lit")
                .isEqualTo(CheckVerb.STOP);
        JsonNode first = check.json().get("findings").get(0);
        assertThat(first.get("id").asString()).isEqualTo("boil.normal");
    }

    /** Its radiator hangs under the water that fills it, by gravity and with a pump. */
    @Test
    void aRadiatorHangsUnderTheHeadersWater() throws Exception {
        for (String loop : new String[] {"pump", "gravity"}) {
            String file = begun("length=8m", "width=6m", "height=3m", "low=-15C", "emitter=radiator", "loop=" + loop);
            assertThat(Shell.say("check", file, "--json").out()).doesNotContain("emitter.high");
            assertThat(Shell.say("check", file, "--json", "--set", "emitters.radiator.elevation=2.9 m")
                            .out())
                    .contains("emitter.high");
            Shell.Said without = Shell.say("night", file, "--json", "--set", "emitters.radiator=none");
            assertThat(without.err()).doesNotContain("NullPointer");
            Files.delete(Path.of(file));
        }
    }

    /** A closed loop is filled cold: its valve does not open because a run begins hot. */
    @Test
    void aClosedLoopThatHasSettledHoldsItsPressure() throws Exception {
        String file = begun("length=8m", "width=6m", "height=3m", "low=-15C");
        String[] closed = {
            "night",
            file,
            "--json",
            "--set",
            "safety.vessel={volume: 400 L, precharge: 75 kPa, fill: 100 kPa}",
            "--set",
            "safety.relief={opens: 3 bar, rated: 40 kW, at stove: yes}"
        };
        Shell.Said said = Shell.say(closed);
        assertThat(said.status()).as(said.err()).isZero();
        double most = said.json().at("/pressureBar/most").asDouble();
        assertThat(most).isBetween(1.0, 3.0);
        String[] small = closed.clone();
        small[4] = "safety.vessel={volume: 50 L, precharge: 75 kPa, fill: 100 kPa}";
        small[6] = "safety.relief={opens: 1.5 bar, rated: 20 kW, at stove: yes}";
        Shell.Said opens = Shell.say(small);
        assertThat(opens.json().at("/pressureBar/most").asDouble())
                .as("no more than the valve lets it")
                .isLessThan(1.5 * 1.1 + 0.05);
        assertThat(opens.out()).contains("The relief valve opens on this day").contains("a relief valve at the stove");
    }
}
