package stokewell.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.distribution.continuous.BetaDistribution;
import stokewell.fit.Watch;

/** Tables of what {@link FitFaults} wrote: alarms without a fault, delays, and what was named. Arguments: its files. */
public final class FaultTally {

    private static final double FROM = Double.parseDouble(System.getProperty("from", Double.toString(Watch.THRESHOLD)));

    /** A shop: the first look at which a change was told, or the last one; told is that look, -1 for none. */
    private record Row(String fault, int most, int days, int told, double strength, boolean near, List<String> named) {

        static Row of(String line) {
            String[] c = line.split(",");
            Row row = null;
            for (int i = 3; i < c.length; i++) {
                String[] look = c[i].split(";", -1);
                if (look.length < 5) return null;
                int after = Integer.parseInt(look[1]);
                double strength = Double.parseDouble(look[2]);
                boolean told = strength >= FROM && !look[4].isEmpty();
                List<String> named = told ? List.of(look[4].split(" or ")) : List.of();
                row = new Row(
                        c[1],
                        after,
                        Integer.parseInt(look[0]),
                        told ? after : -1,
                        strength,
                        look[3].equals("near"),
                        named);
                if (told) break;
            }
            return row;
        }

        String kind() {
            return fault.split("=")[0];
        }

        /** As the causes of a fit are called. */
        String right() {
            return kind().equals("sensor") ? "store top sensor loose" : kind();
        }
    }

    private FaultTally() {}

    public static void main(String[] args) throws IOException {
        List<Row> rows = new ArrayList<>();
        for (String file : args) {
            for (String line : Files.readAllLines(Path.of(file))) {
                Row row = line.startsWith("#") ? null : Row.of(line);
                if (row != null) rows.add(row);
            }
        }
        alarms(rows.stream().filter(r -> r.kind().equals("none")).toList());
        Map<String, List<Row>> byFault = new TreeMap<>();
        for (Row r : rows) {
            if (!r.kind().equals("none"))
                byFault.computeIfAbsent(r.fault(), k -> new ArrayList<>()).add(r);
        }
        System.out.println("| fault | shops | told | half of them after, days | nine tenths after, days | day right "
                + "| named alone | among others | wrong |");
        byFault.forEach(FaultTally::delays);
        Map<String, Map<String, Integer>> confusion = new TreeMap<>();
        for (Row r : rows) {
            if (r.told() < 0 || r.kind().equals("none")) continue;
            confusion
                    .computeIfAbsent(r.right(), k -> new TreeMap<>())
                    .merge(r.named().get(0), 1, Integer::sum);
        }
        System.out.println("likeliest named, by what it was:");
        confusion.forEach((k, v) -> System.out.println("  " + k + ": " + v));
    }

    private static void alarms(List<Row> none) {
        if (none.isEmpty()) return;
        double days = none.stream().mapToDouble(Row::days).average().orElseThrow();
        int told = (int) none.stream().filter(r -> r.told() >= 0).count();
        double[] ends = binomial(told, none.size());
        System.out.printf(
                Locale.ROOT,
                "nothing wrong: told %d of %d shops of %.0f days on average: %.1f %% (90 %% interval %.1f to %.1f)%n",
                told,
                none.size(),
                days,
                100.0 * told / none.size(),
                100 * ends[0],
                100 * ends[1]);
        System.out.println("  strengths "
                + none.stream()
                        .map(Row::strength)
                        .sorted()
                        .map(x -> String.format(Locale.ROOT, "%.0f", x))
                        .toList());
    }

    /** Clopper and Pearson, Biometrika 26 (1934) 404: the exact interval of a share, 90 %. */
    static double[] binomial(int k, int n) {
        double low = k == 0 ? 0 : new BetaDistribution(k, n - k + 1).inverseCumulativeProbability(0.05);
        double high = k == n ? 1 : new BetaDistribution(k + 1, n - k).inverseCumulativeProbability(0.95);
        return new double[] {low, high};
    }

    private static void delays(String fault, List<Row> rows) {
        List<Row> told = rows.stream().filter(r -> r.told() >= 0).toList();
        int alone = 0;
        int among = 0;
        for (Row r : told) {
            if (!r.named().contains(r.right())) continue;
            if (r.named().size() == 1) alone++;
            else among++;
        }
        System.out.printf(
                Locale.ROOT,
                "| %s | %d | %d | %s | %s | %d | %d | %d | %d |%n",
                fault,
                rows.size(),
                told.size(),
                delay(rows, 0.5),
                delay(rows, 0.9),
                told.stream().filter(Row::near).count(),
                alone,
                among,
                told.size() - alone - among);
    }

    /** The look by which such a share of all shops is told. */
    private static String delay(List<Row> rows, double share) {
        int[] told = rows.stream()
                .filter(r -> r.told() >= 0)
                .mapToInt(Row::told)
                .sorted()
                .toArray();
        int needed = (int) Math.ceil(share * rows.size());
        return told.length >= needed
                ? Integer.toString(told[needed - 1])
                : "over " + rows.stream().mapToInt(Row::most).max().orElseThrow();
    }
}
