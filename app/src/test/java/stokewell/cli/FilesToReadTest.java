package stokewell.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static stokewell.cli.Shell.say;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stokewell.cli.Shell.Said;

/** A name that leads to no file, to a folder, to nothing or to something else is told in words, whatever option it stands behind. */
class FilesToReadTest {

    @TempDir
    static Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "night FILE",
                "night RIG --weather FILE",
                "night RIG --start FILE",
                "night RIG --set weather.file=FILE",
                "season FILE",
                "season RIG --weather FILE",
                "compare RIG FILE",
                "compare RIG --weather FILE",
                "check FILE",
                "check RIG --weather FILE",
                "drill FILE",
                "drill RIG --weather FILE",
                "sheet FILE --html OUT",
                "sheet RIG --weather FILE --html OUT",
                "defaults FILE",
                "open FILE --no-browser",
                "fit FILE --readings TABLE",
                "fit RIG --readings FILE",
                "fit RIG --readings TABLE --loads FILE",
                "fit RIG --readings TABLE --weather FILE",
                "fit RIG --shop FILE",
                "saved --before FILE --after TABLE",
                "saved --before TABLE --after FILE",
                "saved --before WINTER --after WINTER --model FILE",
                "saved --shop FILE --change 2016-01-20",
                "readings import FILE --shop SHOP",
                "readings list --shop FILE",
                "diary list --shop FILE",
                "shop look --shop FILE",
                "shop restore FILE --shop FRESH",
                "shop rig FILE --shop SHOP",
                "shop import FILE --shop SHOP"
            })
    void isToldInWords(String line) throws IOException {
        Path empty = Files.write(folder.resolve("empty.csv"), new byte[0]);
        Path noise = Files.write(
                folder.resolve("noise.csv"), new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1, 2, 3, (byte) 0xd8, 9});
        for (Path file : new Path[] {folder.resolve("nowhere.csv"), folder, empty, noise}) {
            // a folder is what these take
            if (file.equals(folder) && (line.startsWith("open") || line.startsWith("shop import"))) continue;
            // a shop that is not there yet, or is an empty file, is a new one
            if (line.contains("--shop FILE") && !file.equals(folder) && !file.equals(noise)) continue;
            String asked = line.replace("FILE", file.toString())
                    .replace("RIG", "../examples/boat-shed.yaml")
                    .replace("WINTER", "../examples/readings/boat-shed-before.csv")
                    .replace("TABLE", "../examples/readings/boat-shed.csv")
                    .replace("OUT", folder.resolve("out.html").toString())
                    .replace("FRESH", folder.resolve("fresh.stokewell").toString())
                    .replace("SHOP", folder.resolve("shop.stokewell").toString());
            Said said = say(asked.split(" "));
            assertThat(said.status()).as(asked + "\n" + said.err() + said.out()).isEqualTo(2);
            assertThat(said.out()).as(asked).isEmpty();
            assertThat(said.err())
                    .as(asked)
                    .contains(file.getFileName().toString())
                    .doesNotContain("Exception")
                    .doesNotContain("\tat ")
                    .doesNotContain("failed");
            assertThat(said.err().lines().count()).as(asked + "\n" + said.err()).isGreaterThanOrEqualTo(2);
        }
    }
}
