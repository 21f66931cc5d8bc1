package stokewell.network;

import static stokewell.transfer.Radiation.SIGMA;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stokewell.balance.Radiation;
import stokewell.balance.Surface;
import stokewell.balance.Wiring;
import stokewell.fire.Burn;
import stokewell.fire.Fire;
import stokewell.fire.Gas;
import stokewell.matter.Curve;
import stokewell.matter.FlueGas;
import stokewell.matter.Ultimate;
import stokewell.matter.Wood;
import stokewell.rig.Flue;
import stokewell.rig.Pickup;
import stokewell.rig.Rig;
import stokewell.rig.Stove;
import stokewell.transfer.Convection;

/** The stove, its fire, its flue and the metal of the pickups that the fire sees. */
final class StoveWiring {

    private static final double G = 9.80665;
    private static final double R_AIR = 287.055;
    /** How black flames and glowing bed are together: common practice, no source. */
    private static final double FLAME = 0.35;

    private static final double SOOTY = 0.9;
    /** Convection in a firebox, W/(m2 K): common practice, no source. */
    private static final double FIREBOX_FILM = 8;
    /** Share of the hearth's area that the gas washes once more on its way out: common practice, no source. */
    private static final double PASS_SHARE = 0.5;

    /** Of a chimney: the gas cools along it, and its top is what gets wet. */
    private static final int PIECES = 3;

    private static final double STEEL = 480;
    private static final double BRICK = 900;

    final int body;
    final int brick;
    /** Pieces of the chimney from below. */
    final int[] chimney;

    final int[] walls;
    final double[] contact;
    final int airFlow;
    final int gasTemperature;
    final int raw;
    final int fuelWater;
    final int volatiles;
    final int carbon;
    Fire fire;

    private final Wiring wiring;
    private final Rig rig;
    private final double pressure;

    StoveWiring(Wiring wiring, Rig rig, double pressure, double start) {
        this.wiring = wiring;
        this.rig = rig;
        this.pressure = pressure;
        Stove stove = rig.stove();
        body = wiring.node("stove body", stove.mass() * stove.specificHeat(), start);
        brick = stove.brick() > 0 ? wiring.node("firebrick", stove.brick() * BRICK, start) : -1;
        chimney = new int[PIECES];
        for (int i = 0; i < PIECES; i++) {
            chimney[i] = wiring.node("chimney " + (i + 1), rig.flue().mass() / PIECES * STEEL, start);
        }
        walls = new int[rig.pickups().size()];
        contact = new double[walls.length];
        for (int i = 0; i < walls.length; i++) {
            Pickup p = rig.pickups().get(i);
            walls[i] = wiring.node(p.name() + " metal", p.metal() * STEEL, start);
        }
        raw = wiring.rate("raw wood", 0, 0.1);
        fuelWater = wiring.rate("water in wood", 0, 0.1);
        volatiles = wiring.rate("volatiles", 0, 0.1);
        carbon = wiring.rate("char", 0, 0.1);
        gasTemperature = wiring.algebraic("firebox gas", start, 500);
        airFlow = wiring.rate("air to the fire", 1e-3, 0.05);
    }

    void wire(RoomWiring room) {
        Stove stove = rig.stove();
        Flue flue = rig.flue();
        List<Fire.Surface> surfaces = new ArrayList<>();
        double exchange = 1 / (1 / FLAME + 1 / SOOTY - 1);
        int lined = brick >= 0 ? brick : body;
        surfaces.add(new Fire.Surface(lined, stove.hearth(), exchange, FIREBOX_FILM, 0, -1));
        if (brick >= 0) wiring.conduct(brick, body, stove.brickContact() * stove.hearth());
        for (int i = 0; i < walls.length; i++) {
            Pickup p = rig.pickups().get(i);
            if (p.kind() == Pickup.Kind.BOX) {
                contact[i] = p.area() / (1 / p.contact() + p.fouling());
                wiring.conduct(body, walls[i], contact[i]);
            } else {
                surfaces.add(new Fire.Surface(walls[i], p.area(), exchange, FIREBOX_FILM, p.fouling(), -1));
            }
        }

        Wood wood = wood(rig);
        double wet = rig.fuel().wetBasis();
        double pace = switch (rig.fuel().form()) {
            case SPLITS -> 1;
            case OFFCUTS -> 0.3;
            case ROUNDS -> 1.6;
        };
        Burn burn = Burn.of(wood, Ultimate.WOOD, wet, pace);
        FlueGas smoke = FlueGas.of(Ultimate.WOOD, wet, 2);
        Gas gas = Gas.through(smoke.specificHeat(300), smoke.specificHeat(1100), smoke.specificHeat(600));

        double diameter = flue.diameter();
        double section = Math.PI / 4 * diameter * diameter;
        double connectorArea = Math.PI * diameter * flue.connector();
        double chimneyArea = Math.PI * diameter * flue.height();
        double density = pressure / (R_AIR * 293.15);
        double inlet = 0.6 * stove.airInlet();
        double zeta = flue.lossFactors() + 0.04 * (flue.height() + flue.connector()) / diameter;
        Fire.Sizes sizes = new Fire.Sizes(
                PASS_SHARE * stove.hearth(),
                connectorArea,
                chimneyArea,
                G * pressure * flue.height() / R_AIR,
                1 / (2 * density * inlet * inlet),
                zeta * R_AIR / (2 * pressure * section * section),
                stove.airLeak());
        Fire.Places places = new Fire.Places(
                raw,
                fuelWater,
                volatiles,
                carbon,
                gasTemperature,
                airFlow,
                body,
                chimney,
                room.air,
                room.contents,
                room.outdoors,
                wiring.account("flue gas"),
                wiring.account("smoke"),
                wiring.meter("water dried from wood"),
                wiring.meter("heat released"));
        fire = new Fire(wiring, places, surfaces, sizes, burn, gas);
        wiring.add(fire);

        double length = stove.height();
        double surface = stove.surface();
        Curve convection = Curve.of(
                dt -> dt == 0 ? 0 : surface * dt * Convection.verticalPlateInAir(293.15 + dt, 293.15, length),
                -60,
                700,
                152);
        wiring.add(new Surface(wiring, body, room.air, wiring.meter("stove to room"), convection));
        wiring.add(new Radiation(
                wiring, body, room.contents, wiring.meter("stove to room"), SIGMA * stove.emissivity() * surface));

        // wall resistances count on the inner surface, as EN 13384-1 counts them; the indoor run is the lower part
        for (int i = 0; i < PIECES; i++) {
            double inside = Math.max(0, Math.min(1, (1 - flue.outdoors()) * PIECES - i));
            double piece = chimneyArea / PIECES;
            double uOut = piece * (1 - inside) / (flue.insulation() + 1.0 / 20);
            double uRoom = piece * inside / (flue.insulation() + 1.0 / 9);
            if (uOut > 0) wiring.conduct(chimney[i], wiring.account("flue gas"), room.outdoors, uOut);
            if (uRoom > 0) wiring.conduct(chimney[i], room.air, uRoom);
        }
    }

    static Wood wood(Rig rig) {
        String name = rig.fuel().species().toLowerCase(Locale.ROOT);
        return Wood.named(name)
                .orElseThrow(() -> new stokewell.rig.RigFault(
                        "fuel",
                        "species",
                        "no wood called \"" + rig.fuel().species() + "\" is known",
                        "known: " + String.join(", ", Wood.names())));
    }
}
