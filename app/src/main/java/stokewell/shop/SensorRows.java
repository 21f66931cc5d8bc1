package stokewell.shop;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stokewell.file.SensorKind;
import stokewell.file.SensorUnit;

/** The sensors. */
final class SensorRows {

    private static final String COLUMNS = "SELECT id, name, kind, unit, place FROM sensors";

    private final Database database;

    SensorRows(Database database) {
        this.database = database;
    }

    List<Sensor> all() {
        return database.ask(c -> {
            List<Sensor> all = new ArrayList<>();
            try (PreparedStatement s = c.prepareStatement(COLUMNS + " ORDER BY name");
                    ResultSet r = s.executeQuery()) {
                while (r.next()) all.add(sensor(r));
            }
            return all;
        });
    }

    Optional<Sensor> named(String name) {
        return database.ask(c -> Optional.ofNullable(find(c, name)));
    }

    void place(Sensor sensor, String place) {
        set(sensor, "place", place);
    }

    void rename(Sensor sensor, String name) {
        if (name.isBlank()) throw new ShopFault("A sensor needs a name.", "Give it one.");
        if (named(name).isPresent()) {
            throw new ShopFault("There is a sensor \"" + name + "\" already.", "Choose another name.");
        }
        set(sensor, "name", name);
    }

    /** The sensor of a batch, made where there is none yet. Inside a change. */
    Sensor of(Connection c, Batch batch) throws SQLException {
        Sensor known = find(c, batch.sensor());
        if (known != null) {
            if (known.kind() == batch.unit().kind()) return known;
            throw new ShopFault(
                    "Sensor \"" + batch.sensor() + "\" measures " + known.kind().word() + " in the shop, but "
                            + batch.unit().kind().word() + " here.",
                    "Give it another name: --map COLUMN=NAME.");
        }
        try (PreparedStatement s = c.prepareStatement("INSERT INTO sensors (name, kind, unit) VALUES (?, ?, ?)")) {
            s.setString(1, batch.sensor());
            s.setString(2, batch.unit().kind().word());
            s.setString(3, batch.unit().symbol());
            s.executeUpdate();
        }
        Sensor made = find(c, batch.sensor());
        if (made == null) throw new IllegalStateException("sensor was not made");
        return made;
    }

    private static Sensor find(Connection c, String name) throws SQLException {
        try (PreparedStatement s = c.prepareStatement(COLUMNS + " WHERE name = ?")) {
            s.setString(1, name);
            try (ResultSet r = s.executeQuery()) {
                return r.next() ? sensor(r) : null;
            }
        }
    }

    private void set(Sensor sensor, String column, String value) {
        database.change(c -> {
            try (PreparedStatement s = c.prepareStatement("UPDATE sensors SET " + column + " = ? WHERE id = ?")) {
                s.setString(1, value);
                s.setLong(2, sensor.id());
                return s.executeUpdate();
            }
        });
    }

    private static Sensor sensor(ResultSet r) throws SQLException {
        SensorKind kind;
        try {
            kind = SensorKind.valueOf(r.getString(3).toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw new ShopFault(
                    "Sensor \"" + r.getString(2) + "\" is of an unknown kind: " + r.getString(3) + ".",
                    "Use the program that wrote the shop, or restore a backup.",
                    e);
        }
        SensorUnit unit = SensorUnit.named(kind, r.getString(4)).orElse(SensorUnit.si(kind));
        return new Sensor(r.getLong(1), r.getString(2), unit, r.getString(5));
    }
}
