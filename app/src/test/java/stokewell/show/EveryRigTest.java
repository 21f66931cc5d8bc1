package stokewell.show;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringWriter;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stokewell.file.UnitSystem;
import stokewell.network.Compiler;
import stokewell.rig.Rig;
import stokewell.run.Night;
import stokewell.run.NightRun;
import stokewell.run.Simulation;
import stokewell.weather.DayRange;
import stokewell.weather.Site;
import stokewell.weather.Weather;

/** What a real run of every kind of rig brings can be told in every way. */
class EveryRigTest {

    private static Night night(Rig rig) {
        Site site = Compiler.site(rig);
        DayRange range = new DayRange(rig.weather().low(), rig.weather().high());
        Weather weather = Weather.day(range, 3, 0.4, site, LocalDate.of(2023, 1, 15), Compiler.surfaces(rig));
        LocalDateTime from = LocalDateTime.of(2023, 1, 16, 8, 0);
        NightRun.Ask ask = new NightRun.Ask(
                from, from.plusDays(1), LocalTime.of(7, 30), LocalTime.of(16, 0), 283.15, 300, Simulation.TOLERANCE);
        return NightRun.run(rig, weather, ask);
    }

    @ParameterizedTest
    @MethodSource("stokewell.rig.Rigs#all")
    void isToldWithoutAnythingAbsurd(Rig rig) throws Exception {
        Night night = night(rig);
        for (UnitSystem units : UnitSystem.values()) {
            CardFacts facts = CardFacts.of(400, units);
            StringWriter json = new StringWriter();
            NightJson.write(night, facts, json);
            StringBuilder csv = new StringBuilder();
            TraceCsv.write(night, units, csv);
            String card = NightCard.text(night, facts, units);
            String plot = TerminalPlot.night(night, units, 80, 20);
            String all = card + plot + NightPage.html(night, facts, units) + json + csv;
            assertThat(all).doesNotContain("NaN").doesNotContain("Infinity");
            for (String line : (card + plot).split("\n"))
                assertThat(line.length()).as(line).isLessThanOrEqualTo(80);
        }
    }
}
