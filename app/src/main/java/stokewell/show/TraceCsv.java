package stokewell.show;

import java.io.IOException;
import java.io.Writer;
import java.time.LocalDateTime;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import stokewell.file.UnitSystem;
import stokewell.run.Night;
import stokewell.run.Season;
import stokewell.run.Trace;

/**
 * A trace as a table (RFC 4180): local standard time in ISO 8601, then every column of the run with its unit in the header.
 * Where there is no number, nothing stands.
 */
public final class TraceCsv {

    private static final String END = "\r\n";

    private TraceCsv() {}

    /** How a column is written: its unit, empty for none, and the number from SI. */
    private record Column(String name, String unit, DoubleUnaryOperator number, float[] values) {}

    /** Every sample of a night. */
    public static void write(Night night, UnitSystem units, Appendable out) throws IOException {
        write(night.trace(), night.weatherStart(), Measure.plain(units), out);
    }

    /** Every sample of a night, under what forbids a fire on the rig: lines that begin with #, none if nothing does. */
    public static void write(Night night, CardFacts known, UnitSystem units, Appendable out) throws IOException {
        CardFacts facts = known.spoken(units);
        for (String line : Stops.lines(facts.check()))
            out.append(Ascii.of(line)).append(END);
        write(night, units, out);
    }

    /** The same of a season. */
    public static void write(Season season, CardFacts known, UnitSystem units, Appendable out) throws IOException {
        CardFacts facts = known.spoken(units);
        for (String line : Stops.lines(facts.check()))
            out.append(Ascii.of(line)).append(END);
        write(season, units, out);
    }

    /** Every sample of a season. */
    public static void write(Season season, UnitSystem units, Appendable out) throws IOException {
        write(season.trace(), season.weatherStart(), Measure.plain(units), out);
    }

    /** As the run holds them: temperatures in K, flows in kg/s, powers in W; no units in the header. */
    public static void write(Trace trace, LocalDateTime start, Writer out) throws IOException {
        write(trace, start, (Measure) null, out);
        out.flush();
    }

    private static void write(Trace trace, LocalDateTime start, Measure as, Appendable out) throws IOException {
        List<String> names = trace.names();
        Column[] columns = new Column[names.size()];
        out.append("time");
        for (int c = 0; c < columns.length; c++) {
            columns[c] = column(names.get(c), trace.column(names.get(c)), as);
            String unit = columns[c].unit();
            out.append(',').append(field(unit.isEmpty() ? names.get(c) : names.get(c) + " [" + unit + "]"));
        }
        out.append(END);
        for (int i = 0; i < trace.size(); i++) {
            out.append(Clock.iso(start.plusSeconds(Math.round(trace.time(i)))));
            for (Column c : columns) {
                out.append(',');
                double si = c.values()[i];
                if (Double.isFinite(si)) out.append(number(c.number().applyAsDouble(si)));
            }
            out.append(END);
        }
    }

    private static Column column(String name, float[] values, Measure as) {
        if (as == null) return new Column(name, "", si -> si, values);
        if (name.startsWith("minutes to boil ")) return new Column(name, "min", si -> si, values);
        if (name.startsWith("runs ")) return new Column(name, "", si -> si, values);
        if (name.startsWith("power ")) return new Column(name, as.powerUnit(), as::powerNumber, values);
        return switch (name) {
            case "draft" -> new Column(name, as.draftUnit(), as::draftNumber, values);
            case "air", "loop flow" -> new Column(name, as.massFlowUnit(), as::massFlowNumber, values);
            case "bed" -> new Column(name, as.massUnit(), as::massNumber, values);
            case "pressure" -> new Column(name, as.pressureUnit(), as::pressureNumber, values);
            case "header water", "steam lost", "steam in the loop", "let out" ->
                new Column(name, as.massUnit(), as::massNumber, values);
            case "boil margin" -> new Column(name, as.differenceUnit(), as::differenceNumber, values);
            default -> new Column(name, as.scaleUnit(), as::scale, values);
        };
    }

    /** Single precision holds seven digits: about six are written. */
    private static String number(double value) {
        double size = Math.abs(value);
        return Numbers.bare(value, size >= 1000 ? 2 : size >= 1 ? 4 : 7);
    }

    private static String field(String text) {
        boolean plain = true;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == ',' || c == '"' || c == '\n' || c == '\r') plain = false;
        }
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
