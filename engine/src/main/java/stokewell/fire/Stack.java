package stokewell.fire;

/**
 * The way of the smoke at a moment: along the stove body's pass, the bare connector and the chimney piece by piece. Gas cools
 * against each (ε-NTU, heat transfer rising with flow); the column's draft is the sum of its pieces. Temperatures in K.
 *
 * <p>The connector stands between the room's air and its contents and gives each its share at that one's own temperature.
 *
 * <p>Columns of its gradients: firebox gas, gas flow, body, room air, contents, then the chimney's pieces from below.
 */
final class Stack {

    static final int GAS = 0;
    static final int FLOW = 1;
    static final int BODY = 2;
    static final int AIR = 3;
    static final int CONTENTS = 4;
    static final int CHIMNEY = 5;

    /** Share of a bare connector's heat that goes to the air, the rest shines: common practice, no source. */
    static final double TO_AIR = 0.4;

    private final Gas gas;
    private final double passArea;
    private final double connectorArea;
    private final double pieceArea;
    final int pieces;
    final int columns;

    double collar;
    double afterConnector;
    /** Exchange between air and contents through the connector's wall, W/K. */
    double across;
    /** Gas that leaves each piece. */
    final double[] leaves;

    /** Mean gas in each piece. */
    final double[] mean;

    private double e1;
    private double e2;
    private double e3;
    private double share;
    private double n3;

    final double[] dCollar;
    final double[] dAfter;
    final double[][] dLeaves;
    final double[][] dMean;
    double acrossFlow;

    Stack(Gas gas, double passArea, double connectorArea, double chimneyArea, int pieces) {
        this.gas = gas;
        this.passArea = passArea;
        this.connectorArea = connectorArea;
        this.pieces = pieces;
        pieceArea = chimneyArea / pieces;
        columns = CHIMNEY + pieces;
        leaves = new double[pieces];
        mean = new double[pieces];
        dCollar = new double[columns];
        dAfter = new double[columns];
        dLeaves = new double[pieces][columns];
        dMean = new double[pieces][columns];
    }

    /** Gas that leaves the top. */
    double top() {
        return leaves[pieces - 1];
    }

    /** The temperatures. @param wall columns of the chimney's pieces in x */
    void at(double tg, double flow, double body, double air, double contents, double[] x, int[] wall) {
        double perFlow = 1 / (flow * gas.passHeat());
        e1 = Math.exp(-passArea * (6 + 900 * flow) * perFlow);
        collar = body + (tg - body) * e1;
        double ua = connectorArea * (2.5 + 350 * flow);
        e2 = Math.exp(-ua * perFlow);
        double around = TO_AIR * air + (1 - TO_AIR) * contents;
        afterConnector = around + (collar - around) * e2;
        across = TO_AIR * (1 - TO_AIR) * ua;
        n3 = pieceArea * (4 + 700 * flow) * perFlow;
        e3 = Math.exp(-n3);
        share = n3 > 1e-6 ? (1 - e3) / n3 : 1 - 0.5 * n3;
        double enters = afterConnector;
        for (int i = 0; i < pieces; i++) {
            double metal = x[wall[i]];
            leaves[i] = metal + (enters - metal) * e3;
            mean[i] = metal + (enters - metal) * share;
            enters = leaves[i];
        }
    }

    /** The gradients, after {@link #at} for the same values. */
    void slopes(double tg, double flow, double body, double air, double contents, double[] x, int[] wall) {
        double square = flow * flow * gas.passHeat();
        dCollar[GAS] = e1;
        dCollar[BODY] = 1 - e1;
        dCollar[FLOW] = (tg - body) * e1 * passArea * 6 / square;
        double around = TO_AIR * air + (1 - TO_AIR) * contents;
        for (int i = 0; i < columns; i++) dAfter[i] = e2 * dCollar[i];
        dAfter[FLOW] += (collar - around) * e2 * connectorArea * 2.5 / square;
        dAfter[AIR] += (1 - e2) * TO_AIR;
        dAfter[CONTENTS] += (1 - e2) * (1 - TO_AIR);
        acrossFlow = TO_AIR * (1 - TO_AIR) * connectorArea * 350;
        double n3F = -pieceArea * 4 / square;
        double shareF = n3 > 1e-6 ? (e3 - share) / n3 * n3F : -0.5 * n3F;
        double enters = afterConnector;
        double[] before = dAfter;
        for (int i = 0; i < pieces; i++) {
            double fall = enters - x[wall[i]];
            for (int j = 0; j < columns; j++) {
                dLeaves[i][j] = e3 * before[j];
                dMean[i][j] = share * before[j];
            }
            dLeaves[i][FLOW] -= fall * e3 * n3F;
            dMean[i][FLOW] += fall * shareF;
            dLeaves[i][CHIMNEY + i] += 1 - e3;
            dMean[i][CHIMNEY + i] += 1 - share;
            enters = leaves[i];
            before = dLeaves[i];
        }
    }
}
