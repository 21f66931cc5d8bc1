package stokewell.network;

import stokewell.loop.Circuit;
import stokewell.matter.Glycol;
import stokewell.matter.Water;

/** What fills a circuit: water, or propylene glycol and water. */
record Fluid(double glycol) {

    /** Mean specific heat in service, J/(kg K). */
    double specificHeat() {
        return glycol > 0 ? Glycol.specificHeat(glycol, 333.15) : Water.specificHeat(333.15);
    }

    double density(double t) {
        return glycol > 0 ? Glycol.density(glycol, t) : Water.density(t);
    }

    double viscosity(double t) {
        return glycol > 0 ? Glycol.viscosity(glycol, t) : Water.viscosity(Math.max(t, 273.15));
    }

    double conductivity(double t) {
        return glycol > 0 ? Glycol.conductivity(glycol, t) : Water.conductivity(t);
    }

    double freezing() {
        return glycol > 0 ? Glycol.freezingPoint(glycol) : 273.15;
    }

    /** Density as a parabola through 283, 330 and 373 K. */
    Circuit.Density parabola() {
        double base = density(330);
        double cold = density(283) - base;
        double hot = density(373) - base;
        // cold = 47 b1 − 2209 b2, hot = −43 b1 − 1849 b2
        double b2 = -(cold / 47 + hot / 43) / (47 + 43);
        double b1 = (cold + 2209 * b2) / 47;
        return new Circuit.Density(base, b1, b2);
    }
}
