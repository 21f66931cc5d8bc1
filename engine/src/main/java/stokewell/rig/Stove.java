package stokewell.rig;

import static stokewell.rig.Dimension.AREA;
import static stokewell.rig.Dimension.CLOCK;
import static stokewell.rig.Dimension.LENGTH;
import static stokewell.rig.Dimension.MASS;
import static stokewell.rig.Dimension.SHARE;
import static stokewell.rig.Dimension.SPECIFIC_HEAT;
import static stokewell.rig.Dimension.TEMPERATURE;
import static stokewell.rig.Dimension.TEMPERATURE_DIFFERENCE;
import static stokewell.rig.Dimension.TRANSMITTANCE;
import static stokewell.rig.Dimension.VOLUME;

import java.util.List;

/** The stove: a metal body round a firebox, brick where it has any, and an air inlet that somebody or something sets. */
public record Stove(
        @Entry(is = MASS, low = 10, high = 3000, says = "Metal of body, door and plates.")
        double mass,

        @Entry(is = SPECIFIC_HEAT, low = 300, high = 1200, orElse = "480 J/kg.K", says = "Specific heat of the metal.")
        double specificHeat,

        @Entry(is = AREA, low = 0.2, high = 30, says = "Outside that warms the room.")
        double surface,

        @Entry(is = SHARE, low = 0.05, high = 1, orElse = "90 %", says = "How black the outside is to heat.")
        double emissivity,

        @Entry(is = LENGTH, low = 0.1, high = 4, orElse = "0.8 m", says = "Height of the body.")
        double height,

        @Entry(is = VOLUME, low = 0.005, high = 2, says = "Room inside the firebox.")
        double firebox,

        @Entry(is = AREA, low = 0.05, high = 20, says = "Inside of the body that the fire sees, pickups not counted.")
        double hearth,

        @Entry(is = MASS, low = 0, high = 3000, orElse = "0 kg", says = "Firebrick lining.")
        double brick,

        @Entry(
                is = TRANSMITTANCE,
                low = 5,
                high = 1000,
                orElse = "40 W/m2.K",
                says = "How well the brick passes heat on to the body.")
        double brickContact,

        @Entry(is = AREA, low = 1e-5, high = 0.2, orElse = "25 cm2", says = "Air inlet when wide open.")
        double airInlet,

        @Entry(is = SHARE, low = 0, high = 1, orElse = "6 %", says = "Share of that inlet that leaks when all is shut.")
        double airLeak,

        @Entry(orElse = "hand", says = "What sets the air: your hand, a clock list, or a thermostatic damper.")
        Air air) {

    public Stove {
        Entries.check(
                Stove.class,
                "stove",
                mass,
                specificHeat,
                surface,
                emissivity,
                height,
                firebox,
                hearth,
                brick,
                brickContact,
                airInlet,
                airLeak,
                air);
    }

    /** The same stove with its air set otherwise. */
    public Stove withAir(Air other) {
        return new Stove(
                mass,
                specificHeat,
                surface,
                emissivity,
                height,
                firebox,
                hearth,
                brick,
                brickContact,
                airInlet,
                airLeak,
                other);
    }

    /** What sets the air inlet. Settings are shares of wide open. */
    public sealed interface Air permits Air.Hand, Air.Clock, Air.Damper {

        /** One setting while wood is burning; shut to the closing setting once only coals are left. */
        record Hand(
                @Entry(is = SHARE, low = 0, high = 1, orElse = "50 %", says = "Setting while it burns.")
                double burning,

                @Entry(
                        is = SHARE,
                        low = 0,
                        high = 1,
                        orElse = "5 %",
                        says = "Setting once the fire is down to its last coals.")
                double banked)
                implements Air {

            public Hand {
                Entries.check(Hand.class, "air", burning, banked);
            }
        }

        /** Settings by the clock, each held until the next, every day. */
        record Clock(
                @Entry(says = "Settings and when they begin.")
                List<Setting> settings) implements Air {

            public Clock {
                settings = List.copyOf(settings);
                if (settings.isEmpty()) throw new RigFault("air", "settings", "no setting", "give at least one");
            }
        }

        /** A damper that closes as the stove body warms to its setpoint. */
        record Damper(
                @Entry(
                        is = TEMPERATURE,
                        low = 320.15,
                        high = 800.15,
                        orElse = "230 C",
                        says = "Body temperature at half open.")
                double setpoint,

                @Entry(
                        is = TEMPERATURE_DIFFERENCE,
                        low = 2,
                        high = 300,
                        orElse = "60 K",
                        says = "From wide open to nearly shut.")
                double band,

                @Entry(is = SHARE, low = 0, high = 1, orElse = "8 %", says = "Never closes further than this.")
                double least)
                implements Air {

            public Damper {
                Entries.check(Damper.class, "air", setpoint, band, least);
            }
        }
    }

    /** An air setting by the clock. */
    public record Setting(
            @Entry(is = CLOCK, low = 0, high = 86400, says = "From when.")
            double at,

            @Entry(is = SHARE, low = 0, high = 1, says = "Share of wide open.")
            double open) {

        public Setting {
            Entries.check(Setting.class, "setting", at, open);
        }
    }
}
