package stokewell.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stokewell.rig.Rigs;

class PlacingTest {

    private static Series daily(String name, double celsius, double swing) {
        double[] time = new double[288];
        double[] value = new double[288];
        for (int i = 0; i < 288; i++) {
            time[i] = 600 * i;
            value[i] = 273.15 + celsius + swing * Math.sin(2 * Math.PI * time[i] / 86400);
        }
        return new Series(name, time, value);
    }

    @Test
    void namesInSeveralLanguagesTellThePlace() {
        assertThat(Placing.byName("Puffer oben")).isEqualTo(Spot.STORE_TOP);
        assertThat(Placing.byName("tank_bottom")).isEqualTo(Spot.STORE_BOTTOM);
        assertThat(Placing.byName("T_outside [C]")).isEqualTo(Spot.OUTDOOR);
        assertThat(Placing.byName("Sensor 3")).isNull();
    }

    @Test
    void namelessSensorsArePlacedByWhatTheyDo() {
        List<Series> four = List.of(daily("1", 62, 15), daily("2", 15, 2), daily("3", -6, 5), daily("4", 45, 15));
        Placing p = Placing.of(four, Map.of(), Rigs.pumped());
        assertThat(p.spots()).containsExactly(Spot.STORE_TOP, Spot.ROOM, Spot.OUTDOOR, Spot.STORE_BOTTOM);
    }

    @Test
    void twoThatBehaveAlikeAreAskedFor() {
        List<Series> three = List.of(daily("a", 15, 2), daily("b", 16, 2), daily("outside", -6, 5));
        Placing p = Placing.of(three, Map.of(), Rigs.pumped());
        assertThat(p.unsure()).containsExactly("a", "b");
        Placing said = Placing.of(three, Map.of("a", Spot.ROOM, "b", Spot.NOTHING), Rigs.pumped());
        assertThat(said.unsure()).isEmpty();
    }

    @Test
    void aNameThatCannotBeIsNotBelieved() {
        Placing p = Placing.of(List.of(daily("room", 70, 10)), Map.of(), Rigs.pumped());
        assertThat(p.unsure()).containsExactly("room");
    }
}
