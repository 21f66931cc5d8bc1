package stokewell.show;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import stokewell.file.UnitSystem;

class NumbersTest {

    @Property
    void whatIsWrittenIsWithinHalfOfTheLastPlace(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double value, @ForAll @IntRange(max = 6) int decimals) {
        BigDecimal written = new BigDecimal(Numbers.of(value, decimals));
        assertThat(written.scale()).isEqualTo(decimals);
        BigDecimal off = written.subtract(new BigDecimal(value)).abs();
        BigDecimal half = new BigDecimal("0.5000001").scaleByPowerOfTen(-decimals);
        assertThat(off.setScale(12, RoundingMode.HALF_EVEN)).isLessThanOrEqualTo(half);
    }

    @Test
    void aZeroHasNoSignAndNoNumberIsADash() {
        assertThat(Numbers.of(-0.04, 1)).isEqualTo("0.0");
        assertThat(Numbers.of(Double.NaN, 1)).isEqualTo("-");
        assertThat(Numbers.of(Double.NEGATIVE_INFINITY, 1)).isEqualTo("-");
        assertThat(Numbers.bare(20.50, 3)).isEqualTo("20.5");
        assertThat(Numbers.bare(100, 0)).isEqualTo("100");
        assertThat(Numbers.percent(0.003)).isEqualTo("< 1 %");
    }

    @Test
    void unitsAreThoseOfTheirFamily() {
        Measure us = Measure.plain(UnitSystem.US);
        Measure si = Measure.plain(UnitSystem.SI);
        assertThat(us.room(273.15)).isEqualTo("32.0 F");
        assertThat(us.difference(10, 0)).isEqualTo("18 F");
        assertThat(us.mass(0.45359237, 2)).isEqualTo("1.00 lb");
        assertThat(us.energy(1055055.85262)).isEqualTo("1 kBtu");
        assertThat(us.water(3.785411784)).isEqualTo("1.00 gal");
        assertThat(si.water(3.785411784)).isEqualTo("3.8 L");
        assertThat(si.minutes(150)).isEqualTo("2.5 h");
        assertThat(us.kelvin(us.scale(300))).isEqualTo(300, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(Measure.printed(UnitSystem.SI).room(283.15)).isEqualTo("10.0\u00a0°C");
    }

    @Test
    void marksOfAnAxisAreRound() {
        assertThat(Steps.nice(0.3)).isEqualTo(0.5);
        assertThat(Steps.nice(7)).isEqualTo(10);
        assertThat(Steps.hours(2.5)).isEqualTo(3);
    }
}
