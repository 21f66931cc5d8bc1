package stokewell.matter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.HashSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MaterialTest {

    /** ISO 10456:2007 table 3, as read: exactly. */
    @ParameterizedTest
    @CsvSource({
        "copper, 380, 8900, 380",
        "aluminium, 160, 2800, 880",
        "steel, 50, 7800, 450",
        "stainless steel, 17, 7900, 460",
        "hardwood, 0.18, 700, 1600",
        "softwood, 0.13, 500, 1600",
        "concrete, 1.65, 2200, 1000",
        "dense concrete, 2.00, 2400, 1000",
        "screed, 1.15, 1800, 1000",
        "glass, 1.0, 2500, 750"
    })
    void theLibraryIsIso10456WhereThatWasRead(String name, double k, double rho, double c) {
        assertThat(Material.named(name)).contains(new Material(name, k, rho, c));
    }

    /** CIBSE Guide A table 3, ISO 10456 and worked U-values as read; conductivity alone, exactly. */
    @ParameterizedTest
    @CsvSource({
        "brass, 120",
        "reinforced concrete, 2.3",
        "rubber, 0.17",
        "pvc, 0.17",
        "asphalt, 0.70",
        "bitumen felt, 0.23",
        "cellular glass, 0.048",
        "pur, 0.028",
        "concrete block, 1.63",
        "aerated concrete, 0.16",
        "brick, 0.77",
        "mineral wool, 0.038",
        "glass wool, 0.040"
    })
    void conductivitiesAreThoseOfTheirTables(String name, double k) {
        assertThat(Material.named(name).orElseThrow().conductivity()).isEqualTo(k);
    }

    /** Ranges of the trade; from memory, so only between. */
    @ParameterizedTest
    @CsvSource({"xps, 0.029, 0.036", "eps, 0.031, 0.038", "pir, 0.022, 0.026", "cast iron, 50, 56", "zinc, 110, 113"})
    void theRestLiesInTheRangeOfTheTrade(String name, double low, double high) {
        assertThat(Material.named(name).orElseThrow().conductivity()).isBetween(low, high);
    }

    @Test
    void namesAndAliasesMeanOneThingEach() {
        HashSet<String> seen = new HashSet<>();
        for (String name : Material.names()) {
            assertThat(seen.add(name)).as(name).isTrue();
            assertThat(Material.named(name).orElseThrow().name()).isEqualTo(name);
        }
        assertThat(Material.named(" Polyiso ").orElseThrow().name()).isEqualTo("pir");
        assertThat(Material.named("drywall").orElseThrow().name()).isEqualTo("gypsum board");
        assertThat(Material.named("wool felt")).isEmpty();
    }

    /** ISO 13370: earth's heat in a cubic metre, 3.0, 2.0 and 2.0 MJ/(m3 K). */
    @Test
    void earthHoldsTheHeatOfIso13370() {
        assertThat(Material.named("clay").orElseThrow().volumetricHeat()).isCloseTo(3.0e6, within(1.0));
        assertThat(Material.named("sand").orElseThrow().volumetricHeat()).isCloseTo(2.0e6, within(1.0));
        assertThat(Material.named("rock").orElseThrow().volumetricHeat()).isCloseTo(2.0e6, within(1.0));
        assertThat(Material.named("steel").orElseThrow().diffusivity()).isCloseTo(1.42e-5, withinPercentage(1));
    }

    @Test
    void aMaterialWithoutHeatIsRefused() {
        assertThatThrownBy(() -> new Material("wool felt", 0.04, 100, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("wool felt");
    }
}
