package stokewell.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.junit.jupiter.api.Test;
import stokewell.file.SensorKind;
import stokewell.file.SensorUnit;

class DayBlockTest {

    private static final SensorUnit CELSIUS = SensorUnit.named("C").orElseThrow();
    private static final SensorUnit FAHRENHEIT = SensorUnit.named("F").orElseThrow();
    private static final long SLOT = Slots.of(7, 1_700_000_000L);
    private final DayBlock block = new DayBlock();

    /** Whatever the steps, the unit, the decimals and the sizes: every bit comes back. Seeded. */
    @Test
    void everyDayComesBackToTheLastBit() {
        Random random = new Random(41);
        SensorUnit[] units = {CELSIUS, FAHRENHEIT, SensorUnit.named("%").orElseThrow(), SensorUnit.si(SensorKind.NUMBER)
        };
        for (int round = 0; round < 3000; round++) {
            SensorUnit unit = units[random.nextInt(units.length)];
            Readings day = day(random, unit);
            byte[] bytes = block.encode(SLOT, day.times(), day.values(), 0, day.size(), unit);
            assertThat(block.decode(SLOT, bytes)).isEqualTo(day);
        }
    }

    private static Readings day(Random random, SensorUnit unit) {
        int n = 1 + random.nextInt(400);
        long[] times = new long[n];
        double[] values = new double[n];
        long t = Slots.start(SLOT) + random.nextInt(100);
        int jitter = random.nextInt(3) == 0 ? 1 + random.nextInt(20) : 1;
        double ten = Math.pow(10, random.nextInt(5));
        boolean wild = random.nextInt(10) == 0;
        double level = random.nextInt(100);
        for (int i = 0; i < n; i++) {
            times[i] = t;
            t += 100 + random.nextInt(jitter);
            level += random.nextGaussian();
            values[i] = wild
                    ? random.nextGaussian() * Math.pow(10, random.nextInt(60) - 30)
                    : unit.toSi(Math.rint(level * ten) / ten);
        }
        return new Readings(times, values);
    }

    @Test
    void aFiveMinuteDayOfTenthsTakesHalfAKilobyte() {
        long[] times = new long[288];
        double[] values = new double[288];
        for (int i = 0; i < 288; i++) {
            times[i] = Slots.start(SLOT) + 300L * i;
            values[i] = FAHRENHEIT.toSi(Math.rint(680 + 40 * Math.sin(i / 20.0)) / 10);
        }
        assertThat(block.encode(SLOT, times, values, 0, 288, FAHRENHEIT)).hasSizeLessThan(512);
    }

    @Test
    void anyDamagedByteIsFoundOut() {
        Readings day = day(new Random(3), CELSIUS);
        byte[] bytes = block.encode(SLOT, day.times(), day.values(), 0, day.size(), CELSIUS);
        for (int i = 0; i < bytes.length; i++) {
            byte[] damaged = bytes.clone();
            damaged[i] ^= 0x10;
            assertThatThrownBy(() -> block.decode(SLOT, damaged))
                    .isInstanceOf(ShopFault.class)
                    .hasMessageContaining("sensor 7 on 2023-11-14 are damaged");
        }
        assertThatThrownBy(() -> block.decode(SLOT + 1, bytes)).isInstanceOf(ShopFault.class);
        assertThatThrownBy(() -> block.decode(SLOT, new byte[3])).isInstanceOf(ShopFault.class);
    }
}
