package stokewell.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DiskFileTest {

    private static final String OLD = "a".repeat(200_000);
    private static final String NEW = "b".repeat(300_000);

    @TempDir
    Path folder;

    /** Writes one text after the other until it is killed. */
    public static final class WritesOn {
        public static void main(String[] args) throws Exception {
            for (int i = 0; ; i++) DiskFile.write(Path.of(args[0]), Body.utf8(i % 2 == 0 ? NEW : OLD));
        }
    }

    @Test
    void whoIsKilledInTheMiddleOfWritingLeavesTheOldFileOrTheNewOne() throws Exception {
        Path file = folder.resolve("rig.yaml");
        DiskFile.write(file, Body.utf8(OLD));
        int changed = 0;
        for (int round = 0; round < 3; round++) {
            Process writer = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            WritesOn.class.getName(),
                            file.toString())
                    .inheritIO()
                    .start();
            long before = Files.getLastModifiedTime(file).toMillis();
            for (int i = 0; i < 1000 && Files.getLastModifiedTime(file).toMillis() == before; i++) Thread.sleep(10);
            Thread.sleep(11L * round);
            writer.destroyForcibly();
            assertThat(writer.waitFor(10, TimeUnit.SECONDS)).isTrue();
            if (Files.getLastModifiedTime(file).toMillis() != before) changed++;
            assertThat(Files.readString(file)).isIn(OLD, NEW);
        }
        assertThat(changed).isEqualTo(3);
    }

    @Test
    void theFileKeepsItsRights() throws Exception {
        Path file = folder.resolve("rig.yaml");
        Files.writeString(file, OLD);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r--"));
        DiskFile.write(file, Body.utf8(NEW));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-rw-r--");
        assertThat(Files.readString(file)).isEqualTo(NEW);
    }
}
