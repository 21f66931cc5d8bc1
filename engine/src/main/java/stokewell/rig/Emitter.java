package stokewell.rig;

import static stokewell.rig.Dimension.COUNT;
import static stokewell.rig.Dimension.LENGTH;
import static stokewell.rig.Dimension.MASS;
import static stokewell.rig.Dimension.NONE;
import static stokewell.rig.Dimension.POWER;
import static stokewell.rig.Dimension.PRESSURE;
import static stokewell.rig.Dimension.SHARE;
import static stokewell.rig.Dimension.TEMPERATURE;
import static stokewell.rig.Dimension.TEMPERATURE_DIFFERENCE;
import static stokewell.rig.Dimension.VOLUME;
import static stokewell.rig.Dimension.VOLUME_FLOW;

/** A thing that gives the store's heat to the room. */
public sealed interface Emitter permits Emitter.AirTubes, Emitter.FanCoil, Emitter.Radiator, Emitter.FloorLoop {

    /** What the switches call it. */
    String name();

    /** The same thing with its fan and pump taken away: what still leaks by itself stays. */
    Emitter idle();

    /** Air tubes through the store's water, blown by a fan. */
    record AirTubes(
            @Entry(orElse = "fan", says = "What the switches call it.")
            String name,

            @Entry(is = COUNT, low = 1, high = 500, says = "How many tubes.")
            int count,

            @Entry(is = LENGTH, low = 0.01, high = 0.5, says = "Inside diameter of each.")
            double bore,

            @Entry(is = LENGTH, low = 0.1, high = 20, says = "Length of each in the water.")
            double length,

            @Entry(orElse = "{}", says = "The fan.") Fan fan,

            @Entry(is = SHARE, low = 0, high = 1, orElse = "10 %", says = "Height of the lowest tube in the water.")
            double bottom,

            @Entry(is = SHARE, low = 0, high = 1, orElse = "90 %", says = "Height of the highest tube in the water.")
            double top,

            @Entry(
                    is = SHARE,
                    low = 0,
                    high = 0.5,
                    orElse = "12 %",
                    says = "Share of the fan's heat that still leaks by natural draught with the fan off.")
            double stillLeak)
            implements Emitter {

        public AirTubes {
            Entries.check(AirTubes.class, name, name, count, bore, length, fan, bottom, top, stillLeak);
        }

        @Override
        public Emitter idle() {
            return this;
        }
    }

    /** Air blown over a finned water coil. */
    record FanCoil(
            @Entry(orElse = "fan", says = "What the switches call it.")
            String name,

            @Entry(is = POWER, low = 100, high = 200000, says = "Rated heat.")
            double ratedPower,

            @Entry(is = TEMPERATURE, low = 300.15, high = 400.15, orElse = "82 C", says = "Water in, at the rating.")
            double ratedWater,

            @Entry(is = TEMPERATURE, low = 260.15, high = 320.15, orElse = "20 C", says = "Air in, at the rating.")
            double ratedAir,

            @Entry(is = VOLUME, low = 1e-4, high = 0.2, orElse = "2 L", says = "Water in it.")
            double volume,

            @Entry(orElse = "{}", says = "The fan.") Fan fan,

            @Entry(orElse = "{}", says = "How water gets there from the store.")
            Circuit circuit)
            implements Emitter {

        public FanCoil {
            Entries.check(FanCoil.class, name, name, ratedPower, ratedWater, ratedAir, volume, fan, circuit);
            if (ratedWater - ratedAir < 5) {
                throw new RigFault(name, "ratedWater", "the rated water is hardly warmer than the air", "check both");
            }
        }

        @Override
        public Emitter idle() {
            return new FanCoil(name, ratedPower, ratedWater, ratedAir, volume, fan, circuit.withoutPump());
        }
    }

