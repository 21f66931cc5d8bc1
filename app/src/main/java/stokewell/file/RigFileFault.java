package stokewell.file;

import java.util.List;

/** A rig file that cannot be used, with everything that is wrong with it. */
public final class RigFileFault extends Exception {

    private final transient List<Fault> faults;

    RigFileFault(List<Fault> faults) {
        super(text(faults));
        this.faults = List.copyOf(faults);
    }

    /** All faults, in the order of the lines. */
    public List<Fault> faults() {
        return faults;
    }

    private static String text(List<Fault> faults) {
        StringBuilder out = new StringBuilder();
        for (Fault fault : faults) out.append(out.isEmpty() ? "" : "\n").append(fault);
        return out.toString();
    }
}
