package stokewell.network;

import java.util.ArrayList;
import java.util.List;
import stokewell.balance.Wiring;
import stokewell.loop.Circuit;
import stokewell.loop.PickupWater;
import stokewell.loop.SealedLoop;
import stokewell.matter.Curve;
import stokewell.matter.Water;
import stokewell.rig.Loop;
import stokewell.rig.Pickup;
import stokewell.rig.Rig;
import stokewell.rig.RigFault;
import stokewell.rig.Store;
import stokewell.transfer.Forced;

/** The loop from the store through the pickups and back: its pipes, its header, the water in the fire. */
final class LoopWiring {

    private static final double G = 9.80665;
    private static final double REFERENCE = 333.15;
    /** Still water at a warm wall, W/(m2 K): common practice, 200 to 600. */
    private static final double STILL_WATER = 350;
    /** Counterflow between a hot pickup and a cooler riser, W/K: common practice, no source. */
    private static final double COUNTERFLOW = 8;

    private final Wiring wiring;
    private final Rig rig;
    private final double pressure;
    private final double start;
    private final RoomWiring room;
    private final StoveWiring stove;
    private final StoreWiring store;
    private final BoilingWiring boiling;
    private final SwitchWiring switches;

    final List<PickupWater> pickups = new ArrayList<>();
    Circuit circuit;
    /** Null on an open loop. */
    SealedLoop sealed;

    int header;
    int[] wet = {};
    int supplyCell;
    int backCell;
    int outletCell;

    LoopWiring(
            Wiring wiring,
            Rig rig,
            double pressure,
            double start,
            RoomWiring room,
            StoveWiring stove,
            StoreWiring store,
            BoilingWiring boiling,
            SwitchWiring switches) {
        this.wiring = wiring;
        this.rig = rig;
        this.pressure = pressure;
        this.start = start;
        this.room = room;
        this.stove = stove;
        this.store = store;
        this.boiling = boiling;
        this.switches = switches;
        wire();
    }

    private void wire() {
        Loop l = rig.loop();
        Store s = rig.store();
        if (l.glycol() > 0 && s.coil() == null) {
            throw new RigFault(
                    "loop",
                    "glycol",
                    "antifreeze would fill the whole store",
                    "give the store a coil that keeps the loop apart, or take the glycol out");
        }
        Fluid fluid = new Fluid(l.glycol());
        CircuitWiring pipes = new CircuitWiring(wiring, room, fluid, start);
        int inlet = store.layerAt(s.supplyPort());
        int draw = store.layerAt(s.returnPort());
        boolean coil = s.coil() != null;
        double high = coil ? s.elevation() + s.coil().top() * store.shape.height() : store.height[inlet];
        double low = coil ? s.elevation() + s.coil().bottom() * store.shape.height() : store.height[draw];
        List<Pickup> list = rig.pickups();
        pipes.pipe("return pipe", l.back(), low, list.get(0).elevation());
        backCell = pipes.cell(0);
        int[] water = new int[list.size()];
        for (int i = 0; i < water.length; i++) {
            Pickup p = list.get(i);
            water[i] = wiring.node(
                    p.name() + " water", p.volume() * fluid.density(REFERENCE) * fluid.specificHeat(), start);
            pipes.device(water[i], p.elevation(), p.length(), p.bore(), 2.5, 1);
        }
        outletCell = water[water.length - 1];
        int firstSupply = pipes.next();
        pipes.pipe("supply pipe", l.supply(), list.get(list.size() - 1).elevation(), high);
        int riser = pipes.cell(firstSupply);
        supplyCell = pipes.cell(pipes.next() - 1);
        List<Integer> storeNodes = List.of();
        List<Double> storeHeights = List.of();
        if (coil) coil(pipes, fluid, high, low);
        else {
            storeNodes = store.nodesBetween(inlet, draw);
            storeHeights = store.heightsBetween(inlet, draw);
        }

        Circuit.Bubbles bubbles = bubbles(list.get(list.size() - 1).elevation(), high, riser);
        circuit = pipes.close("loop", storeNodes, storeHeights, l.pump(), l.checkValve(), bubbles, Double.NaN);
        if (!coil) store.passes(circuit, inlet, draw);

        header = wiring.rate("header water", l.header().water() * 998, 0.2);
        wet = new int[water.length];
        for (int i = 0; i < water.length; i++) wet[i] = wiring.rate(list.get(i).name() + " wet", 1, 0.02);
        if (rig.safety().closed()) seal(pipes, water, fluid);
        for (int i = 0; i < water.length; i++) {
            int above = i + 1 < water.length ? water[i + 1] : riser;
            pickup(list.get(i), i, water[i], above, fluid);
        }
        double pipeTop = boiling.saturationAt(Math.max(0, l.header().level() - high));
        for (int i = firstSupply; i < pipes.next() && !coil; i++) boiling.vent("supply pipe", pipes.cell(i), pipeTop);
        if (coil) boiling.vent("supply pipe", riser, pipeTop);
    }

