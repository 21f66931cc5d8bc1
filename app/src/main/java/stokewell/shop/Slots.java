package stokewell.shop;

import java.time.LocalDate;

/** The row of a sensor's day: sensor * 2^20 + days since 1970, so that a sensor's days lie side by side on the disk. */
final class Slots {

    private static final int BITS = 20;
    private static final long DAYS = (1L << BITS) - 1;
    /** The last second that has a slot. */
    static final long END = DAYS * DayBlock.DAY + DayBlock.DAY - 1;

    private Slots() {}

    static long of(long sensor, long time) {
        return sensor << BITS | time / DayBlock.DAY;
    }

    /** The slot of the time, or the nearest of the sensor where it has none. */
    static long near(long sensor, long time) {
        return of(sensor, Math.min(END, Math.max(0, time)));
    }

    static long sensor(long slot) {
        return slot >> BITS;
    }

    static LocalDate day(long slot) {
        return LocalDate.ofEpochDay(slot & DAYS);
    }

    /** s since 1970. */
    static long start(long slot) {
        return (slot & DAYS) * DayBlock.DAY;
    }
}
