package stokewell.run;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Where every joule of a run went.
 *
 * @param fuel     brought by the wood that was loaded, net, J
 * @param accounts net flow out of the rig by account, J; what came in counts below zero
 * @param meters   readings of the inner meters, J or kg as named
 * @param stored   rise of heat held by all nodes, J
 * @param bed      rise of energy held by the fuel bed, J
 */
public record Ledger(double fuel, Map<String, Double> accounts, Map<String, Double> meters, double stored, double bed) {

    /** Largest residual of a run that holds, as a share of the throughput. */
    public static final double TOLERANCE = 1e-9;

    public Ledger {
        accounts = new LinkedHashMap<>(accounts);
        meters = new LinkedHashMap<>(meters);
    }

    /** What does not add up, J. */
    public double residual() {
        double out = accounts.values().stream().mapToDouble(Double::doubleValue).sum();
        return fuel - out - stored - bed;
    }

    /** Sum of the sizes of all flows, J. */
    public double throughput() {
        double sum = Math.abs(fuel) + Math.abs(stored) + Math.abs(bed);
        for (double v : accounts.values()) sum += Math.abs(v);
        return sum;
    }

    /** Residual as a share of the throughput. */
    public double relativeResidual() {
        double size = throughput();
        return size > 0 ? Math.abs(residual()) / size : 0;
    }

    /** One account, J; zero where the rig has no such. */
    public double account(String name) {
        return accounts.getOrDefault(name, 0.0);
    }

    /** One meter; zero where the rig has no such. */
    public double meter(String name) {
        return meters.getOrDefault(name, 0.0);
    }

    /** @throws LedgerFault if it does not close */
    Ledger closed(double from, double until) {
        double r = relativeResidual();
        if (!(r < TOLERANCE)) throw new LedgerFault(from, until, r, residual());
        return this;
    }

    /** A run whose ledger does not close: its answer must not be used. */
    public static final class LedgerFault extends IllegalStateException {

        LedgerFault(double from, double until, double relative, double joules) {
            super(String.format(
                    "the ledger of the run from %.0f s to %.0f s does not close: %.3e of the throughput (%.1f J). "
                            + "The result is not to be used; please report the rig file",
                    from, until, relative, joules));
        }
    }
}
