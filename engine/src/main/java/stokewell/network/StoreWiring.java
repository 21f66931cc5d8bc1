package stokewell.network;

import java.util.ArrayList;
import java.util.List;
import stokewell.balance.Wiring;
import stokewell.loop.Circuit;
import stokewell.matter.Curve;
import stokewell.matter.Water;
import stokewell.rig.Rig;
import stokewell.rig.Store;
import stokewell.store.Layers;
import stokewell.store.OpenSurface;
import stokewell.store.Shape;
import stokewell.store.Slice;
import stokewell.transfer.Evaporation;

/** The store's layers, what they lose and to what, and how they mix. */
final class StoreWiring {

    /** Hot water's heat capacity by volume: 1.14 kWh/(m3 K) between 60 and 85 C. */
    static final double VOLUMETRIC = Water.density(338.15) * Water.specificHeat(338.15);

    private static final double WATER_CONDUCTIVITY = 0.65;
    private static final double FILM_ROOM = 0.11;
    /** Exchange of inverted layers, W/(m2 K). */
    private static final double MIXING = 1500;

    private final Wiring wiring;
    private final Store store;
    final Shape shape;
    /** Layers from the top. */
    final int[] node;

    final double[] height;
    private final Slice[] slice;
    private final double pressure;
    private final List<Layers.Through> through = new ArrayList<>();

    StoreWiring(Wiring wiring, Rig rig, double pressure, double start) {
        this.wiring = wiring;
        this.pressure = pressure;
        store = rig.store();
        shape = shapeOf(store.shape());
        int n = store.nodes();
        List<Slice> fromBottom = shape.slices(n);
        node = new int[n];
        height = new double[n];
        slice = new Slice[n];
        for (int i = 0; i < n; i++) {
            Slice s = fromBottom.get(n - 1 - i);
            slice[i] = s;
            double metal = s.side() * store.wall().capacity();
            if (i == 0) metal += shape.topArea() * store.wall().capacity();
            if (i == n - 1) metal += shape.bottomArea() * store.wall().capacity();
            node[i] = wiring.node("store " + (i + 1), s.volume() * VOLUMETRIC + metal, start);
            height[i] = store.elevation() + s.centroid();
        }
    }

    static Shape shapeOf(Store.Shape shape) {
        if (shape instanceof Store.Shape.Round r) return new Shape.Round(r.diameter(), r.height());
        if (shape instanceof Store.Shape.Square s) return new Shape.Square(s.width(), s.length(), s.height());
        if (shape instanceof Store.Shape.Lying l) return new Shape.Lying(l.diameter(), l.length());
        throw new AssertionError("no such shape: " + shape);
    }

    /** Area that stands on the floor, m2. */
    double footprint() {
        return shape.bottomArea() > 0 ? shape.bottomArea() : 0.5 * shape.areaAt(0.5 * shape.height());
    }

    /** The layer at a share of the height. */
    int layerAt(double share) {
        return Math.max(0, Math.min(node.length - 1, (int) Math.floor((1 - share) * node.length)));
    }

    /** Layers from one to another, ends included, in that order. */
    List<Integer> nodesBetween(int from, int to) {
        List<Integer> result = new ArrayList<>();
        int step = from <= to ? 1 : -1;
        for (int i = from; i != to + step; i += step) result.add(node[i]);
        return result;
    }

    /** Heights of {@link #nodesBetween}. */
    List<Double> heightsBetween(int from, int to) {
        List<Double> result = new ArrayList<>();
        int step = from <= to ? 1 : -1;
        for (int i = from; i != to + step; i += step) result.add(height[i]);
        return result;
    }

    /** A circuit that gives at one layer and draws at another. */
    void passes(Circuit circuit, int inlet, int draw) {
        int share = circuit.mixing() == null ? -1 : circuit.mixing().share();
        through.add(new Layers.Through(circuit.flowState(), share, inlet, draw));
    }

