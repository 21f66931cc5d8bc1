package stokewell.network;

import java.util.ArrayList;
import java.util.List;
import stokewell.balance.Wiring;
import stokewell.control.Latch;
import stokewell.loop.ExpansionTank;
import stokewell.loop.Relief;
import stokewell.loop.SealedLoop;
import stokewell.matter.Curve;
import stokewell.matter.Water;
import stokewell.rig.Contents;
import stokewell.rig.Pickup;
import stokewell.rig.Rig;
import stokewell.rig.Safety;

/** Wires the pressure of a closed loop: all the water that shares it, its vessel and its relief valve. */
final class SealedWiring {

    private static final double FILLED_COLD = 283.15;
    /** Bore of a relief valve of which nothing is known, m: half an inch. It is asked for. */
    private static final double UNKNOWN_BORE = 0.0127;
    /** No pressure reaches this, Pa. */
    private static final double NEVER = 1e9;

    private final Wiring wiring;
    private final Rig rig;
    private final Fluid fluid;
    private final double air;
    private final List<Integer> nodes = new ArrayList<>();
    private final List<Double> volumes = new ArrayList<>();
    private int outlet;
    private int header;
    private int[] wet = {};
    private double[] full = {};

    SealedWiring(Wiring wiring, Rig rig, Fluid fluid, double air) {
        this.wiring = wiring;
        this.rig = rig;
        this.fluid = fluid;
        this.air = air;
    }

    private void water(int node, double volume) {
        nodes.add(node);
        volumes.add(volume);
    }

    void pickups(int[] water, int[] wetShares, int headerRow) {
        wet = wetShares.clone();
        header = headerRow;
        full = new double[water.length];
        for (int i = 0; i < water.length; i++) {
            Pickup p = rig.pickups().get(i);
            water(water[i], p.volume());
            full[i] = p.volume() * 960;
        }
        outlet = water[water.length - 1];
    }

    /** Every cell of the loop that is no pickup shares what pipes and a coil in the store hold. */
    void pipes(CircuitWiring circuit) {
        double held = Contents.loop(rig)
                - rig.pickups().stream().mapToDouble(Pickup::volume).sum();
        List<Integer> cells = new ArrayList<>();
        for (int i = 0; i < circuit.next(); i++) if (!nodes.contains(circuit.cell(i))) cells.add(circuit.cell(i));
        for (int cell : cells) water(cell, held / cells.size());
    }

    /** The store itself, where no coil keeps it apart; the emitters' water goes with it. */
    void store(int[] layers) {
        double held = Contents.store(rig) + Contents.emitters(rig);
        double capacity = 0;
        for (int layer : layers) capacity += capacity(layer);
        for (int layer : layers) water(layer, held * capacity(layer) / capacity);
    }

    private double capacity(int node) {
        return wiring.states().get(node - Wiring.OUTSIDE).capacity();
    }

    SealedLoop close(int room) {
        Safety.Vessel v = rig.safety().vessel();
        double precharge = v.precharge() + air;
        double taken = Math.min(0.9 * v.volume(), ExpansionTank.taken(v.volume(), precharge, v.fill() + air));
        // a kelvin of boiling point is some 3600 Pa
        int pressure = wiring.algebraic("system pressure", v.fill() + air, 3600);
        int steam = wiring.rate("steam in the loop", 0, 0.02);
        int letOut = wiring.rate("let out by the relief valve", 0, 0.2);
        SealedLoop.Places places = new SealedLoop.Places(
                pressure,
                steam,
                letOut,
                outlet,
                header,
                wet,
                room,
                nodes.stream().mapToInt(Integer::intValue).toArray(),
                wiring.account("steam"),
                wiring.account("relief valve"),
                wiring.meter("steam lost"));
        SealedLoop.Sizes sizes = new SealedLoop.Sizes(
                v.volume(),
                precharge,
                taken,
                volumes.stream().mapToDouble(Double::doubleValue).toArray(),
                Curve.of(fluid::density, 263.15, 483.15, 110),
                fluid.density(FILLED_COLD),
                air,
                fluid.specificHeat(),
                full);
        SealedLoop sealed = new SealedLoop(wiring, places, sizes, valve());
        wiring.add(sealed);
        return sealed;
    }

    private SealedLoop.Valve valve() {
        Safety.ReliefValve r = rig.safety().relief();
        if (r == null) return new SealedLoop.Valve(NEVER, 0, Water.latentHeat(393.15));
        double relieving = air + r.opens() * (1 + SealedLoop.ACCUMULATION);
        double latent = Water.latentHeat(Water.saturationTemperature(relieving));
        double bore = Double.isNaN(r.bore()) ? UNKNOWN_BORE : r.bore();
        double nozzle = Double.isNaN(r.rated())
                ? SealedLoop.DISCHARGE * Math.PI / 4 * bore * bore
                : r.rated() / latent / Relief.napier(1, 1, relieving);
        return new SealedLoop.Valve(r.opens(), nozzle, latent);
    }

    /** Opens at its pressure, shuts a fifth under it. */
    Latch latch(SealedLoop sealed) {
        Safety.ReliefValve r = rig.safety().relief();
        double opens = r == null ? NEVER : r.opens();
        return new Latch(sealed.pressure(), air + opens, air + opens * (1 - SealedLoop.BLOWDOWN));
    }
}
