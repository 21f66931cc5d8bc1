package stokewell.show;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where a line may end. */
class LineEndsTest {

    private static List<String> pieces(String text) {
        LineEnds ends = new LineEnds();
        ends.setText(text);
        List<String> all = new ArrayList<>();
        int from = 0;
        for (int to = ends.next(); to >= 0; to = ends.next()) {
            all.add(text.substring(from, to));
            from = to;
        }
        return all;
    }

    @Test
    void aLineEndsAfterSpacesAndHyphens() {
        assertThat(pieces("a high-limit  fan")).containsExactly("a ", "high-", "limit  ", "fan");
        assertThat(pieces("end ")).containsExactly("end ");
        assertThat(pieces("")).isEmpty();
        assertThat(pieces(" - x")).containsExactly(" ", "- ", "x");
    }

    @Test
    void noLineEndsWithinATemperatureOrAUnit() {
        assertThat(pieces("at 85\u00a0°C, 19\u00a0L/min")).containsExactly("at ", "85\u00a0°C, ", "19\u00a0L/min");
    }
}