    void wire(RoomWiring room, BoilingWiring boiling) {
        int n = node.length;
        double[] saturation = new double[n];
        double depth = 0.5 * (store.elevation() + shape.height() - height[0]);
        saturation[0] = boiling.storeSaturation(Math.max(0, depth));
        for (int i = 1; i < n; i++) saturation[i] = boiling.storeSaturation(height[0] - height[i]);
        // the circuits' own specific heat: what they bring must be what the layers pass on
        double specificHeat = new Fluid(0).specificHeat();
        wiring.add(new Layers(
                wiring, node, specificHeat, MIXING * meanSection(), saturation, BoilingWiring.VENTING, through));
        for (int i = 0; i + 1 < n; i++) {
            double z = 0.5 * (slice[i].bottom() + slice[i + 1].top());
            double dz = slice[i].centroid() - slice[i + 1].centroid();
            double area = shape.areaAt(z);
            double wall = 2
                    * Math.sqrt(Math.PI * area)
                    * store.wall().thickness()
                    * store.wall().conductivity();
            wiring.conduct(node[i], node[i + 1], (WATER_CONDUCTIVITY * area + wall) / dz);
        }
        double jacket = 1 / (store.jacket().resistance() + FILM_ROOM);
        int lossMeter = wiring.meter("store to room");
        for (int i = 0; i < n; i++) metered(node[i], room.air, lossMeter, store.realLoss() * jacket * slice[i].side());
        cover(room, lossMeter);
        base(room, lossMeter);
        boiling.vent("store top", node[0], saturation[0]);
        for (int i = 1; i < n; i++) boiling.waters.add(new Plant.Boilable("store", node[i], saturation[i]));
    }

    private double meanSection() {
        return shape.volume() / shape.height();
    }

    private void cover(RoomWiring room, int lossMeter) {
        double lid = shape.topArea() > 0 ? shape.topArea() : 0;
        double open = switch (store.cover()) {
            case SEALED -> 0;
            // common practice, no source: what a lid and a floating sheet let through
            case LOOSE -> 0.15;
            case FOAM -> 0.06;
            case OPEN -> 1;
        };
        double resistance =
                store.cover() == Store.Cover.OPEN ? 0.12 : store.lid().resistance() + FILM_ROOM;
        if (store.cover() == Store.Cover.FOAM) resistance = 0.7 + FILM_ROOM;
        metered(node[0], room.air, lossMeter, store.realLoss() * lid / resistance);
        if (open > 0) {
            double area = open * shape.areaAt(0.98 * shape.height());
            double hottest = Water.saturationTemperature(pressure) - 4;
            Curve heat = Curve.of(
                    t -> {
                        // the formula ends where the vapour fills all the air
                        double warm = Math.min(t, hottest);
                        return area * Evaporation.heat(Evaporation.shah(warm, 288.15, 0.5, pressure), warm);
                    },
                    273.15,
                    383.15,
                    110);
            wiring.add(new OpenSurface(
                    wiring,
                    node[0],
                    wiring.account("evaporation"),
                    wiring.meter("water evaporated"),
                    heat,
                    Water.latentHeat(338.15)));
        }
    }

    private void base(RoomWiring room, int lossMeter) {
        double area = footprint();
        int bottom = node[node.length - 1];
        double foam = store.base().resistance();
        boolean slab = room.underStore >= 0;
        int meter = wiring.meter("store to floor");
        if (store.standing() == Store.Standing.FLOOR && slab) {
            metered(bottom, room.underStore, meter, area / (foam + 0.01 + 0.5 * 0.1 / 1.8));
        } else if (store.standing() == Store.Standing.EARTH && slab) {
            metered(bottom, room.underStore, meter, area / (foam + 0.02));
        } else {
            // air gets under it: ISO 6946 downward film
            metered(bottom, room.air, lossMeter, store.realLoss() * area / (foam + 0.17));
        }
    }

    private void metered(int from, int to, int meter, double conductance) {
        wiring.conductMetered(from, to, meter, conductance);
    }
}
