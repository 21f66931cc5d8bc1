package stokewell.network;

import static stokewell.transfer.Radiation.SIGMA;

import java.util.ArrayList;
import java.util.List;
import stokewell.balance.Radiation;
import stokewell.balance.Surface;
import stokewell.balance.Wiring;
import stokewell.loop.Circuit;
import stokewell.loop.Friction;
import stokewell.loop.Mixing;
import stokewell.loop.PumpCurve;
import stokewell.matter.Curve;
import stokewell.matter.Recent;
import stokewell.rig.Pipe;
import stokewell.rig.Pump;
import stokewell.transfer.Conduction;
import stokewell.transfer.Convection;

/**
 * Wires one circuit: pipe cells with their losses, the devices between, rises for buoyancy, and one curve of pressure loss
 * made once for the whole way round.
 */
final class CircuitWiring {

    /** How black a bare pipe is: tarnished copper, dull steel, paint; common practice, 0.6 to 0.95. */
    private static final double BARE = 0.8;

    private static final double STEEL_VOLUMETRIC = 7800 * 480;
    private static final double ELBOW = 0.9;
    private static final double REFERENCE = 333.15;
    private static final double GREATEST_FLOW = 3;

    private final Wiring wiring;
    private final RoomWiring room;
    private final Fluid fluid;
    private final double start;
    private final List<Integer> cells = new ArrayList<>();
    private final List<Double> heights = new ArrayList<>();
    private final List<Leg> legs = new ArrayList<>();
    private int firstDevice = -1;
    private int lastDevice = -1;

    private record Leg(double length, double bore, double roughness, double k, double side) {}

    /** All that the pressure loss of a way round depends on. */
    private record Way(List<Leg> legs, double rho, double mu, double standing) {}

    /** Drawing one takes a fifth of the compiling of a rig with three circuits. */
    private static final Recent<Way, Curve> LATELY = new Recent<>(64);

    CircuitWiring(Wiring wiring, RoomWiring room, Fluid fluid, double start) {
        this.wiring = wiring;
        this.room = room;
        this.fluid = fluid;
        this.start = start;
    }

    /** Adds a pipe as cells between two heights. */
    void pipe(String name, Pipe pipe, double from, double to) {
        int n = (int) Math.max(1, Math.min(4, Math.round(pipe.length() / 3)));
        double cell = pipe.length() / n;
        double water = Math.PI / 4 * pipe.bore() * pipe.bore() * cell;
        double outer = pipe.bore() + 2 * pipe.wall();
        double metal = Math.PI / 4 * (outer * outer - pipe.bore() * pipe.bore()) * cell;
        double capacity = water * fluid.density(REFERENCE) * fluid.specificHeat() + metal * STEEL_VOLUMETRIC;
        for (int i = 0; i < n; i++) {
            int node = wiring.node(n == 1 ? name : name + " " + (i + 1), capacity, start);
            lose(node, pipe, cell, outer);
            cells.add(node);
            heights.add(from + (to - from) * (i + 0.5) / n);
        }
        legs.add(new Leg(pipe.length(), pipe.bore(), pipe.roughness(), pipe.elbows() * ELBOW + pipe.lossFactors(), 1));
    }

    private void lose(int node, Pipe pipe, double length, double outer) {
        boolean inRoom = pipe.where() == Pipe.Where.ROOM;
        if (pipe.insulation() > 0) {
            double ua = length
                    * Conduction.pipeLoss(outer / 2, pipe.insulation(), pipe.insulationConductivity(), inRoom ? 9 : 20);
            if (inRoom) wiring.conduct(node, room.air, ua);
            else wiring.conduct(node, wiring.account("pipes outdoors"), room.outdoors, ua);
            return;
        }
        double area = Math.PI * outer * length;
        if (!inRoom) {
            wiring.conduct(node, wiring.account("pipes outdoors"), room.outdoors, 20 * area);
            return;
        }
        Curve convection = Curve.of(
                dt -> dt == 0 ? 0 : area * dt * Convection.horizontalCylinderInAir(293.15 + dt, 293.15, outer),
                -60,
                140,
                80);
        int meter = wiring.meter("pipes to room");
        wiring.add(new Surface(wiring, node, room.air, meter, convection));
        wiring.add(new Radiation(wiring, node, room.contents, meter, BARE * SIGMA * area));
    }

