package stokewell.rig;

import static stokewell.rig.Dimension.LENGTH;
import static stokewell.rig.Dimension.MASS;
import static stokewell.rig.Dimension.NONE;
import static stokewell.rig.Dimension.SHARE;
import static stokewell.rig.Dimension.THERMAL_RESISTANCE;

/** The way of the smoke: a connector inside the room, then the chimney. */
public record Flue(
        @Entry(is = LENGTH, low = 0.06, high = 0.6, orElse = "150 mm", says = "Inside diameter, all the way.")
        double diameter,

        @Entry(is = LENGTH, low = 0, high = 15, orElse = "1.5 m", says = "Bare connector inside the room.")
        double connector,

        @Entry(is = LENGTH, low = 0.5, high = 40, orElse = "5 m", says = "Chimney above the connector: what draws.")
        double height,

        @Entry(is = SHARE, low = 0, high = 1, orElse = "70 %", says = "Share of the chimney that stands outdoors.")
        double outdoors,

        @Entry(
                is = THERMAL_RESISTANCE,
                low = 0,
                high = 3,
                orElse = "0.4 m2.K/W",
                says = "Insulation of the chimney's wall: 0 single steel, 0.4 insulated steel, 0.2 brick.")
        double insulation,

        @Entry(is = MASS, low = 2, high = 5000, orElse = "30 kg", says = "What the gas must warm: liner or brick.")
        double mass,

        @Entry(is = NONE, low = 1, high = 60, orElse = "6", says = "Sum of the loss factors of bends, damper, cap.")
        double lossFactors) {

    public Flue {
        Entries.check(Flue.class, "flue", diameter, connector, height, outdoors, insulation, mass, lossFactors);
    }
}