    /** A panel radiator or finned pipe, by its rating at a difference of 50 K. */
    record Radiator(
            @Entry(orElse = "radiator", says = "What the switches call it.")
            String name,

            @Entry(is = POWER, low = 50, high = 100000, says = "Rated heat at the rated difference.")
            double ratedPower,

            @Entry(
                    is = TEMPERATURE_DIFFERENCE,
                    low = 10,
                    high = 90,
                    orElse = "50 K",
                    says = "Mean water minus room, at the rating.")
            double ratedDifference,

            @Entry(is = NONE, low = 1, high = 1.6, orElse = "1.3", says = "Exponent of its law.")
            double exponent,

            @Entry(is = SHARE, low = 0, high = 1, orElse = "30 %", says = "Share given as radiation.")
            double radiant,

            @Entry(is = VOLUME, low = 1e-4, high = 1, orElse = "8 L", says = "Water in it.")
            double volume,

            @Entry(is = MASS, low = 0.5, high = 2000, orElse = "25 kg", says = "Metal of it.")
            double metal,

            @Entry(is = LENGTH, low = -3, high = 10, orElse = "1.5 m", says = "Height of its middle above the floor.")
            double elevation,

            @Entry(orElse = "{}", says = "How water gets there from the store.")
            Circuit circuit)
            implements Emitter {

        public Radiator {
            Entries.check(
                    Radiator.class,
                    name,
                    name,
                    ratedPower,
                    ratedDifference,
                    exponent,
                    radiant,
                    volume,
                    metal,
                    elevation,
                    circuit);
        }

        @Override
        public Emitter idle() {
            return new Radiator(
                    name,
                    ratedPower,
                    ratedDifference,
                    exponent,
                    radiant,
                    volume,
                    metal,
                    elevation,
                    circuit.withoutPump());
        }
    }

    /** Pipes cast in the floor slab. */
    record FloorLoop(
            @Entry(orElse = "floor", says = "What the switches call it.")
            String name,

            @Entry(is = LENGTH, low = 5, high = 3000, says = "Length of all the pipe in the slab.")
            double length,

            @Entry(is = LENGTH, low = 0.006, high = 0.05, orElse = "16 mm", pipe = true, says = "Bore of that pipe.")
            double bore,

            @Entry(is = LENGTH, low = 0.05, high = 1, orElse = "200 mm", says = "From pipe to pipe.")
            double spacing,

            @Entry(is = COUNT, low = 1, high = 30, orElse = "2", says = "Loops side by side.")
            int loops,

            @Entry(
                    is = TEMPERATURE,
                    low = 293.15,
                    high = 363.15,
                    orElse = Entry.ABSENT,
                    says = "What its mixing valve holds; left out if there is none.")
            double mixedTo,

            @Entry(orElse = "{}", says = "How water gets there from the store.")
            Circuit circuit)
            implements Emitter {

        public FloorLoop {
            Entries.check(FloorLoop.class, name, name, length, bore, spacing, loops, mixedTo, circuit);
        }

        /** Whether a valve mixes its water down. */
        public boolean mixed() {
            return !Double.isNaN(mixedTo);
        }

        @Override
        public Emitter idle() {
            return new FloorLoop(name, length, bore, spacing, loops, mixedTo, circuit.withoutPump());
        }
    }

    /** A fan. */
    record Fan(
            @Entry(is = VOLUME_FLOW, low = 0.002, high = 10, orElse = "400 m3/h", says = "Air moved at full speed.")
            double flow,

            @Entry(is = POWER, low = 1, high = 5000, orElse = "60 W", says = "Electric power at full speed.")
            double power,

            @Entry(is = SHARE, low = 0.1, high = 1, orElse = "100 %", says = "Speed setting.")
            double speed) {

        public Fan {
            Entries.check(Fan.class, "fan", flow, power, speed);
        }
    }

    /** The pipes between store and emitter. */
    record Circuit(
            @Entry(orElse = "{length: 3 m}", says = "Hot pipe from the store.")
            Pipe supply,

            @Entry(orElse = "{length: 3 m}", says = "Cool pipe back.")
            Pipe back,

            @Entry(orElse = Entry.ABSENT, says = "Its pump; none if it circulates by itself.")
            Pump pump,

            @Entry(
                    is = PRESSURE,
                    low = 0,
                    high = 50000,
                    orElse = Entry.ABSENT,
                    says = "Opening pressure of a check valve; none if left out.")
            double checkValve,

            @Entry(is = SHARE, low = 0, high = 1, orElse = "92 %", says = "Height of its draw from the store.")
            double draw,

            @Entry(is = SHARE, low = 0, high = 1, orElse = "8 %", says = "Height of its return to the store.")
            double giveBack) {

        public Circuit {
            Entries.check(Circuit.class, "circuit", supply, back, pump, checkValve, draw, giveBack);
        }

        /** The same pipes with the pump's motor gone and its body left in the way. */
        Circuit withoutPump() {
            return new Circuit(supply, back, null, checkValve, draw, giveBack);
        }
    }
}
