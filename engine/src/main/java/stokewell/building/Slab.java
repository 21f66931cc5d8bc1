package stokewell.building;

/**
 * A floor on the ground by ISO 13370: the loss between room and outdoors goes round the edge through the soil. The
 * periodic terms are from memory of its annex.
 */
public final class Slab {

    private Slab() {}

    /** Characteristic dimension B′ = A / (P/2), m; P is the exposed edge only. */
    public static double characteristic(double area, double exposedPerimeter) {
        return area / (0.5 * exposedPerimeter);
    }

    /**
     * Equivalent thickness of soil, m: {@code w + λ (Rsi + Rf + Rse)} with Rsi 0.17 and Rse 0.04.
     *
     * @param wall full thickness of the walls, m
     * @param soil conductivity of the ground, W/(m K): clay 1.5, sand and gravel 2.0, rock 3.5
     * @param floor resistance of the floor's own layers and insulation all over it, m² K/W; a dense slab counts nothing
     */
    public static double equivalentThickness(double wall, double soil, double floor) {
        return wall + soil * (HeatFlow.DOWN.inside() + floor + HeatFlow.OUTSIDE);
    }

    /**
     * Steady U-value, W/(m² K).
     *
     * @param characteristic B′, m
     * @param thickness equivalent thickness dt, m
     * @param soil W/(m K)
     */
    public static double u(double characteristic, double thickness, double soil) {
        if (thickness < characteristic) {
            double b = Math.PI * characteristic;
            return 2 * soil / (b + thickness) * Math.log(b / thickness + 1);
        }
        return soil / (0.457 * characteristic + thickness);
    }

    /**
     * Added equivalent thickness d′ that edge insulation brings, m.
     *
     * @param insulation resistance of the strip, m² K/W
     * @param insulationThickness of the strip, m
     * @param soil W/(m K)
     */
    public static double addedThickness(double insulation, double insulationThickness, double soil) {
        return soil * (insulation - insulationThickness / soil);
    }

    /**
     * What a flat strip of insulation along the edge takes off, W/(m K) of edge; negative. ISO 13370 annex B, from memory.
     *
     * @param width D of the strip, m
     * @param thickness dt, m
     * @param added d′, m
     */
    public static double flatEdge(double width, double thickness, double added, double soil) {
        return -soil / Math.PI * (Math.log1p(width / thickness) - Math.log1p(width / (thickness + added)));
    }

    /**
     * What upright insulation along the edge or a light foundation takes off, W/(m K) of edge; negative. ISO 13370 annex B,
     * from memory.
     *
     * @param depth D below the ground's surface, m
     */
    public static double uprightEdge(double depth, double thickness, double added, double soil) {
        return flatEdge(2 * depth, thickness, added, soil);
    }

    /** Steady loss of the floor, W/K: area at U, edge at ψ. */
    public static double loss(double area, double u, double exposedPerimeter, double edge) {
        return area * u + exposedPerimeter * edge;
    }

    /**
     * Depth at which a swing of temperature has sunk to 1/e, m: {@code √(λ T / (π ρ c))}.
     *
     * @param conductivity W/(m K)
     * @param volumetricHeat ρ c, J/(m³ K)
     * @param period s
     */
    public static double penetration(double conductivity, double volumetricHeat, double period) {
        return Math.sqrt(conductivity * period / (Math.PI * volumetricHeat));
    }

    /** Loss that follows a yearly swing outdoors, W/K: {@code 0.37 P λ ln(δ/dt + 1)}. ISO 13370, from memory. */
    public static double yearlyOutside(double exposedPerimeter, double soil, double penetration, double thickness) {
        return 0.37 * exposedPerimeter * soil * Math.log1p(penetration / thickness);
    }

    /** Loss that follows a yearly swing indoors, W/K. ISO 13370, from memory. */
    public static double yearlyInside(double area, double soil, double penetration, double thickness) {
        double x = 1 + penetration / thickness;
        return area * soil / thickness * Math.sqrt(2 / (x * x + 1));
    }
}
