package stokewell.shop;

import java.util.Arrays;
import java.util.zip.CRC32C;
import stokewell.file.SensorUnit;

/**
 * A day of one sensor in few bytes, and back to the last bit.
 *
 * <p>Loggers write few decimals at even steps. So times are kept as runs of equal steps, and values as whole numbers of the
 * last decimal in the unit they were written in, each as the difference to the one before. Where that would not give
 * every value back exactly, the block holds plain doubles. A 5-minute day takes about 0.4 kB.
 *
 * <p>Layout: form, count, second of the day of the first; pairs of run length and step; then doubles (form 0), or factor and
 * zero of the unit, decimals, first number and differences (form 1). Numbers are in groups of seven bits, lowest first;
 * signed ones zigzag. The last four bytes are the CRC-32C of the slot and all before.
 */
final class DayBlock {

    static final int DAY = 86400;

    private static final int PLAIN = 0;
    private static final int DECIMAL = 1;
    private static final int MOST_DECIMALS = 9;
    private static final double[] TEN = {1, 10, 100, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9};
    /** Above it, a double does not hold every whole number. */
    private static final double WHOLE = 1L << 53;

    private byte[] out = new byte[1024];
    private int n;
    private final CRC32C crc = new CRC32C();
    private int decimals;

    /** The block of the readings from one place to before another, all of the slot's day. */
    byte[] encode(long slot, long[] times, double[] values, int from, int to, SensorUnit unit) {
        n = 0;
        boolean decimal = decimal(values, from, to, unit);
        put(decimal ? DECIMAL : PLAIN);
        whole(to - from);
        whole(times[from] % DAY);
        steps(times, from, to);
        if (decimal) decimals(values, from, to, unit);
        else for (int i = from; i < to; i++) eight(Double.doubleToRawLongBits(values[i]));
        int sum = sum(slot, out, n);
        for (int k = 0; k < 4; k++) put(sum >>> 8 * k);
        return Arrays.copyOf(out, n);
    }

    private void steps(long[] times, int from, int to) {
        int i = from + 1;
        while (i < to) {
            long step = times[i] - times[i - 1];
            int end = i + 1;
            while (end < to && times[end] - times[end - 1] == step) end++;
            whole(end - i);
            whole(step);
            i = end;
        }
    }

    /** Whether few decimals of the unit give every value back; finds how many. The last block's are tried first. */
    private boolean decimal(double[] values, int from, int to, SensorUnit unit) {
        if (exact(values, from, to, unit, decimals)
                && (decimals == 0 || !exact(values, from, to, unit, decimals - 1))) {
            return true;
        }
        for (int d = 0; d <= MOST_DECIMALS; d++) {
            if (exact(values, from, to, unit, d)) {
                decimals = d;
                return true;
            }
        }
        return false;
    }

    private static boolean exact(double[] values, int from, int to, SensorUnit unit, int d) {
        for (int i = from; i < to; i++) {
            double m = Math.rint(unit.fromSi(values[i]) * TEN[d]);
            // the bits, not the numbers: -0 is another value than 0
            if (!(Math.abs(m) < WHOLE)
                    || Double.doubleToRawLongBits(unit.toSi((long) m / TEN[d]))
                            != Double.doubleToRawLongBits(values[i])) {
                return false;
            }
        }
        return true;
    }

    private void decimals(double[] values, int from, int to, SensorUnit unit) {
        eight(Double.doubleToRawLongBits(unit.factor()));
        eight(Double.doubleToRawLongBits(unit.zero()));
        put(decimals);
        long last = 0;
        for (int i = from; i < to; i++) {
            long m = (long) Math.rint(unit.fromSi(values[i]) * TEN[decimals]);
            signed(m - last);
            last = m;
        }
    }

    private void put(int b) {
        if (n == out.length) out = Arrays.copyOf(out, 2 * n);
        out[n++] = (byte) b;
    }

    private void whole(long v) {
        while ((v & ~0x7fL) != 0) {
            put((int) (v & 0x7f | 0x80));
            v >>>= 7;
        }
        put((int) v);
    }

    private void signed(long v) {
        whole(v << 1 ^ v >> 63);
    }

    private void eight(long v) {
        for (int k = 0; k < 8; k++) put((int) (v >>> 8 * k));
    }

    private int sum(long slot, byte[] bytes, int length) {
        crc.reset();
        for (int k = 0; k < 8; k++) crc.update((int) (slot >>> 8 * k) & 0xff);
        crc.update(bytes, 0, length);
        return (int) crc.getValue();
    }

    /** The readings of a block. Throws where it is not what was written. */
    Readings decode(long slot, byte[] block) {
        try {
            return new Reading(block, slot).readings();
        } catch (IndexOutOfBoundsException | IllegalArgumentException e) {
            throw damaged(slot, e);
        }
    }

    private static ShopFault damaged(long slot, Throwable cause) {
        return new ShopFault(
                "The readings of sensor " + Slots.sensor(slot) + " on " + Slots.day(slot) + " are damaged on the disk.",
                "Restore a backup: ./stokewell shop restore FILE.",
                cause);
    }

    /** A block being read. */
    private final class Reading {
        private final byte[] in;
        private final long slot;
        private int at;

        Reading(byte[] in, long slot) {
            this.in = in;
            this.slot = slot;
        }

        Readings readings() {
            int end = in.length - 4;
            int told = 0;
            for (int k = 0; k < 4; k++) told |= (in[end + k] & 0xff) << 8 * k;
            if (sum(slot, in, end) != told) throw new IllegalArgumentException("checksum");
            int form = in[at++];
            int count = (int) whole();
            if (count < 1 || count > DAY) throw new IllegalArgumentException(count + " readings");
            long[] times = times(count);
            double[] values = new double[count];
            if (form == PLAIN) for (int i = 0; i < count; i++) values[i] = Double.longBitsToDouble(eight());
            else if (form == DECIMAL) decimals(values);
            else throw new IllegalArgumentException("form " + form);
            return new Readings(times, values);
        }

        private long[] times(int count) {
            long[] times = new long[count];
            times[0] = Slots.start(slot) + whole();
            int i = 1;
            while (i < count) {
                int run = (int) whole();
                long step = whole();
                for (int k = 0; k < run; k++, i++) times[i] = times[i - 1] + step;
            }
            return times;
        }

        private void decimals(double[] values) {
            double factor = Double.longBitsToDouble(eight());
            double zero = Double.longBitsToDouble(eight());
            double ten = TEN[in[at++]];
            long m = 0;
            for (int i = 0; i < values.length; i++) {
                long v = whole();
                m += v >>> 1 ^ -(v & 1);
                values[i] = m / ten * factor + zero;
            }
        }

        private long whole() {
            long v = 0;
            for (int shift = 0; ; shift += 7) {
                byte b = in[at++];
                v |= (long) (b & 0x7f) << shift;
                if (b >= 0) return v;
            }
        }

        private long eight() {
            long v = 0;
            for (int k = 0; k < 8; k++) v |= (long) (in[at++] & 0xff) << 8 * k;
            return v;
        }
    }
}
