package stokewell.rig;

import static stokewell.rig.Dimension.CONDUCTIVITY;
import static stokewell.rig.Dimension.COUNT;
import static stokewell.rig.Dimension.LENGTH;
import static stokewell.rig.Dimension.NONE;

/** A run of pipe with its fittings. */
public record Pipe(
        @Entry(is = LENGTH, low = 0.05, high = 300, says = "Length of the run.")
        double length,

        @Entry(is = LENGTH, low = 0.004, high = 0.3, orElse = "26 mm", pipe = true, says = "Inside diameter.")
        double bore,

        @Entry(is = LENGTH, low = 0.0005, high = 0.02, orElse = "2 mm", says = "Wall thickness.")
        double wall,

        @Entry(is = LENGTH, low = 0, high = 0.3, orElse = "0 mm", says = "Thickness of its insulation; 0 is bare.")
        double insulation,

        @Entry(
                is = CONDUCTIVITY,
                low = 0.01,
                high = 1,
                orElse = "0.04 W/m.K",
                says = "Conductivity of that insulation.")
        double insulationConductivity,

        @Entry(is = COUNT, low = 0, high = 100, orElse = "4", says = "Elbows in it.")
        int elbows,

        @Entry(is = NONE, low = 0, high = 500, orElse = "3", says = "Sum of the loss factors of everything else in it.")
        double lossFactors,

        @Entry(is = LENGTH, low = 0, high = 0.003, orElse = "0.05 mm", says = "Roughness of its inside.")
        double roughness,

        @Entry(orElse = "room", says = "Where it runs: room or outdoors.")
        Where where) {

    public Pipe {
        Entries.check(
                Pipe.class,
                "pipe",
                length,
                bore,
                wall,
                insulation,
                insulationConductivity,
                elbows,
                lossFactors,
                roughness,
                where);
    }

    /** Water inside, m3. */
    public double volume() {
        return Math.PI / 4 * bore * bore * length;
    }

    /** Where a pipe loses its heat to. */
    public enum Where {
        ROOM,
        OUTDOORS
    }
}
