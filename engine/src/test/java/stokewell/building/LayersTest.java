package stokewell.building;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stokewell.building.Layers.Band;

class LayersTest {

    private static final Layer PLASTERBOARD = plain(0.0125, 0.21);
    private static final Layer CAVITY = Layer.gap(0.18);
    private static final Layer BRICK = plain(0.102, 0.77);

    /** Scottish Building Standards, worked examples of U-value calculations using the combined method, 6.B.2. */
    @Test
    void theTimberFrameWallOfTheScottishHandbook() {
        var r = Layers.framed(
                HeatFlow.HORIZONTAL.inside(),
                List.of(
                        Band.whole(PLASTERBOARD),
                        new Band(plain(0.140, 0.04), plain(0.140, 0.12), 0.15),
                        Band.whole(plain(0.009, 0.13)),
                        Band.whole(CAVITY),
                        Band.whole(BRICK)),
                HeatFlow.OUTSIDE);
        assertThat(r.upper()).isCloseTo(3.435, within(0.002));
        assertThat(r.lower()).isCloseTo(3.304, within(0.002));
        assertThat(r.u()).isCloseTo(0.2968, withinPercentage(0.1));
    }

    /** The same, 6.B.3: two bridged layers, four sections. */
    @Test
    void theCavityWallOfTheScottishHandbook() {
        var r = Layers.framed(
                HeatFlow.HORIZONTAL.inside(),
                List.of(
                        Band.whole(PLASTERBOARD),
                        new Band(plain(0.089, 0.038), plain(0.089, 0.13), 0.118),
                        new Band(plain(0.125, 0.11), plain(0.125, 0.88), 0.067),
                        Band.whole(CAVITY),
                        Band.whole(BRICK)),
                HeatFlow.OUTSIDE);
        assertThat(r.upper()).isCloseTo(3.617, within(0.002));
        assertThat(r.lower()).isCloseTo(3.136, within(0.002));
        assertThat(r.u()).isCloseTo(0.2962, withinPercentage(0.1));
    }

    /** Bare steel sheet is all film: 5.9 W/(m² K), a rule of the trade. */
    @Test
    void bareSteelIsAllFilm() {
        double u = Layers.u(HeatFlow.HORIZONTAL.inside(), List.of(plain(0.001, 50)), HeatFlow.OUTSIDE);
        assertThat(u).isCloseTo(5.9, within(0.05));
    }

    /** 25 mm boards: 2.6 to 2.8 W/(m² K), a rule of the trade. */
    @Test
    void boardsAreLittleBetter() {
        double u = Layers.u(HeatFlow.HORIZONTAL.inside(), List.of(plain(0.025, 0.13)), HeatFlow.OUTSIDE);
        assertThat(u).isCloseTo(2.7, within(0.1));
    }

    @Test
    void aFrameLikeItsFillingMakesNoDifference() {
        Layer fill = plain(0.1, 0.04);
        var r = Layers.framed(0.13, List.of(new Band(fill, fill, 0.2), Band.whole(BRICK)), 0.04);
        assertThat(r.upper()).isCloseTo(r.lower(), within(1e-12));
        assertThat(1 / r.u()).isCloseTo(1 / Layers.u(0.13, List.of(fill, BRICK), 0.04), within(1e-12));
    }

    @Test
    void bridgedLayersHoldTheMeanOfBoth() {
        Band band = new Band(new Layer(2.5, 1000), new Layer(0.8, 50000), 0.15);
        assertThat(band.equivalent().capacity()).isCloseTo(0.85 * 1000 + 0.15 * 50000, within(1e-9));
        assertThat(band.equivalent().resistance()).isBetween(0.8, 2.5);
    }

    /** ISO 6946, table of unventilated air layers, from memory. */
    @ParameterizedTest
    @CsvSource({
        "HORIZONTAL, 0.025, 0.18",
        "UP, 0.1, 0.16",
        "DOWN, 0.05, 0.21",
        "DOWN, 1, 0.23",
        "UP, 0.006, 0.12",
        "UP, 0, 0"
    })
    void airGapsOfTheStandard(HeatFlow flow, double thickness, double resistance) {
        assertThat(flow.gap(thickness)).isCloseTo(resistance, within(1e-9));
    }

    private static Layer plain(double thickness, double conductivity) {
        return Layer.of(thickness, conductivity, 1000, 1000);
    }
}
