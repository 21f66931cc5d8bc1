package stokewell.network;

import java.util.ArrayList;
import java.util.List;
import stokewell.balance.Supply;
import stokewell.balance.Wiring;
import stokewell.building.AirExchange;
import stokewell.building.HeatFlow;
import stokewell.building.Layer;
import stokewell.building.Layers;
import stokewell.building.Leakage;
import stokewell.building.Nodes;
import stokewell.building.Slab;
import stokewell.matter.Air;
import stokewell.rig.Rig;
import stokewell.rig.Room;
import stokewell.transfer.Conduction;
import stokewell.weather.Surface;
import stokewell.weather.Weather;

/**
 * The room: air, contents (which also stand for what radiates), walls and roof as ladders of masses, floor on the ground,
 * glass, doors, leaks, sun and people.
 *
 * <p>Film coefficients are those of ISO 52016-1 (2017), tables 25: convective 2.5 at walls, 5.0 upward, 0.7 downward,
 * radiative 5.13 inside; 20 and 4.14 outside; from memory. Surfaces without mass are taken out by star-delta, so the
 * ladder's masses join air, contents, outdoors and sky directly.
 */
final class RoomWiring {

    private static final double FILM_WALL = 2.5;
    private static final double FILM_UP = 5.0;
    private static final double FILM_FLOOR = 1.5;
    private static final double FILM_RADIATIVE = 5.13;
    private static final double FILM_OUTSIDE = 20;
    private static final double FILM_SKY = 4.14;
    /** Width of floor that feels the edge, m: common practice. */
    private static final double EDGE_STRIP = 1;
    /** Depth of soil that is modelled as mass, m: ISO 52016-1 takes 0.5. */
    private static final double SOIL_DEPTH = 0.5;

    /** Density of air at 20 C and sea level, kg/m3: ISO 9972. */
    private static final double STANDARD_AIR = 1.204;

    private static final double CONCRETE = 2400 * 1000;
    private static final double CONCRETE_CONDUCTIVITY = 1.8;

    private final Wiring wiring;
    private final Rig rig;
    private final double start;

    final int air;
    final int contents;
    final int outdoors;
    final int wind;
    final int sky;
    /** Concrete of the floor's middle, or -1 on boards. */
    int floor = -1;
    /** Concrete below the store, or -1. */
    int underStore = -1;

    final List<Surface> suns = new ArrayList<>();
    final List<Integer> masses = new ArrayList<>();
    AirExchange exchange;
    Supply people;

    RoomWiring(Wiring wiring, Rig rig, double start) {
        this.wiring = wiring;
        this.rig = rig;
        this.start = start;
        outdoors = wiring.signal("outdoors");
        wind = wiring.signal("wind");
        sky = wiring.signal("sky");
        Room room = rig.room();
        air = wiring.node("room air", room.volume() * 1.2 * 1006, start);
        contents = wiring.node("contents", room.contents(), start);
    }

    /** Surfaces whose sun is wanted, in the order of their signals. */
    static List<Surface> surfaces(Rig rig) {
        List<Surface> suns = new ArrayList<>();
        suns.add(Surface.HORIZONTAL);
        for (int k = 0; k < 4; k++) suns.add(new Surface(Math.PI / 2, k * Math.PI / 2));
        for (Room.Window w : rig.room().windows()) {
            Surface s = surfaceOf(w);
            if (!suns.contains(s)) suns.add(s);
        }
        return suns;
    }

    private static Surface surfaceOf(Room.Window w) {
        double turn = 2 * Math.PI;
        double azimuth = ((w.facing() % turn) + turn) % turn;
        double quarter = Math.PI / 2;
        double near = quarter * Math.round(azimuth / quarter);
        if (Math.abs(azimuth - near) < 1e-6) azimuth = near % turn;
        return w.tilt() < 1e-6 ? Surface.HORIZONTAL : new Surface(w.tilt(), azimuth);
    }

    private int sun(Surface surface) {
        return wiring.signal("sun " + suns.indexOf(surface));
    }

