package stokewell.show;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stokewell.file.UnitSystem;

class SizesTest {

    private static final Sizes SI = new Sizes(Measure.printed(UnitSystem.SI));
    private static final Sizes US = new Sizes(Measure.printed(UnitSystem.US));

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }

    /** By the exact inch of 25.4 mm. */
    @ParameterizedTest
    @CsvSource({
        "1.25, 1250 mm, 49 3/16 in, 4 ft 1 1/4 in",
        "0.3048, 305 mm, 12 in, 1 ft",
        "2.7432, 2743 mm, 108 in, 9 ft",
        "0.0127, 13 mm, 1/2 in, 1/2 in",
        "1.8288, 1829 mm, 72 in, 6 ft",
        "-0.5, -500 mm, -19 11/16 in, -1 ft 7 5/8 in"
    })
    void lengthsAreReadFromATape(double metres, String si, String cut, String tape) {
        assertThat(plain(SI.cut(metres))).isEqualTo(si);
        assertThat(plain(SI.tape(metres))).isEqualTo(si);
        assertThat(plain(US.cut(metres))).isEqualTo(cut);
        assertThat(plain(US.tape(metres))).isEqualTo(tape);
    }

    /** A hair under a foot is a foot, not 0 ft 12 in. */
    @Test
    void inchesNeverReachTwelve() {
        assertThat(plain(US.tape(0.3047))).isEqualTo("1 ft");
        assertThat(plain(US.tape(0.6095))).isEqualTo("2 ft");
    }

    /** 1 US gallon is 231 cubic inches, 1 psi 6894.757 Pa, 1 psf 47.880259 Pa. */
    @Test
    void otherUnits() {
        assertThat(plain(US.volume(0.003785411784))).isEqualTo("1.0 gal");
        assertThat(plain(SI.volume(0.5))).isEqualTo("500 L");
        assertThat(plain(US.pressure(206843))).isEqualTo("30 psi");
        assertThat(plain(SI.pressure(150000))).isEqualTo("1.50 bar");
        assertThat(plain(US.load(9806.65))).isEqualTo("205 psf");
        assertThat(plain(US.gauge(0.0015875))).isEqualTo("1/16 in");
        assertThat(plain(SI.gauge(0.0015875))).isEqualTo("1.6 mm");
    }
}