    /** Adds a device's water as one cell with its own resistance; {@code side} is how many ways lie side by side. */
    void device(int node, double height, double length, double bore, double k, int side) {
        if (firstDevice < 0) firstDevice = cells.size();
        lastDevice = cells.size();
        cells.add(node);
        heights.add(height);
        legs.add(new Leg(length, bore, 0.05e-3, k, side));
    }

    /** Position of the next cell. */
    int next() {
        return cells.size();
    }

    /** The node of a cell. */
    int cell(int i) {
        return cells.get(i);
    }

    /**
     * Closes the circuit through the store's layers between inlet and draw (or through nothing, for a chain closed on
     * itself) and makes its part.
     *
     * @param storeNodes   layers from the inlet to the draw, in flow order; empty for a closed chain
     * @param storeHeights their heights
     * @param mixedTo      what a mixing valve before the devices holds, K; NaN for none
     */
    Circuit close(
            String name,
            List<Integer> storeNodes,
            List<Double> storeHeights,
            Pump pump,
            double checkValve,
            Circuit.Bubbles bubbles,
            double mixedTo) {
        int flow = wiring.algebraic(name + " flow", 0, 0.2);
        List<Integer> ring = new ArrayList<>(cells);
        List<Double> z = new ArrayList<>(heights);
        ring.addAll(storeNodes);
        z.addAll(storeHeights);
        List<Circuit.Rise> rises = new ArrayList<>();
        int n = ring.size();
        for (int i = 0; i < n; i++) {
            double weight = 0.5 * (z.get((i + 1) % n) - z.get((i + n - 1) % n));
            if (Math.abs(weight) > 1e-6) rises.add(new Circuit.Rise(ring.get(i), weight));
        }
        boolean closed = storeNodes.isEmpty();
        Circuit circuit = new Circuit(
                wiring,
                flow,
                cells.stream().mapToInt(Integer::intValue).toArray(),
                closed ? -1 : storeNodes.get(storeNodes.size() - 1),
                closed ? -1 : storeNodes.get(0),
                hydraulics(pump, checkValve),
                rises,
                cells.get(cells.size() - 1),
                bubbles,
                Double.isNaN(mixedTo) ? null : mixing(name, mixedTo));
        wiring.add(circuit);
        return circuit;
    }

    private Mixing mixing(String name, double held) {
        int share = wiring.algebraic(name + " drawn", 1, 1);
        Mixing valve = new Mixing(
                wiring, share, cells.get(firstDevice - 1), cells.get(lastDevice), held, firstDevice, lastDevice);
        wiring.add(valve);
        return valve;
    }

    private Circuit.Hydraulics hydraulics(Pump pump, double checkValve) {
        double rho = fluid.density(REFERENCE);
        double mu = fluid.viscosity(REFERENCE);
        double laminar = 0;
        for (Leg leg : legs) {
            laminar += 128 * mu * leg.length / (Math.PI * rho * Math.pow(leg.bore, 4)) / leg.side;
        }
        double slope = laminar;
        double standing = pump == null ? 0 : pump.standingLoss();
        Curve rest = LATELY.of(
                new Way(List.copyOf(legs), rho, mu, standing),
                way -> Curve.of(
                        place -> {
                            double m = Circuit.flowAt(place);
                            return Math.max(0, loss(m, rho, mu, standing) - slope * m);
                        },
                        Circuit.place(0),
                        Circuit.place(GREATEST_FLOW),
                        1200));
        Curve viscosity = Curve.of(t -> fluid.viscosity(t) / mu, 263.15, 403.15, 70);
        PumpCurve curve =
                pump == null ? null : PumpCurve.between(pump.shutoffHead(), pump.freeFlow() * rho, pump.power());
        double speed = pump == null ? 0 : pump.speed();
        return new Circuit.Hydraulics(
                fluid.parabola(), laminar, viscosity, rest, curve, speed, checkValve, fluid.specificHeat());
    }

    private double loss(double m, double rho, double mu, double standing) {
        double sum = 0;
        for (Leg leg : legs) {
            double each = m / leg.side;
            sum += leg.length * Friction.pressureGradient(each, leg.bore, leg.roughness, rho, mu);
            sum += kinetic(leg.k, each, leg.bore, rho);
        }
        return sum + kinetic(standing, m, legs.get(0).bore, rho);
    }

    private static double kinetic(double k, double m, double bore, double rho) {
        double speed = m / (rho * Math.PI / 4 * bore * bore);
        return 0.5 * k * rho * speed * speed;
    }
}
