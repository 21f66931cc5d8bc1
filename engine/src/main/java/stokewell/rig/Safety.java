package stokewell.rig;

import static stokewell.rig.Dimension.ENERGY;
import static stokewell.rig.Dimension.LENGTH;
import static stokewell.rig.Dimension.POWER;
import static stokewell.rig.Dimension.PRESSURE;
import static stokewell.rig.Dimension.TEMPERATURE;
import static stokewell.rig.Dimension.VOLUME;

/**
 * What keeps a rig safe, and what stands round it. Every entry may be left out; what is left out is not known, and what is
 * not known is asked about: it never counts as fine.
 */
public record Safety(
        @Entry(
                orElse = Entry.ABSENT,
                says = "Is there any valve between the fire and the open vent or the relief valve?")
        Boolean valveToOpen,

        @Entry(
                orElse = Entry.ABSENT,
                says = "Does every pipe of the loop rise to a vent, with no valve in it that a hand can shut?")
        Boolean loopRises,

        @Entry(orElse = Entry.ABSENT, says = "How the open vent runs.")
        OpenVent vent,

        @Entry(orElse = Entry.ABSENT, says = "The relief valve; left out if there is none.")
        ReliefValve relief,

        @Entry(orElse = Entry.ABSENT, says = "The expansion vessel of a closed loop; left out on an open one.")
        Vessel vessel,

        @Entry(orElse = Entry.ABSENT, says = "The battery that keeps the pump running in a power cut.")
        Battery battery,

        @Entry(orElse = Entry.ABSENT, says = "A valve that cools a hot loop with mains water, by itself.")
        Discharge discharge,

        @Entry(orElse = Entry.ABSENT, says = "What things are made of.")
        Materials materials,

        @Entry(orElse = Entry.ABSENT, says = "What stands round the stove, and who watches it.")
        Surroundings surroundings,

        @Entry(orElse = Entry.ABSENT, says = "The hot tap; left out if no water is drawn.")
        Tap tap) {

    /** Nothing is known. */
    public static final Safety UNKNOWN = new Safety(null, null, null, null, null, null, null, null, null, null);

    /** An open vent. */
    public record OpenVent(
            @Entry(
                    is = LENGTH,
                    low = 0,
                    high = 10,
                    orElse = Entry.ABSENT,
                    says = "How far its open end stands above the header's water.")
            double rise,

            @Entry(orElse = Entry.ABSENT, says = "Does it rise all the way, with no dip that can hold water?")
            Boolean risesAllTheWay,

            @Entry(orElse = Entry.ABSENT, says = "Is all of it, and the header, where it cannot freeze?")
            Boolean warm,

            @Entry(
                    is = LENGTH,
                    low = 0,
                    high = 0.2,
                    orElse = Entry.ABSENT,
                    pipe = true,
                    says = "Bore of the cold feed from the header, its own pipe with no valve; 0 for none.")
            double coldFeed,

            @Entry(
                    is = VOLUME,
                    low = 0,
                    high = 5,
                    orElse = Entry.ABSENT,
                    says = "What the header holds, up to its overflow.")
            double headerHolds,

            @Entry(
                    orElse = Entry.ABSENT,
                    says =
                            "Does the header's overflow run downhill, as wide as the vent, to where it scalds nobody and cannot freeze?")
            Boolean overflow) {

        public OpenVent {
            Entries.check(OpenVent.class, "safety.vent", rise, risesAllTheWay, warm, coldFeed, headerHolds, overflow);
        }
    }

    /** A relief valve. */
    public record ReliefValve(
            @Entry(is = PRESSURE, low = 10000, high = 1000000, says = "Opens at this pressure above the air's.")
            double opens,

            @Entry(
                    is = POWER,
                    low = 0,
                    high = 1000000,
                    orElse = Entry.ABSENT,
                    says = "Heat it is rated for, on its tag.")
            double rated,

            @Entry(
                    is = LENGTH,
                    low = 0.002,
                    high = 0.1,
                    orElse = Entry.ABSENT,
                    says = "Bore of its seat, where the tag gives no heat.")
            double bore,

            @Entry(orElse = Entry.ABSENT, says = "Does it sit at the stove, on the hot outlet?")
            Boolean atStove,

            @Entry(
                    orElse = Entry.ABSENT,
                    says =
                            "Does its outlet run downhill in metal, as wide as the valve, with nothing that shuts or plugs it?")
            Boolean clearOutlet) {

        public ReliefValve {
            Entries.check(ReliefValve.class, "safety.relief", opens, rated, bore, atStove, clearOutlet);
        }
    }

    /** An expansion vessel with a gas cushion. Pressures above the air's. */
    public record Vessel(
            @Entry(is = VOLUME, low = 0.001, high = 5, says = "Its whole volume.")
            double volume,

            @Entry(is = PRESSURE, low = 0, high = 500000, orElse = "75 kPa", says = "Gas pressure before it is filled.")
            double precharge,

            @Entry(is = PRESSURE, low = 0, high = 600000, orElse = "100 kPa", says = "Water pressure, filled and cold.")
            double fill) {

        public Vessel {
            Entries.check(Vessel.class, "safety.vessel", volume, precharge, fill);
        }
    }

    /** A battery with its inverter. */
    public record Battery(
            @Entry(is = ENERGY, low = 1000, high = 1e9, says = "What it really gives: half of the plate for lead.")
            double gives) {

        public Battery {
            Entries.check(Battery.class, "safety.battery", gives);
        }
    }

    /** A thermal discharge valve with its cooling coil. */
    public record Discharge(
            @Entry(is = TEMPERATURE, low = 340.15, high = 390.15, orElse = "95 C", says = "Opens here.")
            double opens,

            @Entry(is = POWER, low = 500, high = 200000, says = "Heat it carries away.")
            double power,

            @Entry(orElse = Entry.ABSENT, says = "Does its water come without your own electric pump?")
            Boolean withoutPower) {

        public Discharge {
            Entries.check(Discharge.class, "safety.discharge", opens, power, withoutPower);
        }
    }

    /** A hot tap. */
    public record Tap(
            @Entry(
                    is = TEMPERATURE,
                    low = 290.15,
                    high = 373.15,
                    orElse = Entry.ABSENT,
                    says = "What its mixing valve holds; left out if there is none.")
            double mixedTo) {

        public Tap {
            Entries.check(Tap.class, "safety.tap", mixedTo);
        }
    }

    /** Whether the loop is closed. */
    public boolean closed() {
        return vessel != null;
    }
}
