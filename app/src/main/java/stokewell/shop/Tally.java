package stokewell.shop;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/**
 * What is in a shop's file, counted by reading all of it.
 *
 * @param sensors  how many
 * @param readings how many
 * @param loads    how many
 * @param events   how many
 * @param rigs     versions of the rig
 * @param fits     how many
 */
public record Tally(int sensors, long readings, int loads, int events, int rigs, int fits) {

    /** Counts, and throws where a page, a row or a reading is not what was written. */
    public static Tally of(Shop shop) {
        return shop.database().ask(c -> count(shop.file(), c));
    }

    private static Tally count(Path file, Connection c) throws SQLException {
        try (Statement s = c.createStatement();
                ResultSet r = s.executeQuery("PRAGMA integrity_check")) {
            if (!r.next() || !"ok".equals(r.getString(1))) throw damaged(file, r.getString(1));
        }
        long readings = 0;
        DayBlock block = new DayBlock();
        try (PreparedStatement s = c.prepareStatement("SELECT slot, first, last, count, body FROM readings");
                ResultSet r = s.executeQuery()) {
            while (r.next()) {
                Readings day = block.decode(r.getLong(1), r.getBytes(5));
                boolean right = day.size() == r.getInt(4)
                        && day.time(0) == r.getLong(2)
                        && day.time(day.size() - 1) == r.getLong(3)
                        && Slots.of(Slots.sensor(r.getLong(1)), day.time(day.size() - 1)) == r.getLong(1);
                if (!right) throw damaged(file, "readings of " + Slots.day(r.getLong(1)));
                readings += day.size();
            }
        }
        return new Tally(
                Database.number(c, "SELECT count(*) FROM sensors"),
                readings,
                Database.number(c, "SELECT count(*) FROM loads"),
                Database.number(c, "SELECT count(*) FROM events"),
                Database.number(c, "SELECT count(*) FROM rigs"),
                Database.number(c, "SELECT count(*) FROM fits"));
    }

    private static ShopFault damaged(Path file, String what) {
        return new ShopFault(file + " is damaged: " + what + ".", "Take another backup.");
    }

    @Override
    public String toString() {
        return many(sensors, "sensor") + ", " + many(readings, "reading") + ", " + many(loads, "load") + ", "
                + many(events, "event") + ", " + many(rigs, "rig") + ", " + many(fits, "fit");
    }

    private static String many(long n, String thing) {
        return n + " " + thing + (n == 1 ? "" : "s");
    }
}
