package stokewell.show;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import stokewell.file.UnitSystem;

class SpokenTest {

    private static String us(String text) {
        return Spoken.in(text, UnitSystem.US);
    }

    private static String si(String text) {
        return Spoken.in(text, UnitSystem.SI);
    }

    @Test
    void whereBothAreWrittenOneIsKept() {
        String both = "It boils at 95 °C (203 °F), 3 mm (1/8 in) thick, 1.5 to 2.5 bar (20 to 35 psi).";
        assertThat(us(both)).isEqualTo("It boils at 203 °F, 1/8 in thick, 20 to 35 psi.");
        assertThat(si(both)).isEqualTo("It boils at 95 °C, 3 mm thick, 1.5 to 2.5 bar.");
        assertThat(us("Above 119 US gallons (450 L)")).isEqualTo("Above 119 US gallons");
        assertThat(si("Above 119 US gallons (450 L)")).isEqualTo("Above 450 L");
    }

    @Test
    void aDifferenceNeverGetsTheOffsetOfTheScale() {
        assertThat(us("10 K over 90 °C")).isEqualTo("18 °F over 194 °F");
        assertThat(us("from -5 °C")).isEqualTo("from 23 °F");
    }

    @Test
    void numbersKeepTheDigitsThatTheyHad() {
        assertThat(us("450 mm")).isEqualTo("18 in");
        assertThat(us("0.27 kW/m of pipe, 11.5 kW")).isEqualTo("0.28 kBtu/h·ft of pipe, 39.2 kBtu/h");
        assertThat(us("91 L of 1811 L")).isEqualTo("24 gal of 478 gal");
        assertThat(us("10 to 18 m")).isEqualTo("33 to 59 ft");
        assertThat(us("15 to 20 kPa")).isEqualTo("2.2 to 2.9 psi");
    }

    @Test
    void whatIsNoQuantityStays() {
        for (String text : new String[] {
            "EN 12828, UL 103 HT, S235 steel",
            "a pump of 25 W, 71 Wh for 5 h",
            "0.1 kg",
            "safety.vent.rise",
            "4 in 10 fires"
        }) {
            assertThat(si(text)).isEqualTo(text);
        }
        assertThat(us("EN 303-5, 4 Pa")).isEqualTo("EN 303-5, 0.016 in wc");
    }
}
