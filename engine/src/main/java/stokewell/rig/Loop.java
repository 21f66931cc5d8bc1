package stokewell.rig;

import static stokewell.rig.Dimension.LENGTH;
import static stokewell.rig.Dimension.PRESSURE;
import static stokewell.rig.Dimension.SHARE;
import static stokewell.rig.Dimension.VOLUME;

/** The water loop from the store's return port through the pickups to its supply port. */
public record Loop(
        @Entry(orElse = "{length: 4 m}", says = "Hot pipe from the last pickup to the store.")
        Pipe supply,

        @Entry(orElse = "{length: 4 m}", says = "Cool pipe from the store to the first pickup.")
        Pipe back,

        @Entry(orElse = Entry.ABSENT, says = "The pump; none for a rig that circulates by itself.")
        Pump pump,

        @Entry(
                is = PRESSURE,
                low = 0,
                high = 50000,
                orElse = Entry.ABSENT,
                says = "Opening pressure of a check valve that lets water flow only the right way; none if left out.")
        double checkValve,

        @Entry(
                is = SHARE,
                low = 0,
                high = 0.6,
                orElse = "0 %",
                says = "Propylene glycol by weight; needs a coil in the store.")
        double glycol,

        @Entry(orElse = "{}", says = "The open header that keeps the loop full and takes its expansion.")
        Header header) {

    public Loop {
        Entries.check(Loop.class, "loop", supply, back, pump, checkValve, glycol, header);
    }

    /** An open feed-and-expansion header. */
    public record Header(
            @Entry(is = VOLUME, low = 0, high = 2, orElse = "20 L", says = "Water in it when cold.")
            double water,

            @Entry(is = LENGTH, low = 0, high = 20, orElse = "2.5 m", says = "Water level above the floor.")
            double level,

            @Entry(is = LENGTH, low = 0.004, high = 0.2, orElse = "22 mm", pipe = true, says = "Bore of the open vent.")
            double vent) {

        public Header {
            Entries.check(Header.class, "header", water, level, vent);
        }
    }
}
