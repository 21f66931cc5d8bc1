package stokewell.building;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WindowTest {

    /** Published ranges: single 5.0 to 5.8, double 2.8 to 3.0, low-e argon 1.1 to 1.3, triple 0.8; trade rules for the rest. */
    @ParameterizedTest
    @CsvSource({
        "single glazing, 5.0, 5.8",
        "Double Glazed, 2.8, 3.0",
        "low-e, 1.1, 1.3",
        "triple pane, 0.5, 0.8",
        "8 mm twin-wall, 3.1, 3.5",
        "twinwall 8mm, 3.1, 3.5",
        "single film, 6.5, 7.0",
        "double film, 3.9, 4.1"
    })
    void wordsFindAWindowOfTheRightSort(String words, double low, double high) {
        assertThat(Window.named(words))
                .hasValueSatisfying(w -> assertThat(w.u()).isBetween(low, high));
    }

    @Test
    void everyWindowIsFoundByItsNameAndLetsSomeSunIn() {
        for (Window w : Window.values()) {
            assertThat(Window.named(w.name())).contains(w);
            assertThat(w.g()).isBetween(0.3, 0.95);
        }
        assertThat(Window.named("stained")).isEmpty();
    }
}
