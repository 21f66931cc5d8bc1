package stokewell.rig;

import static stokewell.rig.Dimension.CONDUCTIVITY;
import static stokewell.rig.Dimension.DENSITY;
import static stokewell.rig.Dimension.LENGTH;
import static stokewell.rig.Dimension.SPECIFIC_HEAT;

/** One layer of a wall, a jacket or a lagging. In a rig file mostly written as words: {@code 2 in XPS}. */
public record Layer(
        @Entry(is = LENGTH, low = 0, high = 2, says = "How thick.")
        double thickness,

        @Entry(says = "What it is made of.") String material,

        @Entry(is = CONDUCTIVITY, low = 0.005, high = 450, says = "Heat conductivity.")
        double conductivity,

        @Entry(is = DENSITY, low = 0.5, high = 12000, orElse = "30 kg/m3", says = "Density.")
        double density,

        @Entry(is = SPECIFIC_HEAT, low = 100, high = 5000, orElse = "1000 J/kg.K", says = "Specific heat.")
        double specificHeat) {

    public Layer {
        Entries.check(Layer.class, "layer", thickness, material, conductivity, density, specificHeat);
    }

    /** Thermal resistance, m2 K/W. */
    public double resistance() {
        return thickness / conductivity;
    }

    /** Heat capacity, J/(m2 K). */
    public double capacity() {
        return thickness * density * specificHeat;
    }
}
