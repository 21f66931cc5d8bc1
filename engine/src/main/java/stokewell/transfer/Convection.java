package stokewell.transfer;

import stokewell.matter.Air;

/**
 * Natural convection at bare surfaces: Nusselt numbers of Rayleigh and Prandtl numbers, and coefficients in room air.
 *
 * <p>Correlations of this kind are trusted to 10 to 20 %. Lengths in m, temperatures in K, coefficients in W/(m2 K).
 */
public final class Convection {

    /** Standard gravity, m/s2. */
    public static final double GRAVITY = 9.80665;

    /**
     * Below this temperature difference, K, the coefficient in air stays nearly what it is there, to be smooth at
     * zero.
     */
    private static final double STILL = 0.01;

    private static final double ATMOSPHERE = 101325;

    private Convection() {}

    /** Rayleigh number. @param beta 1/K @param difference K @param nu kinematic viscosity, m2/s @param alpha m2/s */
    public static double rayleigh(double beta, double difference, double length, double nu, double alpha) {
        return GRAVITY * beta * difference * length * length * length / (nu * alpha);
    }

    /**
     * Vertical plate, any Rayleigh number to 1e12, length its height. Churchill and Chu, IJHMT 18 (1975) 1323, eq. 9.
     */
    public static double verticalPlate(double ra, double pr) {
        double root = 0.825 + 0.387 * Math.pow(ra, 1.0 / 6) / Math.pow(1 + Math.pow(0.492 / pr, 9.0 / 16), 8.0 / 27);
        return root * root;
    }

    /** Vertical plate, laminar only and there the better one, Ra to 1e9. Churchill and Chu (1975), eq. 8. */
    public static double verticalPlateLaminar(double ra, double pr) {
        return 0.68 + 0.670 * Math.sqrt(Math.sqrt(ra)) / Math.pow(1 + Math.pow(0.492 / pr, 9.0 / 16), 4.0 / 9);
    }

    /**
     * Hot face up or cold face down; length is area over perimeter. McAdams (1954) 0.54 Ra^1/4 and 0.15 Ra^1/3,
     * whichever is more: they meet at Ra 4.7e6, inside the change-over at 1e7 that textbooks print, so that nothing
     * jumps. Ra 1e4 to 1e11.
     */
    public static double plateFacingUp(double ra) {
        return Math.max(0.54 * Math.sqrt(Math.sqrt(ra)), 0.15 * Math.cbrt(ra));
    }

    /** Hot face down or cold face up; length is area over perimeter. McAdams (1954), Ra 1e5 to 1e10. */
    public static double plateFacingDown(double ra) {
        return 0.27 * Math.sqrt(Math.sqrt(ra));
    }

    /** Horizontal cylinder, Ra to 1e12, length its diameter. Churchill and Chu, IJHMT 18 (1975) 1049. */
    public static double horizontalCylinder(double ra, double pr) {
        double root = 0.60 + 0.387 * Math.pow(ra, 1.0 / 6) / Math.pow(1 + Math.pow(0.559 / pr, 9.0 / 16), 8.0 / 27);
        return root * root;
    }

    /** Coefficient of a vertical face in air of one atmosphere. @param height m */
    public static double verticalPlateInAir(double surface, double air, double height) {
        return verticalPlateInAir(surface, air, height, ATMOSPHERE);
    }

    /** Coefficient of a vertical face in air. @param height m @param pressure Pa */
    public static double verticalPlateInAir(double surface, double air, double height, double pressure) {
        double film = (surface + air) / 2;
        double nu = verticalPlate(rayleighInAir(surface, air, height, pressure), Air.prandtl(film));
        return nu * Air.conductivity(film) / height;
    }

    /**
     * Coefficient of a level face in air of one atmosphere.
     *
     * @param length area / perimeter, m
     * @param up whether it faces up
     */
    public static double horizontalPlateInAir(double surface, double air, double length, boolean up) {
        return horizontalPlateInAir(surface, air, length, up, ATMOSPHERE);
    }

    /**
     * Coefficient of a level face in air, hot or cold.
     *
     * @param length area / perimeter, m
     * @param up whether it faces up
     */
    public static double horizontalPlateInAir(double surface, double air, double length, boolean up, double pressure) {
        double ra = rayleighInAir(surface, air, length, pressure);
        double nu = (surface >= air) == up ? plateFacingUp(ra) : plateFacingDown(ra);
        return nu * Air.conductivity((surface + air) / 2) / length;
    }

    /** Coefficient of a level pipe in air of one atmosphere. @param diameter m */
    public static double horizontalCylinderInAir(double surface, double air, double diameter) {
        return horizontalCylinderInAir(surface, air, diameter, ATMOSPHERE);
    }

    /** Coefficient of a level pipe in air. @param diameter m @param pressure Pa */
    public static double horizontalCylinderInAir(double surface, double air, double diameter, double pressure) {
        double film = (surface + air) / 2;
        double nu = horizontalCylinder(rayleighInAir(surface, air, diameter, pressure), Air.prandtl(film));
        return nu * Air.conductivity(film) / diameter;
    }

    /**
     * Rayleigh number in air at film temperature, of either sign of the difference.
     *
     * @param length m
     * @param pressure Pa
     */
    public static double rayleighInAir(double surface, double air, double length, double pressure) {
        double film = (surface + air) / 2;
        double density = Air.density(film, pressure);
        double nu = Air.viscosity(film) / density;
        double alpha = Air.conductivity(film) / (density * Air.specificHeat(film));
        return rayleigh(1 / film, Math.hypot(surface - air, STILL), length, nu, alpha);
    }
}