    void wire(double footprint, boolean storeOnFloor, double airDensity, int fireAir) {
        suns.addAll(surfaces(rig));
        for (int i = 0; i < suns.size(); i++) wiring.signal("sun " + i);
        Room room = rig.room();

        double contentsArea = 1.5 * room.floorArea();
        wiring.conduct(air, contents, FILM_WALL * contentsArea);

        envelope("wall", room.walls(), room.wallArea(), FILM_WALL, HeatFlow.HORIZONTAL, 0.5, wallSuns());
        envelope("roof", room.roof(), room.roofArea(), FILM_UP, HeatFlow.UP, 1.0, List.of(sun(Surface.HORIZONTAL)));
        floor(footprint, storeOnFloor);
        glassAndDoors();

        // a blower door's figure is told at sea level's density, ISO 9972, wherever it was taken: the holes come from
        // that
        double area = Leakage.areaFrom(room.leakage().at50Pa() * 3600, room.volume(), STANDARD_AIR);
        Leakage leak = Leakage.of(area, 1, shelter(room.leakage().shelter()));
        exchange = new AirExchange(
                wiring,
                air,
                outdoors,
                wind,
                fireAir,
                wiring.account("air"),
                wiring.account("open doors"),
                Math.sqrt(leak.stack()),
                Math.sqrt(leak.wind()),
                airDensity);
        wiring.add(exchange);
        people = new Supply(wiring.account("people and machines"), new int[] {air, contents}, new double[] {0.5, 0.5});
        wiring.add(people);
    }

    private static Leakage.Shelter shelter(Room.Shelter shelter) {
        return Leakage.Shelter.values()[shelter.ordinal()];
    }

    private List<Integer> wallSuns() {
        List<Integer> signals = new ArrayList<>();
        for (int k = 0; k < 4; k++) signals.add(sun(suns.get(1 + k)));
        return signals;
    }

    /** Masses of one covering: inside film to air and contents, ladder, outside film to air and sky, sun on it. */
    private void envelope(
            String name,
            Room.Covering covering,
            double area,
            double film,
            HeatFlow direction,
            double skyShare,
            List<Integer> sunSignals) {
        List<Layer> layers = layersOf(covering.layers(), covering.framing());
        Nodes nodes = Nodes.within(0.1, layers, direction.inside(), HeatFlow.OUTSIDE);
        double gSky = FILM_SKY * skyShare * area;
        double gOut = FILM_OUTSIDE * area;
        int n = nodes.count();
        if (n == 0) nodes = Nodes.within(0.5, List.of(new Layer(layers.get(0).resistance(), 500)), 0.13, 0.04);
        n = nodes.count();
        int previous = -1;
        double real = covering.realLoss();
        for (int i = 0; i < n; i++) {
            int node = wiring.node(name + " " + (i + 1), nodes.capacity(i) * area, start);
            masses.add(node);
            double first = real * area / Math.max(nodes.resistance(0), 1e-3);
            if (i == 0) inside(node, film * area, FILM_RADIATIVE * area, first);
            else wiring.conduct(previous, node, real * area / nodes.resistance(i));
            previous = node;
        }
        double out = real * area / Math.max(nodes.resistance(n), 1e-3);
        double sum = out + gOut + gSky;
        int account = wiring.account(name + "s");
        wiring.conduct(previous, account, outdoors, out * gOut / sum);
        wiring.conduct(previous, account, sky, out * gSky / sum);
        double absorbed = covering.absorptance() * area / sunSignals.size() * out / sum;
        // what shines on the outside only makes it lose less: it stands on its own account, not among what heats the
        // shop
        for (int signal : sunSignals) wiring.drive(previous, account, signal, absorbed);
    }

    /** A massless inside surface between air, contents and the first mass. */
    private void inside(int mass, double toAir, double toContents, double toMass) {
        double sum = toAir + toContents + toMass;
        wiring.conduct(air, mass, toAir * toMass / sum);
        wiring.conduct(contents, mass, toContents * toMass / sum);
        wiring.conduct(air, contents, toAir * toContents / sum);
    }

