package stokewell.loop;

/**
 * What a circulator lifts: {@code H = n² H0 − n b m − c m|m|} with n the speed as a share of full speed.
 *
 * <p>One concave, always falling curve for every flow: beyond the greatest flow the pump holds back, against a flow from
 * outside it pushes harder, and at n = 0 it is the resistance {@code c m|m|} of its own passages. The affinity laws
 * (flow as n, head as n², power as n³) hold exactly; from memory, any pump handbook.
 *
 * @param shutoffHead H0, pressure rise with the valve shut, Pa
 * @param linear b, Pa s/kg, 0 or more
 * @param quadratic c, Pa s²/kg², 0 or more
 * @param idlePower electrical power at full speed with the valve shut, W
 * @param powerPerFlow what the power gains with the flow at full speed, W s/kg
 */
public record PumpCurve(double shutoffHead, double linear, double quadratic, double idlePower, double powerPerFlow) {

    public PumpCurve {
        if (!(shutoffHead > 0 && linear >= 0 && quadratic >= 0 && linear + quadratic > 0)) {
            throw new IllegalArgumentException("a pump curve must start above zero and fall: shutoff head "
                    + shutoffHead + " Pa, linear " + linear + ", quadratic " + quadratic);
        }
        if (!(idlePower >= 0 && idlePower + powerPerFlow >= 0)) {
            throw new IllegalArgumentException("a pump takes power, it gives none: " + idlePower + " W at no flow");
        }
    }

    /**
     * The parabola through the two ends of the curve, at a constant electrical power.
     *
     * @param shutoffHead Pa at no flow
     * @param maxFlow kg/s at no head
     * @param power W
     */
    public static PumpCurve between(double shutoffHead, double maxFlow, double power) {
        return new PumpCurve(shutoffHead, 0, shutoffHead / (maxFlow * maxFlow), power, 0);
    }

    /**
     * The quadratic through both ends that passes nearest (least squares) to the points between. A curve that hollows or
     * rises before it falls is met as near as a concave falling one can: between the straight line and the pure parabola.
     *
     * @param shutoffHead Pa at no flow
     * @param maxFlow kg/s at no head
     * @param flows kg/s, between 0 and maxFlow
     * @param heads Pa at those flows
     * @param idlePower W at full speed and no flow
     * @param fullPower W at full speed and maxFlow
     */
    public static PumpCurve through(
            double shutoffHead, double maxFlow, double[] flows, double[] heads, double idlePower, double fullPower) {
        if (flows.length != heads.length) {
            throw new IllegalArgumentException(flows.length + " flows for " + heads.length + " heads");
        }
        double up = 0;
        double down = 0;
        for (int i = 0; i < flows.length; i++) {
            double share = flows[i] / maxFlow;
            double weight = flows[i] * (1 - share);
            up += weight * (shutoffHead * (1 - share * share) - heads[i]);
            down += weight * weight;
        }
        double steepest = shutoffHead / maxFlow;
        double b = down > 0 ? Math.min(Math.max(up / down, 0), steepest) : 0;
        return new PumpCurve(shutoffHead, b, (steepest - b) / maxFlow, idlePower, (fullPower - idlePower) / maxFlow);
    }

    /** Pressure rise at full speed, Pa; negative beyond the greatest flow. */
    public double head(double massFlow) {
        return head(massFlow, 1);
    }

    /**
     * Pressure rise, Pa.
     *
     * @param massFlow kg/s, either sign
     * @param speed share of full speed, 0 to about 1.2
     */
    public double head(double massFlow, double speed) {
        return speed * (speed * shutoffHead - linear * massFlow) - quadratic * massFlow * Math.abs(massFlow);
    }

    /** Derivative of {@link #head(double, double)} by the mass flow, Pa s/kg; never positive. */
    public double headSlope(double massFlow, double speed) {
        return -speed * linear - 2 * quadratic * Math.abs(massFlow);
    }

    /** Flow at no head and full speed, kg/s. */
    public double maxFlow() {
        return 2 * shutoffHead / (linear + Math.sqrt(linear * linear + 4 * quadratic * shutoffHead));
    }

    /** Electrical power, W. Against a flow that others drive backwards it counts as at no flow. */
    public double power(double massFlow, double speed) {
        return speed * speed * (speed * idlePower + powerPerFlow * Math.max(massFlow, 0));
    }

    /** Power that the water gets, W. */
    public double hydraulicPower(double massFlow, double speed, double density) {
        return massFlow * head(massFlow, speed) / density;
    }
}
