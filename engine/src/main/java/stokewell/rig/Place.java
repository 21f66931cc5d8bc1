package stokewell.rig;

import static stokewell.rig.Dimension.ANGLE;
import static stokewell.rig.Dimension.LENGTH;
import static stokewell.rig.Dimension.TEMPERATURE;
import static stokewell.rig.Dimension.TIME;

/** Where the rig stands. */
public record Place(
        @Entry(is = ANGLE, low = -1.2, high = 1.3, says = "North positive.")
        double latitude,

        @Entry(is = ANGLE, low = -3.15, high = 3.15, orElse = "0 deg", says = "East positive; gives the sun its hour.")
        double longitude,

        @Entry(
                is = TIME,
                low = -12 * 3600,
                high = 14 * 3600,
                orElse = Entry.ABSENT,
                says = "Local standard time minus UTC; from the longitude where not given.")
        double utcOffset,

        @Entry(
                is = LENGTH,
                low = -430,
                high = 5000,
                orElse = "100 m",
                says = "Sets the air pressure and the boiling point.")
        double altitude,

        @Entry(
                is = TEMPERATURE,
                low = 253.15,
                high = 303.15,
                orElse = "9 C",
                says = "Yearly mean temperature outdoors: what the deep ground holds.")
        double groundTemperature) {

    public Place {
        Entries.check(Place.class, "place", latitude, longitude, utcOffset, altitude, groundTemperature);
        if (Double.isNaN(utcOffset)) utcOffset = 3600.0 * Math.round(Math.toDegrees(longitude) / 15);
    }
}
