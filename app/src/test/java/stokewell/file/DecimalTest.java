package stokewell.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalTest {

    @Test
    void readsToTheLastBitWhatJavaReads() {
        Random random = new Random(7);
        for (int i = 0; i < 50_000; i++) {
            long digits = Math.floorMod(random.nextLong(), (long) Math.pow(10, 1 + random.nextInt(14)));
            StringBuilder text = new StringBuilder(Long.toString(digits));
            if (random.nextBoolean()) text.insert(random.nextInt(text.length() + 1), '.');
            if (random.nextBoolean()) text.insert(0, random.nextBoolean() ? '-' : '+');
            if (text.charAt(text.length() - 1) == '.' && text.length() < 3) continue;
            assertThat(Decimal.read(text.toString()))
                    .as(text.toString())
                    .isEqualTo(Double.parseDouble(text.toString()));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "-",
                "+",
                ".",
                "-.",
                "1.2.3",
                "1,5",
                "1e3",
                " 1",
                "0x1",
                "NaN",
                "1-",
                "--1",
                "1234567890123456"
            })
    void leavesAllElseToOthers(String text) {
        assertThat(Decimal.read(text)).isNaN();
    }

    @Test
    void readsWholePartsOfATextOrTellsThatTheyAreNone() {
        assertThat(Decimal.whole("20050131:0010", 4, 6)).isEqualTo(1);
        assertThat(Decimal.whole("2005-131", 2, 6)).isEqualTo(-1);
    }
}
