package stokewell.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stokewell.file.RigFile;
import stokewell.file.UnitSystem;
import stokewell.rig.Rig;
import stokewell.run.Night;
import stokewell.run.NightRun;
import stokewell.run.Simulation;
import stokewell.run.Trace;
import stokewell.weather.Weather;

/** Every example rig: its books close, and its answers are those of a run at tolerances a thousand times tighter. */
class ExamplesTest {

    /** What docs/how-exact.md promises of the examples, far below {@link stokewell.run.Ledger#TOLERANCE}. */
    private static final double CLOSES = 1e-11;

    private static final Path FOLDER = Path.of("..", "examples");

    static Stream<Path> examples() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            List<Path> found =
                    files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
            assertThat(found).hasSizeGreaterThanOrEqualTo(1);
            return found.stream();
        }
    }

    private static Night night(Path file, double tolerance) throws Exception {
        Rig rig = RigFile.read(file, List.of()).rig();
        WeatherChoice choice = WeatherChoice.of(null, rig, file, UnitSystem.SI);
        Weather weather = choice.weather();
        LocalDateTime from = choice.day().atTime(8, 0);
        return NightRun.run(
                rig,
                weather,
                new NightRun.Ask(
                        from, from.plusDays(1), LocalTime.of(7, 30), LocalTime.of(16, 0), 283.15, 300, tolerance));
    }

    /** 0.05 K in room and store against tolerances a thousand times tighter. */
    @ParameterizedTest
    @MethodSource("examples")
    void roomAndStoreHoldToATwentiethOfAKelvin(Path file) throws Exception {
        Trace usual = night(file, Simulation.TOLERANCE).trace();
        Trace tight = night(file, Simulation.TOLERANCE / 1000).trace();
        for (String column : usual.names()) {
            if (!column.equals("room") && !column.startsWith("store ")) continue;
            double most = 0;
            for (int i = 0; i < usual.size(); i++) {
                most = Math.max(most, Math.abs(usual.value(column, i) - tight.value(column, i)));
            }
            assertThat(most).as("%s of %s", column, file.getFileName()).isLessThan(0.05);
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void theLedgerClosesToRounding(Path file) throws Exception {
        assertThat(Math.abs(night(file, Simulation.TOLERANCE).ledger().relativeResidual()))
                .isLessThan(CLOSES);
    }
}
