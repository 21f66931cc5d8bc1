package stokewell.rig;

import static stokewell.rig.Dimension.AREA;
import static stokewell.rig.Dimension.LENGTH;
import static stokewell.rig.Dimension.MASS;
import static stokewell.rig.Dimension.THERMAL_RESISTANCE;
import static stokewell.rig.Dimension.TRANSMITTANCE;
import static stokewell.rig.Dimension.VOLUME;

/** A thing that takes heat from the fire or the stove into water. */
public record Pickup(
        @Entry(says = "What you call it.") String name,

        @Entry(orElse = "coil", says = "coil or jacket (in the fire), or box (stands on the stove).")
        Kind kind,

        @Entry(is = AREA, low = 0.01, high = 20, says = "Surface that takes the heat.")
        double area,

        @Entry(is = VOLUME, low = 1e-4, high = 1, says = "Water in it.")
        double volume,

        @Entry(is = MASS, low = 0.1, high = 1000, says = "Metal of it.")
        double metal,

        @Entry(
                is = LENGTH,
                low = 0.005,
                high = 0.5,
                orElse = "26 mm",
                pipe = true,
                says = "Bore of the water's way through it.")
        double bore,

        @Entry(is = LENGTH, low = 0.05, high = 100, orElse = "4 m", says = "Length of the water's way through it.")
        double length,

        @Entry(is = LENGTH, low = -2, high = 10, orElse = "0.6 m", says = "Height of its middle above the floor.")
        double elevation,

        @Entry(
                is = THERMAL_RESISTANCE,
                low = 0,
                high = 0.1,
                orElse = "0.004 m2.K/W",
                says = "Soot and ash on the fire side.")
        double fouling,

        @Entry(
                is = TRANSMITTANCE,
                low = 1,
                high = 2000,
                orElse = "80 W/m2.K",
                says = "How well a box touches the plate below it; 1 mm of air gap takes most of it.")
        double contact) {

    public Pickup {
        Entries.check(
                Pickup.class, "pickup", name, kind, area, volume, metal, bore, length, elevation, fouling, contact);
    }

    /** Where the heat comes from. */
    public enum Kind {
        COIL,
        JACKET,
        BOX
    }
}