    static List<Layer> layersOf(List<stokewell.rig.Layer> layers, double framing) {
        List<Layer> result = new ArrayList<>();
        for (stokewell.rig.Layer l : layers) {
            Layer main = Layer.of(l.thickness(), l.conductivity(), l.density(), l.specificHeat());
            boolean insulates = l.conductivity() < 0.07 && framing > 0;
            // timber across the insulation: ISO 10456 softwood
            result.add(
                    insulates
                            ? new Layers.Band(main, Layer.of(l.thickness(), 0.13, 500, 1600), framing).equivalent()
                            : main);
        }
        return result;
    }

    private void floor(double footprint, boolean storeOnFloor) {
        Room room = rig.room();
        if (room.floor() instanceof Room.Floor.Boards boards) {
            List<Layer> layers = layersOf(boards.layers(), 0.1);
            double r = layers.stream().mapToDouble(Layer::resistance).sum();
            double c = layers.stream().mapToDouble(Layer::capacity).sum();
            int node = wiring.node("floor 1", Math.max(c, 2000) * room.floorArea(), start);
            masses.add(node);
            double half = room.floorArea() / (0.5 * r);
            inside(node, FILM_FLOOR * room.floorArea(), FILM_RADIATIVE * room.floorArea(), half);
            // crawl space: still air below, ISO 6946 downward film
            wiring.conduct(
                    node, wiring.account("floor"), outdoors, room.floorArea() / (0.5 * r + HeatFlow.DOWN.inside()));
            return;
        }
        Room.Floor.Slab slab = (Room.Floor.Slab) room.floor();
        double area = room.floorArea();
        double perimeter = 2 * (room.length() + room.width());
        double soil = slab.soil().conductivity;
        double under = storeOnFloor ? Math.min(footprint, 0.6 * area) : 0;
        double strip =
                Math.min(0.7 * (area - under), Math.max(perimeter - 4 * EDGE_STRIP, 0.2 * perimeter) * EDGE_STRIP);
        double core = area - under - strip;
        double equivalent = Slab.equivalentThickness(0.2, soil, slab.under());
        double u = Slab.u(Slab.characteristic(area, perimeter), equivalent, soil);
        double known =
                HeatFlow.DOWN.inside() + slab.thickness() / CONCRETE_CONDUCTIVITY + slab.under() + SOIL_DEPTH / soil;
        double beyond = Math.max(0.3, 1 / u - known);

        floor = column("floor", core, slab, beyond, true);
        int edge = column("edge", strip, slab, beyond, true);
        double penetration = Slab.penetration(soil, slab.soil().capacity, 365.25 * 86400);
        double outward = Slab.yearlyOutside(perimeter, soil, penetration, equivalent);
        if (slab.edge() > 0) {
            double added = Slab.addedThickness(slab.edge(), 0.03 * slab.edge(), soil);
            outward += perimeter * Slab.uprightEdge(slab.edgeDepth(), equivalent, added, soil);
        }
        outward = slab.realLoss() * Math.max(outward, 0.1 * perimeter);
        wiring.conduct(edge, wiring.account("floor"), outdoors, outward);
        wiring.conduct(floor, edge, CONCRETE_CONDUCTIVITY * slab.thickness() * perimeter / EDGE_STRIP);
        if (under > 0) {
            underStore(under, slab);
        }
    }

