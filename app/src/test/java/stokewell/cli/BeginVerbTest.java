package stokewell.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static stokewell.cli.Shell.say;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stokewell.file.Quantity;
import stokewell.file.RigFile;
import stokewell.file.UnitSystem;
import stokewell.rig.Dimension;
import stokewell.rig.Rig;
import stokewell.web.FirstFile;

class BeginVerbTest {

    @TempDir
    Path folder;

    @Test
    void whatIsAtFaultInAnAnswerIsToldAndNotEveryQuestion() {
        String file = folder.resolve("shed.yaml").toString();
        assertThat(say("begin", file, "low=-20").err())
                .contains("The unit is missing")
                .contains("-20 C or -20 F")
                .doesNotContain("emitter");
        assertThat(say("begin", file, "lo=-20C").err())
                .contains("\"lo\" is not asked here")
                .contains("Known: name, ");
        assertThat(say("begin", "low=-20C").err())
                .contains("Write the file first")
                .doesNotContain("emitter");
        assertThat(Path.of("low=-20C")).doesNotExist();
        assertThat(Files.exists(Path.of(file))).isFalse();
    }

    /** Sizes of tape and trade, and nearly the same rig as in SI. */
    @Test
    void aFirstFileInUsUnitsIsWrittenAsThere() throws Exception {
        Map<String, String> said = Map.of("length", "30 ft", "width", "20 ft", "height", "9 ft", "low", "0 F");
        String us = FirstFile.of(said, UnitSystem.US);
        assertThat(us)
                .contains("walls: 1/2 in plywood, 3 1/2 in mineral wool, 3/4 in softwood")
                .contains("vent: 1 1/4 in steel")
                .contains("ft head")
                .doesNotContainPattern("0\\.\\d+ in")
                .doesNotContain("psi", " K ");
        Rig one = RigFile.parse("us", us, java.util.List.of()).rig();
        Rig two = RigFile.parse("si", FirstFile.of(said, UnitSystem.SI), java.util.List.of())
                .rig();
        assertThat(one.loop().supply().bore() / two.loop().supply().bore()).isBetween(0.95, 1.1);
        assertThat(one.loop().header().vent())
                .isGreaterThanOrEqualTo(two.loop().header().vent());
        assertThat(one.loop().pump().shutoffHead() / two.loop().pump().shutoffHead())
                .isBetween(0.97, 1.03);
    }

    @Test
    void aHeadIsToldInFeetOrMetresOfWater() {
        assertThat(Quantity.write(29890, Dimension.HEAD, UnitSystem.US, 2)).isEqualTo("10 ft head");
        assertThat(Quantity.parse("10 ft", Dimension.HEAD)).isBetween(29880.0, 29900.0);
        assertThat(Quantity.parse("40 kPa", Dimension.HEAD)).isEqualTo(40000);
    }
}
