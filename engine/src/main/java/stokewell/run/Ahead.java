package stokewell.run;

import stokewell.solve.SparseLu;

/**
 * From what one day changes to what all further days like it would: for a linear rig y' = J y + drive with period T the change f of a
 * day is followed by e^(JT) f, e^(2JT) f and so on, together (1 − e^(JT))⁻¹ f. With z = −JT that is taken as
 * f + (z + z²/2)⁻¹ f: exact in its first two terms where a day is short against a node's memory, and f alone where it is long.
 *
 * <p>J is the mean over a day that was watched by {@link Leap}. A rig that differs little has nearly the same.
 */
final class Ahead {

    private final boolean[] heat;
    private final SparseLu half;
    private final SparseLu whole;

    Ahead(boolean[] heat, SparseLu half, SparseLu whole) {
        this.heat = heat;
        this.half = half;
        this.whole = whole;
    }

    /** Overwrites the change of a day, zero but for heat nodes, with that of all days to come. One at a time: it has one desk. */
    synchronized void carry(double[] change) {
        double[] z = change.clone();
        for (int i = 0; i < z.length; i++) z[i] *= 2 / DayClock.DAY;
        half.solve(z);
        for (int i = 0; i < z.length; i++) z[i] = heat[i] ? z[i] / DayClock.DAY : 0;
        whole.solve(z);
        for (int i = 0; i < z.length; i++) if (heat[i]) change[i] += z[i];
    }
}
