package stokewell.shop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/**
 * The one file and the way to it. A change is there whole and on the disk when {@link #change} comes back, or not at all:
 * write-ahead log, and every commit waits for the disk.
 */
final class Database implements AutoCloseable {

    /** Marks the file as a shop's: "Stok". */
    static final int MARK = 0x53746f6b;

    private static final int PATIENCE_MS = 10_000;

    private final Path file;
    private final Connection connection;
    private boolean changing;

    /** Asks the database. */
    interface Question<T> {
        T ask(Connection connection) throws SQLException;
    }

    private Database(Path file, Connection connection) {
        this.file = file;
        this.connection = connection;
    }

    /** Opens the file, or makes it. */
    static Database open(Path file) {
        if (Files.isDirectory(file)) throw new ShopFault(file + " is a folder, not a shop.", "Name a file in it.");
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new ShopFault("There is no folder " + folder + " for the shop.", "Make it first.");
        }
        refuseOthers(file);
        Connection connection = null;
        try {
            connection = connect(file, false);
            int mark = number(connection, "PRAGMA application_id");
            if (mark != MARK && number(connection, "SELECT count(*) FROM sqlite_master") > 0) {
                throw new ShopFault(file + " is a database, but not a shop's.", "Name another file with --shop.");
            }
            Migrations.run(connection, file);
            return new Database(file, connection);
        } catch (SQLException | RuntimeException e) {
            closeQuietly(connection);
            throw e instanceof SQLException s ? fault(file, s) : (RuntimeException) e;
        }
    }

    /** A connection, without a look at what is in the file. */
    static Connection connect(Path file, boolean readOnly) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        config.setBusyTimeout(PATIENCE_MS);
        config.enforceForeignKeys(true);
        if (readOnly) config.setReadOnly(true);
        return config.createConnection("jdbc:sqlite:" + file.toAbsolutePath());
    }

    /** The first bytes say whether it is a database at all, before anything could be written into it. */
    static void refuseOthers(Path file) {
        byte[] right = "SQLite format 3\0".getBytes(java.nio.charset.StandardCharsets.US_ASCII);
        try {
            if (!Files.exists(file) || Files.size(file) == 0) return;
            try (var in = Files.newInputStream(file)) {
                if (java.util.Arrays.equals(in.readNBytes(right.length), right)) return;
            }
        } catch (IOException e) {
            throw new ShopFault(file + " cannot be read: " + e.getMessage() + ".", "Name another file with --shop.", e);
        }
        throw new ShopFault(file + " is not a shop.", "Name another file with --shop.");
    }

    Path file() {
        return file;
    }

    /** Looks. */
    synchronized <T> T ask(Question<T> question) {
        try {
            return question.ask(connection);
        } catch (SQLException e) {
            throw fault(file, e);
        }
    }

    /** Changes: all of it or nothing. A change within a change is part of it. */
    synchronized <T> T change(Question<T> change) {
        if (changing) return ask(change);
        changing = true;
        try {
            connection.setAutoCommit(false);
            try {
                T result = change.ask(connection);
                connection.commit();
                return result;
            } catch (SQLException | RuntimeException | Error e) {
                connection.rollback();
                throw e;
            } finally {
                connection.setAutoCommit(true);
            }
        } catch (SQLException e) {
            throw fault(file, e);
        } finally {
            changing = false;
        }
    }

    static int number(Connection connection, String sql) throws SQLException {
        try (Statement s = connection.createStatement();
                ResultSet r = s.executeQuery(sql)) {
            return r.next() ? r.getInt(1) : 0;
        }
    }

    /** In words what SQLite says. */
    static ShopFault fault(Path file, SQLException e) {
        SQLiteErrorCode code = e instanceof SQLiteException s ? s.getResultCode() : SQLiteErrorCode.UNKNOWN_ERROR;
        int primary = code.code & 0xff;
        if (primary == SQLiteErrorCode.SQLITE_BUSY.code || primary == SQLiteErrorCode.SQLITE_LOCKED.code) {
            return new ShopFault(file + " is being written by another run.", "Wait for it, and try again.", e);
        }
        if (primary == SQLiteErrorCode.SQLITE_FULL.code) {
            return new ShopFault("There is no room on the disk for " + file + ".", "Nothing was changed.", e);
        }
        if (primary == SQLiteErrorCode.SQLITE_READONLY.code || primary == SQLiteErrorCode.SQLITE_CANTOPEN.code) {
            return new ShopFault(file + " may not be opened or written.", "Look who may write it and its folder.", e);
        }
        if (primary == SQLiteErrorCode.SQLITE_CORRUPT.code || primary == SQLiteErrorCode.SQLITE_NOTADB.code) {
            return new ShopFault(
                    file + " is damaged on the disk.", "Restore a backup: ./stokewell shop restore FILE.", e);
        }
        return new ShopFault(file + ": " + e.getMessage() + ".", "Nothing was changed.", e);
    }

    private static void closeQuietly(Connection connection) {
        try {
            if (connection != null) connection.close();
        } catch (SQLException e) {
            // the first fault is the one to tell
        }
    }

    @Override
    public synchronized void close() {
        try {
            connection.close();
        } catch (SQLException e) {
            throw fault(file, e);
        }
    }
}