    /** Steam that lifts the water of the riser; null where the riser does not climb. */
    private Circuit.Bubbles bubbles(double from, double to, int riser) {
        double lift = Math.max(0, to - from);
        if (lift == 0) return null;
        double bore = rig.loop().supply().bore();
        double saturation = boiling.saturationAt(Math.max(0, rig.loop().header().level() - from));
        double drift = 0.35
                * Math.sqrt(G * bore)
                * Math.PI
                / 4
                * bore
                * bore
                * Water.steamDensity(saturation)
                * Water.latentHeat(saturation);
        return new Circuit.Bubbles(outletCell, riser, saturation, BoilingWiring.VENTING, drift, lift);
    }

    private void seal(CircuitWiring pipes, int[] water, Fluid fluid) {
        SealedWiring made = new SealedWiring(wiring, rig, fluid, pressure);
        made.pickups(water, wet, header);
        made.pipes(pipes);
        if (rig.store().coil() == null) made.store(store.node);
        sealed = made.close(room.air);
        switches.relief(sealed, made.latch(sealed));
    }

    private void coil(CircuitWiring pipes, Fluid fluid, double high, double low) {
        Store.Coil c = rig.store().coil();
        int cells = 4;
        double piece = c.length() / cells;
        double volume = Math.PI / 4 * c.bore() * c.bore() * piece;
        double area = Math.PI * c.bore() * piece;
        for (int i = 0; i < cells; i++) {
            double share = c.top() - (c.top() - c.bottom()) * (i + 0.5) / cells;
            int node = wiring.node(
                    "store coil " + (i + 1), volume * fluid.density(REFERENCE) * fluid.specificHeat() + 500, start);
            pipes.device(node, high + (low - high) * (i + 0.5) / cells, piece, c.bore(), 0.3, 1);
            // inside forced, outside natural convection of water: common practice, 350 to 600 W/(m2 K) together
            wiring.conduct(node, store.node[store.layerAt(share)], 450 * area);
        }
    }

    private void pickup(Pickup p, int i, int water, int above, Fluid fluid) {
        double saturation = boiling.saturationAt(Math.max(0, rig.loop().header().level() - p.elevation()));
        double mu = fluid.viscosity(REFERENCE);
        double k = fluid.conductivity(REFERENCE);
        double prandtl = mu * fluid.specificHeat() / k;
        Curve forced = Curve.of(
                m -> {
                    double re = 4 * m / (Math.PI * p.bore() * mu);
                    return m <= 0 ? 0 : Forced.pipe(re, prandtl, p.bore() / p.length()) * k / p.bore();
                },
                0,
                1.5,
                150);
        PickupWater.Places places = new PickupWater.Places(
                stove.walls[i],
                water,
                wet[i],
                header,
                circuit.flowState(),
                above,
                room.air,
                wiring.account("steam"),
                wiring.meter("fire to water"),
                wiring.meter("steam lost"));
        PickupWater.Sizes sizes = new PickupWater.Sizes(
                p.area(),
                STILL_WATER,
                forced,
                saturation,
                Water.latentHeat(saturation),
                p.volume() * 960,
                BoilingWiring.VENTING,
                COUNTERFLOW,
                fluid.specificHeat());
        PickupWater part = new PickupWater(wiring, places, sizes, sealed);
        pickups.add(part);
        boiling.waters.add(new Plant.Boilable(p.name(), water, saturation));
        wiring.add(part);
    }
}
