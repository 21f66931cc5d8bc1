package stokewell.show;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as a person reads them: rounded, never in powers of ten, a dash where there is none. */
final class Numbers {

    private Numbers() {}

    static String of(double value, int decimals) {
        if (!Double.isFinite(value)) return "-";
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
