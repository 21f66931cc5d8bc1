package stokewell.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PipeSizeTest {

    /** ASME B36.10M schedules 40 and 80, ASTM B88; metric copper is outside less two walls. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '|',
            value = {
                "3/4 in copper L; 22.225; 19.939",
                "3/4\" copper type L; 22.225; 19.939",
                "¾ inch copper; 22.225; 19.939",
                "1/2 in copper K; 15.875; 13.386",
                "2 in copper M; 53.975; 51.029",
                "1¼ in copper; 34.925; 32.131",
                "1 in steel; 33.4; 26.64",
                "1-1/4 black iron sch 40; 42.2; 35.08",
                "1 1/2 in galvanised; 48.3; 40.94",
                "3/4 stainless schedule 40; 26.7; 20.96",
                "1 in sch 40; 33.4; 26.64",
                "1-1/2\" sched. 40; 48.3; 40.94",
                "1 in sch 80; 33.4; 24.30",
                "1 1/4 in steel schedule 80; 42.2; 32.50",
                "3/4 in type L; 22.225; 19.939",
                "1/2 type M; 15.875; 14.453",
                "22 mm copper; 22; 20",
                "22mm copper; 22; 20",
                "22 x 0.9 mm copper; 22; 20.2",
                "15 x 0,7 copper; 15; 13.6",
                "15x1 copper; 15; 13",
                "28 mm copper; 28; 26",
                "35 mm copper pipe; 35; 32.6",
                "3/4 in PEX; 22.225; 17.297",
                "16 mm pex; 16; 12",
                "25 x 2.3 PEX; 25; 20.4"
            })
    void tradeWordsFindThePipe(String words, double outer, double inner) {
        assertThat(PipeSize.named(words)).hasValueSatisfying(p -> {
            assertThat(p.outer()).isCloseTo(outer / 1000, within(1e-9));
            assertThat(p.inner()).isCloseTo(inner / 1000, within(1e-9));
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "copper",
                "3/4 in",
                "7/8 in copper",
                "23 mm copper",
                "1 in bamboo",
                "",
                "22 x 7 copper",
                "1 in sch 160",
                "3/4 in type Q"
            })
    void unknownWordsFindNothing(String words) {
        assertThat(PipeSize.named(words)).isEmpty();
    }

    @Test
    void everyPipeIsFoundByItsOwnName() {
        for (PipeSize p : PipeSize.all()) {
            assertThat(PipeSize.named(p.name())).contains(p);
        }
    }

    /** Moody (1944). */
    @Test
    void galvanizedIsRougherThanDrawnTube() {
        assertThat(PipeSize.Material.COPPER.roughness).isEqualTo(1.5e-6);
        assertThat(PipeSize.Material.STEEL.roughness).isEqualTo(45e-6);
        assertThat(PipeSize.Material.GALVANIZED.roughness).isEqualTo(150e-6);
    }

    /** 22 x 1 copper weighs 0.587 kg/m (EN 1057 tables, from memory). */
    @Test
    void copperTubeWeighsWhatTheTableSays() {
        PipeSize pipe = PipeSize.named("22 x 1 copper").orElseThrow();
        assertThat(pipe.massPerMetre()).isCloseTo(0.587, within(0.002));
        assertThat(pipe.capacityPerMetre()).isCloseTo(0.587 * 380, within(1.0));
        assertThat(pipe.wallResistance()).isCloseTo(Math.log(1.1) / (2 * Math.PI * 380), within(1e-12));
    }
}
