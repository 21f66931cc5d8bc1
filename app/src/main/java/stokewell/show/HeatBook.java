package stokewell.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stokewell.run.Ledger;

/** The ledger for reading: what brought heat, where it went, largest first, with its share of all that was brought. */
final class HeatBook {

    /** What one source brought or one end took, J, above zero. */
    record Flow(String name, double heat) {}

    static final String WOOD = "wood";
    static final String KEPT = "kept in rig and building";
    static final String DRAWN = "drawn from rig and building";
    static final String EMBERS_LEFT = "left in the fuel bed";
    static final String EMBERS_FOUND = "embers from before";

    private final List<Flow> in = new ArrayList<>();
    private final List<Flow> out = new ArrayList<>();
    private double total;

    HeatBook(Ledger ledger) {
        put(WOOD, -ledger.fuel());
        for (Map.Entry<String, Double> e : ledger.accounts().entrySet()) put(e.getKey(), e.getValue());
        put(ledger.stored() > 0 ? KEPT : DRAWN, ledger.stored());
        put(ledger.bed() > 0 ? EMBERS_LEFT : EMBERS_FOUND, ledger.bed());
        sort(in);
        sort(out);
        for (Flow f : in) total += f.heat();
    }

    /** Out of the rig above zero, into it below. */
    private void put(String name, double heat) {
        if (heat > 0) out.add(new Flow(name, heat));
        else if (heat < 0) in.add(new Flow(name, -heat));
    }

    private static void sort(List<Flow> flows) {
        flows.sort((a, b) -> Double.compare(b.heat(), a.heat()));
    }

    List<Flow> in() {
        return in;
    }

    List<Flow> out() {
        return out;
    }

    /** All that was brought, J. */
    double total() {
        return total;
    }

    /** What brought heat, told as such. */
    static String source(Flow flow) {
        boolean told = flow.name().equals(DRAWN) || flow.name().equals(EMBERS_FOUND);
        return told ? flow.name() : "from " + flow.name();
    }

    double share(Flow flow) {
        return total > 0 ? flow.heat() / total : Double.NaN;
    }

    /** Those of at least a share of the whole; the smaller ones put together as the last. */
    List<Flow> above(List<Flow> flows, double share) {
        List<Flow> kept = new ArrayList<>();
        double rest = 0;
        for (Flow f : flows) {
            if (share(f) >= share) kept.add(f);
            else rest += f.heat();
        }
        if (rest > 0 && rest >= 1e-4 * total) kept.add(new Flow("other", rest));
        return kept;
    }
}
