package stokewell.shop;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Versions of the rig, fits, and what stands for the whole shop. */
final class ModelRows {

    private final Database database;

    ModelRows(Database database) {
        this.database = database;
    }

    Optional<String> about(String key) {
        return database.ask(c -> {
            try (PreparedStatement s = c.prepareStatement("SELECT value FROM about WHERE key = ?")) {
                s.setString(1, key);
                try (ResultSet r = s.executeQuery()) {
                    return r.next() ? Optional.of(r.getString(1)) : Optional.<String>empty();
                }
            }
        });
    }

    void setAbout(String key, String value) {
        database.change(c -> {
            try (PreparedStatement s = c.prepareStatement("INSERT OR REPLACE INTO about (key, value) VALUES (?, ?)")) {
                s.setString(1, key);
                s.setString(2, value);
                return s.executeUpdate();
            }
        });
    }

    List<RigVersion> rigs() {
        return database.ask(c -> {
            List<RigVersion> all = new ArrayList<>();
            try (PreparedStatement s = c.prepareStatement("SELECT id, since, name, text FROM rigs ORDER BY since, id");
                    ResultSet r = s.executeQuery()) {
                while (r.next()) all.add(new RigVersion(r.getLong(1), r.getLong(2), r.getString(3), r.getString(4)));
            }
            return all;
        });
    }

    RigVersion keepRig(long since, String name, String text) {
        long id = database.change(c -> {
            try (PreparedStatement s =
                    c.prepareStatement("SELECT id FROM rigs WHERE since = ? AND name = ? AND text = ?")) {
                s.setLong(1, since);
                s.setString(2, name);
                s.setString(3, text);
                try (ResultSet r = s.executeQuery()) {
                    if (r.next()) return r.getLong(1);
                }
            }
            try (PreparedStatement s = c.prepareStatement("INSERT INTO rigs (since, name, text) VALUES (?, ?, ?)")) {
                s.setLong(1, since);
                s.setString(2, name);
                s.setString(3, text);
                s.executeUpdate();
            }
            return last(c);
        });
        return new RigVersion(id, since, name, text);
    }

    List<SavedFit> fits() {
        return database.ask(c -> {
            List<SavedFit> all = new ArrayList<>();
            try (PreparedStatement s = c.prepareStatement("SELECT id, made, rig, body FROM fits ORDER BY made, id");
                    ResultSet r = s.executeQuery()) {
                while (r.next()) all.add(new SavedFit(r.getLong(1), r.getLong(2), r.getLong(3), r.getString(4)));
            }
            return all;
        });
    }

    SavedFit saveFit(long made, long rig, String body) {
        long id = database.change(c -> {
            try (PreparedStatement s =
                    c.prepareStatement("SELECT id FROM fits WHERE made = ? AND ifnull(rig, 0) = ? AND body = ?")) {
                s.setLong(1, made);
                s.setLong(2, rig);
                s.setString(3, body);
                try (ResultSet r = s.executeQuery()) {
                    if (r.next()) return r.getLong(1);
                }
            }
            try (PreparedStatement s = c.prepareStatement("INSERT INTO fits (made, rig, body) VALUES (?, ?, ?)")) {
                s.setLong(1, made);
                if (rig == 0) s.setNull(2, Types.INTEGER);
                else s.setLong(2, rig);
                s.setString(3, body);
                s.executeUpdate();
            }
            return last(c);
        });
        return new SavedFit(id, made, rig, body);
    }

    private static long last(Connection c) throws SQLException {
        try (PreparedStatement s = c.prepareStatement("SELECT last_insert_rowid()");
                ResultSet r = s.executeQuery()) {
            r.next();
            return r.getLong(1);
        }
    }
}
