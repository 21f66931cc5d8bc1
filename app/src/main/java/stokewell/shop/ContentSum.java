package stokewell.shop;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32C;

/**
 * A sum over every table's form and every value of every row, kept in a copy: SQLite's own check finds a broken page, not a
 * letter or a digit that has become another. The readings' blocks have sums of their own as well.
 */
final class ContentSum {

    private static final String KEY = "sum of the copy";

    private ContentSum() {}

    /** Writes the sum into a copy. */
    static void put(Connection c) throws SQLException {
        String sum = Long.toHexString(of(c));
        try (PreparedStatement s = c.prepareStatement("INSERT OR REPLACE INTO about (key, value) VALUES (?, ?)")) {
            s.setString(1, KEY);
            s.setString(2, sum);
            s.executeUpdate();
        }
    }

    /**
     * Whether a file's tables and rows are those that were summed; one without a sum is taken as it is. To be asked before the
     * file is opened as a shop, which may bring it up to a newer version.
     */
    static boolean isRight(Path file) {
        try (Connection c = Database.connect(file, false)) {
            return isRight(c);
        } catch (SQLException broken) {
            return false;
        }
    }

    private static boolean isRight(Connection c) throws SQLException {
        try (PreparedStatement s = c.prepareStatement("SELECT value FROM about WHERE key = ?")) {
            s.setString(1, KEY);
            try (ResultSet r = s.executeQuery()) {
                return !r.next() || Long.toHexString(of(c)).equals(r.getString(1));
            }
        }
    }

    /** Takes the sum out again: a shop in use changes. */
    static void remove(Connection c) throws SQLException {
        try (PreparedStatement s = c.prepareStatement("DELETE FROM about WHERE key = ?")) {
            s.setString(1, KEY);
            s.executeUpdate();
        }
    }

    private static long of(Connection c) throws SQLException {
        CRC32C sum = new CRC32C();
        add(sum, Database.number(c, "PRAGMA user_version"));
        try (Statement s = c.createStatement();
                ResultSet r = s.executeQuery("SELECT type, name, tbl_name, sql FROM sqlite_master ORDER BY name")) {
            while (r.next()) for (int k = 1; k <= 4; k++) add(sum, r.getObject(k));
        }
        for (String table : tables(c)) {
            add(sum, table);
            try (Statement s = c.createStatement();
                    ResultSet r = s.executeQuery("SELECT * FROM \"" + table + "\" ORDER BY 1")) {
                int columns = r.getMetaData().getColumnCount();
                while (r.next()) {
                    if (table.equals("about") && KEY.equals(r.getString(1))) continue;
                    for (int k = 1; k <= columns; k++) add(sum, r.getObject(k));
                }
            }
        }
        return sum.getValue();
    }

    private static List<String> tables(Connection c) throws SQLException {
        List<String> names = new ArrayList<>();
        try (Statement s = c.createStatement();
                ResultSet r = s.executeQuery(
                        "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name")) {
            while (r.next()) names.add(r.getString(1));
        }
        return names;
    }

    /** Kind, length and bytes, so that no two rows run into each other. */
    private static void add(CRC32C sum, Object value) {
        byte[] bytes = value instanceof byte[] b ? b : String.valueOf(value).getBytes(StandardCharsets.UTF_8);
        sum.update(value == null ? 0 : value instanceof byte[] ? 1 : value instanceof Number ? 2 : 3);
        sum.update(ByteBuffer.allocate(4).putInt(bytes.length).array());
        sum.update(bytes, 0, bytes.length);
    }
}
