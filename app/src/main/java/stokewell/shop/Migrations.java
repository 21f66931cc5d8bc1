package stokewell.shop;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/**
 * Brings a shop's file up to what this program writes: the numbered scripts beside this class, each once, in order. The
 * file holds how far it is ({@code user_version}); a script and its number are one change.
 */
final class Migrations {

    /** How many scripts there are. */
    static final int LATEST = 1;

    private Migrations() {}

    static void run(Connection connection, Path file) throws SQLException {
        run(connection, file, LATEST);
    }

    static void run(Connection connection, Path file, int to) throws SQLException {
        int have = Database.number(connection, "PRAGMA user_version");
        if (have > LATEST) {
            throw new ShopFault(
                    file + " was written by a newer Stokewell (version " + have + " of the file; this one knows "
                            + LATEST + ").",
                    "Use the newer program; nothing was touched.");
        }
        if (have >= to) return;
        connection.setAutoCommit(false);
        try (Statement s = connection.createStatement()) {
            // another run may have been quicker
            have = Database.number(connection, "PRAGMA user_version");
            s.execute("PRAGMA application_id = " + Database.MARK);
            for (int next = have + 1; next <= to; next++) {
                for (String sql : script(next)) s.execute(sql);
                s.execute("PRAGMA user_version = " + next);
            }
            connection.commit();
        } catch (SQLException | RuntimeException e) {
            connection.rollback();
            throw e;
        } finally {
            connection.setAutoCommit(true);
        }
    }

    /** The statements of a script: each ends with a semicolon at the end of a line. */
    static List<String> script(int number) {
        String name = String.format("%03d.sql", number);
        try (InputStream in = Migrations.class.getResourceAsStream(name)) {
            if (in == null) throw new IllegalStateException("no script " + name);
            List<String> statements = new ArrayList<>();
            for (String part : new String(in.readAllBytes(), StandardCharsets.UTF_8).split(";\\s*\n")) {
                if (!part.isBlank()) statements.add(part);
            }
            return statements;
        } catch (IOException e) {
            throw new IllegalStateException(name, e);
        }
    }
}
