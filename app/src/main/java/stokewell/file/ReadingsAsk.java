package stokewell.file;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * What the person says about a file of readings, over what it says itself.
 *
 * @param zone     of times that carry none, if said
 * @param homeZone of times that carry none and where nothing was said: the shop's or the computer's
 * @param dates    order of dates in numbers, if said
 * @param decimal  the decimal mark, {@code '.'} or {@code ','}, if said
 * @param unit     of temperatures that carry none, if said
 * @param sensor   heading of the column that names the sensor, for a table with one reading a row, if said
 * @param map      which columns or sensors are wanted, and as what; empty for all
 * @param skip     whether single rows that cannot be read are left out, instead of refusing the file
 * @param now      no reading is of later than a day after
 * @param start    when a table begins whose times are seconds since its start, if said; wall clock
 */
public record ReadingsAsk(
        Optional<ZoneId> zone,
        ZoneId homeZone,
        Optional<DateOrder> dates,
        Optional<Character> decimal,
        Optional<SensorUnit> unit,
        Optional<String> sensor,
        List<Wanted> map,
        boolean skip,
        Instant now,
        Optional<LocalDateTime> start) {

    /** With times that say their date. */
    public ReadingsAsk(
            Optional<ZoneId> zone,
            ZoneId homeZone,
            Optional<DateOrder> dates,
            Optional<Character> decimal,
            Optional<SensorUnit> unit,
            Optional<String> sensor,
            List<Wanted> map,
            boolean skip,
            Instant now) {
        this(zone, homeZone, dates, decimal, unit, sensor, map, skip, now, Optional.empty());
    }

    /** The same of a table that counts its seconds from a start. */
    public ReadingsAsk from(Optional<LocalDateTime> other) {
        return new ReadingsAsk(zone, homeZone, dates, decimal, unit, sensor, map, skip, now, other);
    }

    /**
     * A column, or a sensor of a table with one reading a row.
     *
     * @param column its heading, its number counted from 1, or the sensor's name in the file
     * @param sensor what the shop shall call it
     * @param unit   what it is written in, if said
     */
    public record Wanted(String column, String sensor, Optional<SensorUnit> unit) {}

    /** Nothing said. */
    public static ReadingsAsk plain(ZoneId homeZone, Instant now) {
        return plain(Optional.empty(), homeZone, now);
    }

    /** Nothing said but the zone of times that carry none, if that. */
    public static ReadingsAsk plain(Optional<ZoneId> zone, ZoneId homeZone, Instant now) {
        return new ReadingsAsk(
                zone,
                homeZone,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                false,
                now);
    }

    /** What is wanted of a column or sensor of that name, or of that number counted from 1. */
    Optional<Wanted> wanted(String name, int number) {
        for (Wanted w : map) {
            if (w.column.strip().equalsIgnoreCase(name.strip())) return Optional.of(w);
        }
        for (Wanted w : map) {
            if (number > 0 && w.column.strip().equals(Integer.toString(number))) return Optional.of(w);
        }
        return Optional.empty();
    }
}
