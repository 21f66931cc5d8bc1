package stokewell.shop;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.Types;
import java.util.ArrayList;
import java.util.List;

/** What the person did: loads of wood, and everything else. */
final class DiaryRows {

    private final Database database;

    DiaryRows(Database database) {
        this.database = database;
    }

    List<Load> loads(long from, long until) {
        return database.ask(c -> {
            List<Load> all = new ArrayList<>();
            try (PreparedStatement s = c.prepareStatement("SELECT id, time, mass, moisture, wood, note FROM loads"
                    + " WHERE time >= ? AND time < ? ORDER BY time, id")) {
                s.setLong(1, from);
                s.setLong(2, until);
                try (ResultSet r = s.executeQuery()) {
                    while (r.next()) {
                        double moisture = r.getDouble(4);
                        if (r.wasNull()) moisture = Double.NaN;
                        all.add(new Load(
                                r.getLong(1), r.getLong(2), r.getDouble(3), moisture, r.getString(5), r.getString(6)));
                    }
                }
            }
            return all;
        });
    }

    boolean add(Load load) {
        return database.change(c -> {
            try (PreparedStatement s = c.prepareStatement("INSERT INTO loads (time, mass, moisture, wood, note)"
                    + " SELECT ?1, ?2, ?3, ?4, ?5 WHERE NOT EXISTS (SELECT 1 FROM loads"
                    + " WHERE time = ?1 AND mass = ?2 AND moisture IS ?3 AND wood = ?4 AND note = ?5)")) {
                s.setLong(1, load.time());
                s.setDouble(2, load.mass());
                if (Double.isNaN(load.moisture())) s.setNull(3, Types.DOUBLE);
                else s.setDouble(3, load.moisture());
                s.setString(4, load.wood());
                s.setString(5, load.note());
                return s.executeUpdate() > 0;
            }
        });
    }

    List<Event> events(long from, long until) {
        return database.ask(c -> {
            List<Event> all = new ArrayList<>();
            try (PreparedStatement s = c.prepareStatement(
                    "SELECT id, time, kind, note FROM events WHERE time >= ? AND time < ? ORDER BY time, id")) {
                s.setLong(1, from);
                s.setLong(2, until);
                try (ResultSet r = s.executeQuery()) {
                    while (r.next()) {
                        all.add(new Event(r.getLong(1), r.getLong(2), r.getString(3), r.getString(4)));
                    }
                }
            }
            return all;
        });
    }

    boolean add(Event event) {
        return database.change(c -> {
            try (PreparedStatement s = c.prepareStatement("INSERT INTO events (time, kind, note)"
                    + " SELECT ?1, ?2, ?3 WHERE NOT EXISTS (SELECT 1 FROM events"
                    + " WHERE time = ?1 AND kind = ?2 AND note = ?3)")) {
                s.setLong(1, event.time());
                s.setString(2, event.kind());
                s.setString(3, event.note());
                return s.executeUpdate() > 0;
            }
        });
    }

    boolean strike(String table, long id) {
        return database.change(c -> {
            try (PreparedStatement s = c.prepareStatement("DELETE FROM " + table + " WHERE id = ?")) {
                s.setLong(1, id);
                return s.executeUpdate() > 0;
            }
        });
    }
}
