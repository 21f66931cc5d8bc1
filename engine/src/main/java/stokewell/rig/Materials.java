package stokewell.rig;

import static stokewell.rig.Dimension.LENGTH;
import static stokewell.rig.Dimension.NONE;

/** What things are made of. */
public record Materials(
        @Entry(orElse = Entry.ABSENT, says = "Pipe of the loop: steel, stainless, copper, galvanised or plastic.")
        Metal pipe,

        @Entry(
                is = LENGTH,
                low = 0,
                high = 100,
                orElse = Entry.ABSENT,
                says = "From the stove or its flue to the nearest plastic pipe.")
        double plasticFromStove,

        @Entry(orElse = Entry.ABSENT, says = "The pickups: steel, stainless, copper or galvanised.")
        Metal pickup,

        @Entry(
                orElse = Entry.ABSENT,
                says = "The tank: steel, stainless, copper, galvanised, plastic or rubber (lined).")
        Metal tank,

        @Entry(is = LENGTH, low = 0.05, high = 10, orElse = Entry.ABSENT, says = "Between stiffeners of a flat wall.")
        double stiffeners,

        @Entry(orElse = Entry.ABSENT, says = "Is the water treated against rust?")
        Boolean inhibitor,

        @Entry(orElse = Entry.ABSENT, says = "Are the joints in the fire soldered?")
        Boolean soldered,

        @Entry(
                is = NONE,
                low = 0,
                high = 2000,
                orElse = Entry.ABSENT,
                says = "Hardness of the water, mg of lime in a litre (ppm), by a strip or the waterworks.")
        double hardness,

        @Entry(is = NONE, low = 3, high = 13, orElse = Entry.ABSENT, says = "pH of the water, by a strip.")
        double ph) {

    public Materials {
        Entries.check(
                Materials.class,
                "safety.materials",
                pipe,
                plasticFromStove,
                pickup,
                tank,
                stiffeners,
                inhibitor,
                soldered,
                hardness,
                ph);
    }
}
