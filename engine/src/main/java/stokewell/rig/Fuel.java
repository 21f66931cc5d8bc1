package stokewell.rig;

import static stokewell.rig.Dimension.SHARE;

/** What is burnt. */
public record Fuel(
        @Entry(orElse = "mixed hardwood", says = "Species or mix, by its name.")
        String species,

        @Entry(is = SHARE, low = 0, high = 1.5, orElse = "20 %", says = "Water in it, on the basis named beside.")
        double moisture,

        @Entry(
                orElse = "wet",
                says = "wet: water over all the wood. dry: water over dry wood, which is what a pin meter reads.")
        Basis basis,

        @Entry(orElse = "splits", says = "splits, offcuts (thin and bone dry: they run away) or rounds.")
        Form form,

        @Entry(is = SHARE, low = 0.3, high = 0.9, orElse = "62 %", says = "Solid share of your stack.")
        double stackSolid) {

    public Fuel {
        Entries.check(Fuel.class, "fuel", species, moisture, basis, form, stackSolid);
        if (basis == Basis.WET && moisture > 0.65) {
            throw new RigFault(
                    "fuel",
                    "moisture",
                    "no wood holds more than 65 % water on the wet basis",
                    "a pin meter reads the dry basis: write basis: dry");
        }
    }

    /** Water over all the wood, 0 to 1. */
    public double wetBasis() {
        return basis == Basis.WET ? moisture : moisture / (1 + moisture);
    }

    /** What the moisture is counted on. */
    public enum Basis {
        WET,
        DRY
    }

    /** How the wood is cut: sets how fast it can burn. */
    public enum Form {
        SPLITS,
        OFFCUTS,
        ROUNDS
    }
}