    /**
     * The concrete and the ground under a store. What goes in there goes three ways: through the concrete round it and up into
     * the room, an annular fin; through the ground and up into the room; and a little away for good. The ground's whole share
     * is that of a disk on a half-space, S = 2 D λ (Incropera table 4.1, from memory). How much of that comes up again is
     * fitted to solutions of the heat equation in {@code PlateOnFloorTest}, which holds all of it to a seventh.
     */
    private void underStore(double area, Room.Floor.Slab slab) {
        double soil = slab.soil().conductivity;
        double diameter = Math.sqrt(4 * area / Math.PI);
        double disk = 2 * diameter * soil;
        double half = 0.5 * slab.thickness() / CONCRETE_CONDUCTIVITY;
        underStore = wiring.node("under store", slab.thickness() * area * CONCRETE, start + 3);
        masses.add(underStore);
        int ground =
                wiring.node("soil under store", 0.5 * area * 0.25 * area / disk * soil * slab.soil().capacity, start);
        masses.add(ground);
        upToRoom(
                underStore,
                Conduction.annularFin(
                        0.5 * diameter, slab.thickness(), CONCRETE_CONDUCTIVITY, 1 / (HeatFlow.DOWN.inside() + half)));
        wiring.conduct(underStore, ground, 1 / ((half + slab.under()) / area + 0.3 / disk));
        double radius = Math.sqrt(rig.room().floorArea() / Math.PI);
        double away = Math.min(0.9, (0.7 + 0.4 * diameter) / radius);
        upToRoom(ground, (1 - away) * disk / 0.7);
        wiring.conductToFixed(
                ground, wiring.account("floor"), rig.place().groundTemperature(), slab.realLoss() * away * disk / 0.7);
    }

    /** A warm floor's conductance to the room, by its films to air and contents. */
    private void upToRoom(int from, double conductance) {
        double toAir = FILM_FLOOR / (FILM_FLOOR + FILM_RADIATIVE);
        wiring.conduct(from, air, toAir * conductance);
        wiring.conduct(from, contents, (1 - toAir) * conductance);
    }

    /** Concrete, two layers of soil, and the resistance beyond them to the deep ground; returns the concrete. */
    private int column(String name, double area, Room.Floor.Slab slab, double beyond, boolean inRoom) {
        double soil = slab.soil().conductivity;
        int concrete = wiring.node(name + " slab", slab.thickness() * area * CONCRETE, start);
        int upper = wiring.node(name + " soil 1", 0.15 * area * slab.soil().capacity, start);
        int lower = wiring.node(name + " soil 2", 0.35 * area * slab.soil().capacity, start);
        masses.add(concrete);
        masses.add(upper);
        masses.add(lower);
        double half = 0.5 * slab.thickness() / CONCRETE_CONDUCTIVITY;
        if (inRoom) inside(concrete, FILM_FLOOR * area, FILM_RADIATIVE * area, area / half);
        wiring.conduct(concrete, upper, area / (half + slab.under() + 0.075 / soil));
        wiring.conduct(upper, lower, area * soil / 0.25);
        wiring.conductToFixed(
                lower,
                wiring.account("floor"),
                rig.place().groundTemperature(),
                slab.realLoss() * area / (0.175 / soil + beyond));
        return concrete;
    }

    private void glassAndDoors() {
        int sunAccount = wiring.account("sun");
        for (Room.Window w : rig.room().windows()) {
            massless(wiring.account("glass"), w.u() * w.area());
            double sun = w.sunShare() * w.area();
            int signal = sun(surfaceOf(w));
            wiring.drive(contents, sunAccount, signal, 0.5 * sun);
            wiring.drive(floor >= 0 ? floor : contents, sunAccount, signal, 0.35 * sun);
            wiring.drive(air, sunAccount, signal, 0.15 * sun);
        }
        for (Room.Door d : rig.room().doors()) massless(wiring.account("shut doors"), d.u() * d.area());
    }

    private void massless(int account, double conductance) {
        wiring.conduct(air, account, outdoors, 0.4 * conductance);
        wiring.conduct(contents, account, outdoors, 0.6 * conductance);
    }

    static double airDensity(Rig rig, double pressure) {
        return Air.density(293.15, pressure);
    }

    static double checkChannels(Weather weather, int expected) {
        if (weather.surfaces() != expected) {
            throw new IllegalArgumentException(
                    "weather knows the sun on " + weather.surfaces() + " surfaces, the rig has " + expected);
        }
        return expected;
    }
}
