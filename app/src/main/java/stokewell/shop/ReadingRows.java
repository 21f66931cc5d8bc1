package stokewell.shop;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The readings, a row a day and sensor. */
final class ReadingRows {

    private final Database database;
    private final SensorRows sensors;

    ReadingRows(Database database, SensorRows sensors) {
        this.database = database;
        this.sensors = sensors;
    }

    Readings between(Sensor sensor, long from, long until) {
        return database.ask(c -> {
            Growing all = new Growing();
            DayBlock block = new DayBlock();
            if (until <= Math.max(0, from)) return all.readings();
            try (PreparedStatement s =
                    c.prepareStatement("SELECT slot, body FROM readings WHERE slot BETWEEN ? AND ? ORDER BY slot")) {
                s.setLong(1, Slots.near(sensor.id(), from));
                s.setLong(2, Slots.near(sensor.id(), until - 1));
                try (ResultSet r = s.executeQuery()) {
                    while (r.next()) all.add(block.decode(r.getLong(1), r.getBytes(2)), from, until);
                }
            }
            return all.readings();
        });
    }

    Extent extent(Sensor sensor) {
        return database.ask(c -> {
            try (PreparedStatement s = c.prepareStatement(
                    "SELECT total(count), min(first), max(last) FROM readings WHERE slot BETWEEN ? AND ?")) {
                s.setLong(1, Slots.near(sensor.id(), 0));
                s.setLong(2, Slots.near(sensor.id(), Slots.END));
                try (ResultSet r = s.executeQuery()) {
                    return r.next()
                            ? new Extent((long) r.getDouble(1), r.getLong(2), r.getLong(3))
                            : new Extent(0, 0, 0);
                }
            }
        });
    }

    List<Taken> take(List<Batch> batches, boolean replace) {
        return database.change(c -> {
            List<Taken> taken = new ArrayList<>();
            try (Writing writing = new Writing(c)) {
                for (Batch batch : batches) taken.add(writing.take(sensors.of(c, batch), batch, replace));
            }
            return taken;
        });
    }

    /** Statements and block of one change. */
    private static final class Writing implements AutoCloseable {
        private final PreparedStatement find;
        private final PreparedStatement put;
        private final DayBlock block = new DayBlock();
        private int known;
        private int differed;

        Writing(Connection c) throws SQLException {
            find = c.prepareStatement("SELECT body FROM readings WHERE slot = ?");
            put = c.prepareStatement(
                    "INSERT OR REPLACE INTO readings (slot, first, last, count, body) VALUES (?, ?, ?, ?, ?)");
        }

        Taken take(Sensor sensor, Batch batch, boolean replace) throws SQLException {
            Readings all = batch.readings();
            if (all.size() > 0 && (all.time(0) < 0 || all.time(all.size() - 1) > Slots.END)) {
                throw new ShopFault("A reading before 1970 or after the year 4800 is none.", "Set the logger's clock.");
            }
            known = 0;
            differed = 0;
            long[] times = all.bareTimes();
            double[] values = all.bareValues();
            int from = 0;
            while (from < times.length) {
                long slot = Slots.of(sensor.id(), times[from]);
                int to = endOfDay(times, from, Slots.start(slot) + DayBlock.DAY);
                day(sensor, batch, slot, times, values, from, to, replace);
                from = to;
            }
            int added = times.length - known - differed;
            return new Taken(sensor, added, known, differed, replace ? differed : 0);
        }

        private static int endOfDay(long[] times, int from, long end) {
            int to = Arrays.binarySearch(times, from, (int) Math.min(times.length, from + (long) DayBlock.DAY), end);
            return to < 0 ? -to - 1 : to;
        }

        private void day(
                Sensor sensor, Batch batch, long slot, long[] times, double[] values, int from, int to, boolean replace)
                throws SQLException {
            find.setLong(1, slot);
            byte[] before = null;
            try (ResultSet r = find.executeQuery()) {
                if (r.next()) before = r.getBytes(1);
            }
            if (before == null) {
                put(slot, times, values, from, to, batch);
                return;
            }
            Readings old = block.decode(slot, before);
            Growing merged = merge(old, times, values, from, to, replace);
            if (merged.size() == old.size() && merged.readings().equals(old)) return;
            put(slot, merged.times(), merged.values(), 0, merged.size(), batch);
        }

        /** Both in order of time; counts what was known and what differed. */
        private Growing merge(Readings old, long[] times, double[] values, int from, int to, boolean replace) {
            Growing merged = new Growing();
            int i = 0;
            int k = from;
            while (i < old.size() || k < to) {
                long left = i < old.size() ? old.time(i) : Long.MAX_VALUE;
                long right = k < to ? times[k] : Long.MAX_VALUE;
                if (left < right) {
                    merged.add(left, old.value(i++));
                } else if (right < left) {
                    merged.add(right, values[k++]);
                } else {
                    boolean same = old.value(i) == values[k];
                    if (same) known++;
                    else differed++;
                    merged.add(left, replace ? values[k] : old.value(i));
                    i++;
                    k++;
                }
            }
            return merged;
        }

        private void put(long slot, long[] times, double[] values, int from, int to, Batch batch) throws SQLException {
            put.setLong(1, slot);
            put.setLong(2, times[from]);
            put.setLong(3, times[to - 1]);
            put.setInt(4, to - from);
            put.setBytes(5, block.encode(slot, times, values, from, to, batch.unit()));
            put.executeUpdate();
        }

        @Override
        public void close() throws SQLException {
            find.close();
            put.close();
        }
    }
}
