package stokewell.cli;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stokewell.file.ReadingsSeries;
import stokewell.file.ReadingsSeries.Jump;
import stokewell.file.ReadingsSeries.Tale;
import stokewell.shop.Doubts;
import stokewell.shop.Import;
import stokewell.shop.Taken;

/** What an import did, and what it found, as text. */
final class ReadingsVerbPage {

    /** Of many alike, as many are told one by one. */
    private static final int FEW = 3;

    private ReadingsVerbPage() {}

    static String of(Import done, ZoneId zone) {
        StringBuilder b = new StringBuilder();
        long readings = 0;
        long added = 0;
        for (Import.Line line : done.lines()) {
            readings += line.series().size();
            added += line.taken().added();
        }
        b.append(done.file().name()).append(": ");
        b.append(count(done.lines().size(), "sensor"))
                .append(", ")
                .append(count(readings, "reading"))
                .append(", ");
        b.append(added == 0 ? "none new" : added == readings ? "all new" : added + " new")
                .append(".\n");
        for (String told : done.file().told()) CheckVerbPage.wrap(b, "  ", told + ".");
        int wide = 6;
        for (Import.Line line : done.lines())
            wide = Math.max(wide, Math.min(32, line.series().name().length()));
        String form = "%-" + wide + "s %9s %9s  %-16s  %-16s  %-7s %5s%n";
        b.append(String.format(Locale.ROOT, form, "sensor", "readings", "new", "first", "last", "every", "gaps"));
        for (Import.Line line : done.lines()) line(b, form, wide, line, zone);
        for (Import.Line line : done.lines()) {
            for (String what : found(line, zone))
                CheckVerbPage.wrap(b, "  - ", line.series().name() + ": " + what);
        }
        return b.toString();
    }

    private static void line(StringBuilder b, String form, int wide, Import.Line line, ZoneId zone) {
        ReadingsSeries s = line.series();
        String name = clean(s.name());
        int n = s.size();
        b.append(String.format(
                Locale.ROOT,
                form,
                name.length() > wide ? name.substring(0, wide - 3) + "..." : name,
                n,
                line.taken().added(),
                n == 0 ? "-" : ShopChoice.wall(s.times()[0], zone),
                n == 0 ? "-" : ShopChoice.wall(s.times()[n - 1], zone),
                line.doubts().steady() ? span(line.doubts().step()) : "change",
                line.doubts().gaps().size()));
    }

    /** Everything that is to be said of one sensor, each with what is done about it. */
    private static List<String> found(Import.Line line, ZoneId zone) {
        List<String> found = new ArrayList<>();
        ReadingsSeries s = line.series();
        Tale t = s.tale();
        Taken taken = line.taken();
        if (taken.differed() > 0) {
            found.add(count(taken.differed(), "reading") + " at times for which the shop has another value: "
                    + (taken.replaced() > 0 ? "the file's counts." : "the shop's stands; --replace takes the file's."));
        }
        if (t.missing() > 0) found.add(count(t.missing(), "row") + " without a number.");
        if (t.twice() > 0) found.add(count(t.twice(), "reading") + " more than once, kept once.");
        if (t.differing() > 0) {
            found.add(count(t.differing(), "reading") + " at a time that stands there with another value, first in row "
                    + t.differRow() + ": the first value stands.");
        }
        if (t.impossible() > 0) {
            found.add(count(t.impossible(), "number") + " that cannot be a "
                    + s.unit().kind().word() + ", first "
                    + bare(t.wrong())
                    + (s.unit().symbol().isEmpty() ? "" : " " + s.unit().symbol()) + " in row "
                    + t.wrongRow() + ": left out.");
        }
        if (t.unset() > 0) {
            found.add(count(t.unset(), "row") + " with a time before 2000 or in the future, first row " + t.unsetRow()
                    + ": the clock was not set; left out.");
        }
        for (Jump j : t.jumps().subList(0, Math.min(FEW, t.jumps().size()))) {
            found.add("row " + j.row() + " goes back from " + ShopChoice.wall(j.from(), zone) + " to "
                    + ShopChoice.wall(j.to(), zone) + (hour(j) ? " (an hour: does the clock shift? --zone)" : "")
                    + ": put in order of time.");
        }
        if (t.jumps().size() > FEW) found.add((t.jumps().size() - FEW) + " more such rows.");
        doubts(found, line, zone);
        return found;
    }

    private static boolean hour(Jump j) {
        long back = j.from() - j.to();
        return back >= 2700 && back <= 3600;
    }

    private static void doubts(List<String> found, Import.Line line, ZoneId zone) {
        Doubts d = line.doubts();
        ReadingsSeries s = line.series();
        List<Doubts.Stretch> gaps = new ArrayList<>(d.gaps());
        gaps.sort((a, c) -> Long.compare(c.seconds(), a.seconds()));
        if (!gaps.isEmpty()) {
            Doubts.Stretch g = gaps.get(0);
            found.add((gaps.size() == 1 ? "a gap of " : "gaps, the longest of ") + span(g.seconds()) + " from "
                    + ShopChoice.wall(s.times()[g.first()], zone) + ": nothing is put in.");
        }
        if (!d.spikes().isEmpty()) {
            Doubts.Stretch p = d.spikes().get(0);
            found.add(count(d.spikes().size(), "spike") + ", first "
                    + bare(s.unit().fromSi(s.values()[p.first()]))
                    + " " + s.unit().symbol() + " at " + ShopChoice.wall(s.times()[p.first()], zone)
                    + ": kept, but not used.");
        }
        for (Doubts.Stretch p : d.stuck().subList(0, Math.min(FEW, d.stuck().size()))) {
            found.add("stuck at " + bare(s.unit().fromSi(s.values()[p.first()])) + " "
                    + s.unit().symbol() + " for "
                    + span(p.seconds()) + " from " + ShopChoice.wall(s.times()[p.first()], zone)
                    + ": kept, but not used.");
        }
        if (d.stuck().size() > FEW) found.add("stuck " + (d.stuck().size() - FEW) + " more times.");
    }

    /** Time in words. */
    static String span(long seconds) {
        if (seconds < 120) return seconds + " s";
        if (seconds < 7200) return Math.round(seconds / 60.0) + " min";
        if (seconds < 2 * 86400) return bare(Math.round(seconds / 360.0) / 10.0) + " h";
        return bare(Math.round(seconds / 8640.0) / 10.0) + " days";
    }

    static String count(long n, String thing) {
        return n + " " + thing + (n == 1 ? "" : "s");
    }

    /** A number with as many decimals as it has, at most three. */
    static String bare(double value) {
        double round = Math.rint(value * 1000) / 1000;
        return round == Math.rint(round) && Math.abs(round) < 1e15
                ? Long.toString((long) round)
                : Double.toString(round);
    }

    /** A name that cannot steer a terminal. */
    static String clean(String name) {
        return name.replaceAll("\\p{Cntrl}", " ");
    }
}
