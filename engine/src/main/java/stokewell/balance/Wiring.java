package stokewell.balance;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A rig being wired: states (columns and rows), signals from outside (columns only), accounts and meters (rows only),
 * plain conductances and parts.
 *
 * <p>A state has the same number as a column and as a row, from {@link #OUTSIDE} up. Below it the columns are signals, and
 * the rows are accounts, then from {@link #METERS} meters. Numbers are final from the start, so parts keep them.
 */
public final class Wiring {

    /** What kind of equation a state obeys. */
    public enum Kind {
        /** A heat node: capacity · dT/dt = sum of heat flows. */
        HEAT,
        /** Any other rate: dy/dt = sum of what parts add. */
        RATE,
        /** 0 = sum of what parts add. */
        ALGEBRAIC
    }

    /**
     * One state.
     *
     * @param capacity heat capacity, J/K; 1 for other kinds
     * @param scale    size of error in it that matters as much as one tolerance in kelvin; infinite: none
     */
    public record State(String name, Kind kind, double capacity, double start, double scale) {}

    /** The number of the first state. */
    public static final int OUTSIDE = 64;

    /** The number of the first meter. */
    public static final int METERS = 32;

    /** Heat capacity below which errors count less, J/K. */
    private static final double LITTLE = 1e5;

    private final List<State> states = new ArrayList<>();
    private final List<String> signals = new ArrayList<>();
    private final List<String> accounts = new ArrayList<>();
    private final List<String> meters = new ArrayList<>();
    private final Map<Long, Integer> slots = new HashMap<>();
    private final List<long[]> slotPlaces = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();
    private final Linear linear = new Linear();

    /** A heat node of this capacity, J/K, K to begin with. */
    public int node(String name, double capacity, double start) {
        if (!(capacity > 0)) throw new IllegalArgumentException(name + " has no heat capacity: " + capacity);
        // what holds little heat need not be known so well: its error decays before it reaches the room
        double scale = Math.max(1, Math.min(10, Math.pow(LITTLE / capacity, 0.75)));
        return add(new State(name, Kind.HEAT, capacity, start, scale));
    }

    /** A state with a rate of its own. */
    public int rate(String name, double start, double scale) {
        return add(new State(name, Kind.RATE, 1, start, scale));
    }

    /** A state that solves an equation at every moment. */
    public int algebraic(String name, double start, double scale) {
        return add(new State(name, Kind.ALGEBRAIC, 1, start, scale));
    }

    private int add(State state) {
        states.add(state);
        return OUTSIDE + states.size() - 1;
    }

    /** The column of a signal from outside. */
    public int signal(String name) {
        return indexOf(signals, name, OUTSIDE);
    }

    /** The row of an account: a place outside the rig that heat comes from or goes to. */
    public int account(String name) {
        return indexOf(accounts, name, METERS);
    }

    /** The row of a meter: a reading that takes no part in the balance. */
    public int meter(String name) {
        return METERS + indexOf(meters, name, OUTSIDE - METERS);
    }

    private static int indexOf(List<String> names, String name, int most) {
        int at = names.indexOf(name);
        if (at >= 0) return at;
        if (names.size() == most) throw new IllegalStateException("no room for " + name);
        names.add(name);
        return names.size() - 1;
    }

    /** The slot of d(row)/d(column). The same pair always gets the same slot. */
    public int slot(int row, int column) {
        return slots.computeIfAbsent(((long) row << 32) | column, key -> {
            slotPlaces.add(new long[] {row, column});
            return slotPlaces.size() - 1;
        });
    }

    /** The slots of one row against many columns. */
    public int[] slots(int row, int... columns) {
        int[] result = new int[columns.length];
        for (int i = 0; i < columns.length; i++) result[i] = slot(row, columns[i]);
        return result;
    }

    /** A conductance between two nodes, W/K. */
    public void conduct(int a, int b, double conductance) {
        linear.add(a, a, -conductance);
        linear.add(a, b, conductance);
        linear.add(b, a, conductance);
        linear.add(b, b, -conductance);
    }

    /** A conductance between two nodes whose flow from the first to the second is read by a meter. */
    public void conductMetered(int a, int b, int meter, double conductance) {
        conduct(a, b, conductance);
        linear.add(meter, a, conductance);
        linear.add(meter, b, -conductance);
    }

    /** A conductance from a node to a signal; what flows is booked in an account. */
    public void conduct(int node, int account, int signal, double conductance) {
        linear.add(node, node, -conductance);
        linear.add(node, signal, conductance);
        linear.add(account, node, conductance);
        linear.add(account, signal, -conductance);
    }

    /** A conductance to a temperature that never changes; what flows is booked in an account. */
    public void conductToFixed(int node, int account, double temperature, double conductance) {
        linear.add(node, node, -conductance);
        linear.constant(node, conductance * temperature);
        linear.add(account, node, conductance);
        linear.constant(account, -conductance * temperature);
    }

    /** What a signal brings into a node, booked in an account as heat that came in: factor times signal, W. */
    public void drive(int node, int account, int signal, double factor) {
        linear.add(node, signal, factor);
        linear.add(account, signal, -factor);
    }

    /** A rate state that follows a point between two columns with a first-order lag, s; share 0 is at a, 1 at b. */
    public void follow(int reading, int a, int b, double share, double lag) {
        linear.add(reading, reading, -1 / lag);
        linear.add(reading, a, (1 - share) / lag);
        linear.add(reading, b, share / lag);
    }

    /** Adds a part. */
    public void add(Part part) {
        parts.add(part);
    }

    /** Every part, the linear one first. To be asked once, when all is wired. */
    public List<Part> parts() {
        List<Part> all = new ArrayList<>();
        linear.seal(this);
        all.add(linear);
        all.addAll(parts);
        return all;
    }

    public List<State> states() {
        return states;
    }

    public List<String> signals() {
        return signals;
    }

    public List<String> accounts() {
        return accounts;
    }

    public List<String> meters() {
        return meters;
    }

    /** Row and column handles of each slot, by slot number. */
    public List<long[]> slotPlaces() {
        return slotPlaces;
    }
}
