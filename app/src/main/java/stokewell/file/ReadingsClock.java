package stokewell.file;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.List;

/**
 * Turns the wall clock of a log into moments.
 *
 * <p>In spring an hour of the wall clock does not exist; a log that has it comes from a clock that does not shift, and is
 * refused. In autumn an hour comes twice. If the log goes back there, its clock did shift: the first pass is summer time,
 * the second standard time. If it has the hour once, the side on which it joins the rest decides; if it joins on both
 * sides, an hour of the night is missing in it: the clock does not shift, and the log is refused.
 */
final class ReadingsClock {

    private final String file;
    private final ZoneId zone;
    private final ZoneRules rules;
    private final List<String> told;

    /** Wall clock times in this span have one offset, so that most need no look at the rules. */
    private long plainFrom = Long.MAX_VALUE;

    private long plainUntil = Long.MIN_VALUE;
    private int plainOffset;

    ReadingsClock(String file, ZoneId zone, List<String> told) {
        this.file = file;
        this.zone = zone;
        this.rules = zone.getRules();
        this.told = told;
    }

    /** s since 1970 of each row; rows with an offset of their own keep it. */
    long[] moments(long[] local, int[] offset, int[] row, int n) {
        long[] moments = new long[n];
        long step = usualStep(local, n);
        int i = 0;
        while (i < n) {
            if (offset[i] != ReadingsStamp.NONE) {
                moments[i] = local[i] - offset[i];
                i++;
                continue;
            }
            ZoneOffsetTransition change = special(local[i]);
            if (change == null) {
                moments[i] = local[i] - plainOffset;
                i++;
            } else if (change.isGap()) {
                throw new ReadingsFault(
                        file,
                        row[i],
                        wall(local[i]) + " does not exist in " + zone + ": the clocks go forward there",
                        "If the logger's clock does not shift, say its offset: --zone "
                                + change.getOffsetBefore().getId());
            } else {
                i = twice(change, local, offset, row, i, n, step, moments);
            }
        }
        return moments;
    }

    /** The hour that comes twice, from its first row here. Returns where it ends. */
    private int twice(
            ZoneOffsetTransition change,
            long[] local,
            int[] offset,
            int[] row,
            int from,
            int n,
            long step,
            long[] out) {
        long begin = change.getDateTimeAfter().toEpochSecond(ZoneOffset.UTC);
        long end = change.getDateTimeBefore().toEpochSecond(ZoneOffset.UTC);
        int summer = change.getOffsetBefore().getTotalSeconds();
        int winter = change.getOffsetAfter().getTotalSeconds();
        int to = from;
        int second = -1;
        while (to < n && offset[to] == ReadingsStamp.NONE && local[to] >= begin && local[to] < end) {
            if (second < 0 && to > from && local[to] <= local[to - 1]) second = to;
            to++;
        }
        if (second < 0) {
            boolean joinsBefore =
                    from > 0 && local[from] - local[from - 1] <= 1.8 * step && local[from] > local[from - 1];
            boolean joinsAfter = to < n && local[to] - local[to - 1] <= 1.8 * step;
            if (joinsBefore && joinsAfter && step <= 3600) {
                throw new ReadingsFault(
                        file,
                        row[from],
                        "the hour from " + wall(begin) + " comes twice in " + zone + ", but stands here once",
                        "The logger's clock does not shift: say its offset, --zone "
                                + change.getOffsetAfter().getId() + " or --zone "
                                + change.getOffsetBefore().getId());
            }
            second = joinsBefore ? to : from;
            String kind = joinsBefore ? "summer" : "standard";
            told.add("row " + row[from] + ": the hour from " + wall(begin) + " comes twice; read as " + kind + " time");
        } else {
            told.add("row " + row[second] + ": the clock goes back at the end of summer time; from here standard time");
        }
        for (int i = from; i < to; i++) out[i] = local[i] - (i < second ? summer : winter);
        return to;
    }

    /** The change of the clocks in which a wall time falls, or null with {@link #plainOffset} set. */
    private ZoneOffsetTransition special(long local) {
        if (local >= plainFrom && local < plainUntil) return null;
        LocalDateTime wall = LocalDateTime.ofEpochSecond(local, 0, ZoneOffset.UTC);
        ZoneOffsetTransition change = rules.getTransition(wall);
        if (change != null) return change;
        ZoneOffset now = rules.getOffset(wall);
        plainOffset = now.getTotalSeconds();
        Instant instant = Instant.ofEpochSecond(local - plainOffset);
        ZoneOffsetTransition before = rules.previousTransition(instant.plusSeconds(1));
        ZoneOffsetTransition after = rules.nextTransition(instant);
        plainFrom = before == null ? Long.MIN_VALUE : later(before);
        plainUntil = after == null ? Long.MAX_VALUE : earlier(after);
        return null;
    }

    private static long later(ZoneOffsetTransition change) {
        return Math.max(
                change.getDateTimeBefore().toEpochSecond(ZoneOffset.UTC),
                change.getDateTimeAfter().toEpochSecond(ZoneOffset.UTC));
    }

    private static long earlier(ZoneOffsetTransition change) {
        return Math.min(
                change.getDateTimeBefore().toEpochSecond(ZoneOffset.UTC),
                change.getDateTimeAfter().toEpochSecond(ZoneOffset.UTC));
    }

    /** The median of the steps forward, of evenly chosen rows. */
    private static long usualStep(long[] local, int n) {
        int many = Math.min(n - 1, 20_000);
        if (many < 1) return 0;
        long[] steps = new long[many];
        int k = 0;
        for (int s = 0; s < many; s++) {
            int i = (int) ((long) s * (n - 1) / many);
            if (local[i + 1] > local[i]) steps[k++] = local[i + 1] - local[i];
        }
        if (k == 0) return 0;
        java.util.Arrays.sort(steps, 0, k);
        return steps[k / 2];
    }

    /** A wall time as people write it. */
    static String wall(long local) {
        String text = LocalDateTime.ofEpochSecond(local, 0, ZoneOffset.UTC).toString();
        return text.replace('T', ' ');
    }
}
