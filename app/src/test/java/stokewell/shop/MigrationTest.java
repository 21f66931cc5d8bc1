package stokewell.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stokewell.file.SensorKind;
import stokewell.file.SensorUnit;

/** Files of older programs. Their tables are written out here, as they were: the scripts of the program are not asked. */
class MigrationTest {

    private static final long START = 1_700_000_000L;

    /** Version 1, as it was first given away. */
    private static final String[] FIRST = {
        "CREATE TABLE about (key TEXT PRIMARY KEY, value TEXT NOT NULL) WITHOUT ROWID",
        "CREATE TABLE sensors (id INTEGER PRIMARY KEY, name TEXT NOT NULL UNIQUE, kind TEXT NOT NULL, unit TEXT NOT NULL, "
                + "place TEXT NOT NULL DEFAULT '')",
        "CREATE TABLE readings (slot INTEGER PRIMARY KEY, first INTEGER NOT NULL, last INTEGER NOT NULL, "
                + "count INTEGER NOT NULL, body BLOB NOT NULL)",
        "CREATE TABLE loads (id INTEGER PRIMARY KEY, time INTEGER NOT NULL, mass REAL NOT NULL, moisture REAL, "
                + "wood TEXT NOT NULL DEFAULT '', note TEXT NOT NULL DEFAULT '')",
        "CREATE INDEX loads_by_time ON loads (time)",
        "CREATE TABLE events (id INTEGER PRIMARY KEY, time INTEGER NOT NULL, kind TEXT NOT NULL, "
                + "note TEXT NOT NULL DEFAULT '')",
        "CREATE INDEX events_by_time ON events (time)",
        "CREATE TABLE rigs (id INTEGER PRIMARY KEY, since INTEGER NOT NULL, name TEXT NOT NULL, text TEXT NOT NULL)",
        "CREATE TABLE fits (id INTEGER PRIMARY KEY, made INTEGER NOT NULL, rig INTEGER REFERENCES rigs (id), "
                + "body TEXT NOT NULL)",
        "INSERT INTO about VALUES ('zone', 'Europe/Oslo')",
        "INSERT INTO sensors VALUES (3, 'room', 'TEMPERATURE', 'C', 'room')",
        "INSERT INTO loads VALUES (1, " + START + ", 6.5, NULL, 'ash', 'first')",
        "INSERT INTO events VALUES (1, " + START + ", 'sweep', 'flue')",
        "INSERT INTO rigs VALUES (1, " + START + ", 'Shed', 'name: Shed')",
        "INSERT INTO fits VALUES (1, " + START + ", 1, '{}')",
        "PRAGMA application_id = " + 0x53746f6b,
        "PRAGMA user_version = 1",
    };

    @TempDir
    Path folder;

    private Path first() throws SQLException {
        Path file = folder.resolve("old");
        Readings day = new Readings(new long[] {START, START + 300}, new double[] {291.65, 291.55});
        try (Connection c = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement s = c.createStatement()) {
            for (String sql : FIRST) s.execute(sql);
            try (PreparedStatement put = c.prepareStatement("INSERT INTO readings VALUES (?, ?, ?, 2, ?)")) {
                long slot = Slots.of(3, START);
                put.setLong(1, slot);
                put.setLong(2, START);
                put.setLong(3, START + 300);
                put.setBytes(
                        4,
                        new DayBlock()
                                .encode(slot, day.times(), day.values(), 0, 2, SensorUnit.si(SensorKind.TEMPERATURE)));
                put.execute();
            }
        }
        return file;
    }

    private static int version(Path file) throws SQLException {
        try (Connection c = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            return Database.number(c, "PRAGMA user_version");
        }
    }

    @Test
    void aFileOfTheFirstVersionIsBroughtUpAndLosesNothing() throws SQLException {
        Path file = first();
        try (Shop shop = Shop.openExisting(file)) {
            assertThat(shop.zone().orElseThrow().getId()).isEqualTo("Europe/Oslo");
            Sensor room = shop.sensor("room").orElseThrow();
            assertThat(room.kind()).isEqualTo(SensorKind.TEMPERATURE);
            assertThat(room.place()).isEqualTo("room");
            assertThat(shop.readings(room).values()).containsExactly(291.65, 291.55);
            assertThat(shop.loads(0, Long.MAX_VALUE)).hasSize(1);
            assertThat(shop.loads(0, Long.MAX_VALUE).get(0).mass()).isEqualTo(6.5);
            assertThat(shop.events(0, Long.MAX_VALUE)).hasSize(1);
            assertThat(shop.rigs()).hasSize(1);
            assertThat(shop.fits()).hasSize(1);
            // and it takes new things as any shop does
            shop.add(new Event(0, START + 60, "note", "after"));
            assertThat(Tally.of(shop)).isEqualTo(new Tally(1, 2, 1, 2, 1, 1));
        }
        assertThat(version(file)).isEqualTo(Migrations.LATEST);
    }

    @Test
    void aScriptThatFailsHalfWayLeavesTheFileAsItWas() throws Exception {
        Path file = folder.resolve("half");
        try (Connection c = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement s = c.createStatement()) {
            // a table of that name stands in the way of the first script, after some of its statements
            s.execute("CREATE TABLE loads (id INTEGER)");
            s.execute("PRAGMA application_id = " + Database.MARK);
        }
        assertThatThrownBy(() -> Shop.open(file)).isInstanceOf(ShopFault.class);
        assertThat(version(file)).isZero();
        try (Connection c = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            assertThat(Database.number(c, "SELECT count(*) FROM sqlite_master WHERE name = 'sensors'"))
                    .isZero();
        }
        assertThat(Files.exists(file)).isTrue();
    }
}
