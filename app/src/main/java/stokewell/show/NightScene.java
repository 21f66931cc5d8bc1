package stokewell.show;

import java.io.Writer;
import java.util.List;
import stokewell.rig.Rig;
import stokewell.run.Event;
import stokewell.run.Night;
import stokewell.run.Trace;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;

/**
 * A night as the page draws it: the rig with its sizes, the course of every reading at even times, what was switched and
 * loaded, where the heat went, and the numbers that lead. Temperatures in °C, differences in K, heat in kWh, power in W,
 * mass in kg, flow in kg/s, times in s from the start of the night; null where there is no number.
 */
public final class NightScene {

    /** Samples that a screen shows at most. */
    private static final int SAMPLES = 300;

    private final Rig rig;
    private final Night night;
    private final JsonGenerator json;
    private final boolean drawnOnly;

    private NightScene(Rig rig, Night night, JsonGenerator json, boolean drawnOnly) {
        this.drawnOnly = drawnOnly;
        this.rig = rig;
        this.night = night;
        this.json = json;
    }

    /** Writes, and leaves the writer open. */
    public static void write(Rig rig, Night night, Writer out) {
        write(rig, night, out, false);
    }

    /** Writes only what the page draws, for a hand that waits. */
    public static void drawn(Rig rig, Night night, Writer out) {
        write(rig, night, out, true);
    }

    private static void write(Rig rig, Night night, Writer out, boolean drawnOnly) {
        try (JsonGenerator json = JsonFactory.builder()
                .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
                .build()
                .createGenerator(ObjectWriteContext.empty(), out)) {
            new NightScene(rig, night, json, drawnOnly).all();
        }
    }

    private void all() {
        json.writeStartObject();
        json.writeName("rig");
        RigTree.write(rig, json);
        json.writeStringProperty("from", Clock.iso(night.at(night.from())));
        json.writeStringProperty("until", Clock.iso(night.at(night.until())));
        json.writeStringProperty("start", night.start());
        numbers();
        pickups();
        series();
        events();
        ledger();
        json.writeEndObject();
    }

    private void numbers() {
        Night.Morning m = night.morning();
        Verdict verdict = Verdict.of(night);
        json.writeObjectPropertyStart("numbers");
        json.writeBooleanProperty("carries", verdict.carries());
        seconds("below", Double.isInfinite(verdict.below()) ? night.from() : verdict.below());
        number("missing", verdict.missing() / 3.6e6, 100);
        seconds("morningTime", m.time());
        celsius("morningRoom", m.room());
        celsius("morningStore", m.storeMean());
        celsius("morningTop", m.storeTop());
        seconds("lowestTime", night.lowestRoom().time());
        celsius("lowestRoom", night.lowestRoom().room());
        celsius("limit", night.limit());
        number("hoursAbove", night.hoursAbove(), 100);
        number("boilMargin", night.boil().margin(), 100);
        seconds("boilTime", night.boil().time());
        json.writeStringProperty("boilWhere", night.boil().where());
        number("boilingMinutes", night.boilingMinutes(), 10);
        number("steam", night.steam(), 1000);
        number("header", night.headerLeft(), 10);
        number("wood", night.wood(), 100);
        json.writeNumberProperty("loads", night.loads());
        number("waterShare", night.waterShare(), 1000);
        number("hottestBody", night.hottestBody() - 273.15, 10);
        number("flueBelowDew", night.flueBelowDew(), 1000);
        number("millis", night.solveMillis(), 10);
        number("residual", night.ledger().relativeResidual(), 1e18);
        charge();
        json.writeEndObject();
    }

    private void charge() {
        Night.Charge c = night.charge();
        if (c == null) return;
        celsius("full", c.full());
        number("roomLeft", c.roomLeft() / 3.6e6, 100);
        number("coming", c.coming() / 3.6e6, 100);
    }

    private void pickups() {
        json.writeArrayPropertyStart("toBoil");
        for (Night.ToBoil b : night.minutesToBoil()) {
            json.writeStartObject();
            json.writeStringProperty("pickup", b.pickup());
            number("minutes", b.minutes(), 100);
            seconds("time", b.time());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void series() {
        Trace trace = night.trace();
        int stride = Math.max(1, (int) Math.ceil(trace.size() / (double) SAMPLES));
        json.writeObjectPropertyStart("series");
        json.writeNumberProperty("step", trace.step() * stride);
        json.writeNumberProperty("size", (trace.size() + stride - 1) / stride);
        json.writeObjectPropertyStart("of");
        for (String name : trace.names()) {
            if (!drawnOnly || isDrawn(name)) column(name, trace.column(name), stride);
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    /** Powers that the page draws as curves; of the other columns it leaves out what stands in the numbers too. */
    private static final List<String> POWERS = List.of(
            "power heat released",
            "power fire to water",
            "power stove to room",
            "power store to room",
            "power store's heat to room");

    private static boolean isDrawn(String name) {
        if (name.startsWith("power ")) return POWERS.contains(name);
        return !startsWithOne(name, List.of("runs ", "pressure", "header", "steam", "let out", "air"));
    }

    private void column(String name, float[] values, int stride) {
        boolean kelvin = !kept(name);
        boolean mean = name.startsWith("power ");
        double grain = kelvin || mean ? 10 : 10_000;
        if (name.equals("boil margin") || name.startsWith("minutes")) grain = 100;
        json.writeArrayPropertyStart(name);
        for (int i = 0; i < values.length; i += stride) {
            double v = mean ? mean(values, i, stride) : values[i];
            value(kelvin ? v - 273.15 : v, grain);
        }
        json.writeEndArray();
    }

    /** Whether a column is no temperature. */
    private static boolean kept(String name) {
        return switch (name) {
            case "draft", "air", "bed", "boil margin" -> true;
            default -> name.contains("flow") || startsWithOne(name, List.of("minutes", "runs ", "power "));
        };
    }

    private static boolean startsWithOne(String name, List<String> beginnings) {
        return beginnings.stream().anyMatch(name::startsWith);
    }

    private static double mean(float[] values, int from, int count) {
        double sum = 0;
        int until = Math.min(values.length, from + count);
        for (int i = from; i < until; i++) sum += values[i];
        return sum / (until - from);
    }

    private void events() {
        json.writeArrayPropertyStart("loads");
        for (Event e : night.events()) {
            boolean laid = e instanceof Event.Loaded;
            boolean warm = e instanceof Event.RoomWarm;
            if (!laid && !warm && !(e instanceof Event.Skipped)) continue;
            json.writeStartObject();
            seconds("time", e.time());
            number("mass", e instanceof Event.Loaded l ? l.mass() : 0, 100);
            json.writeBooleanProperty("skipped", !laid);
            if (!laid) json.writeStringProperty("because", warm ? "room" : "store");
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayPropertyStart("boilings");
        for (Event e : night.events()) {
            if (!(e instanceof Event.BoilingBegan b)) continue;
            json.writeStartObject();
            seconds("time", b.time());
            json.writeStringProperty("where", b.where());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayPropertyStart("drives");
        for (Night.Drive d : night.drives()) drive(d);
        json.writeEndArray();
    }

    private void drive(Night.Drive d) {
        json.writeStartObject();
        json.writeStringProperty("name", d.name());
        json.writeNumberProperty("starts", d.starts());
        number("hours", d.hours(), 100);
        json.writeArrayPropertyStart("spells");
        for (Running.Spell s : Running.spells(night, d.name())) {
            json.writeStartArray();
            value(s.from() - night.from(), 1);
            value(s.until() - night.from(), 1);
            json.writeEndArray();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void ledger() {
        HeatBook book = new HeatBook(night.ledger());
        json.writeObjectPropertyStart("ledger");
        number("total", book.total() / 3.6e6, 1000);
        flows("in", book.in());
        flows("out", book.out());
        json.writeObjectPropertyStart("meters");
        for (String name : night.ledger().meters().keySet())
            number(name, night.ledger().meter(name) / 3.6e6, 1000);
        json.writeEndObject();
        json.writeEndObject();
    }

    private void flows(String key, List<HeatBook.Flow> flows) {
        json.writeArrayPropertyStart(key);
        for (HeatBook.Flow f : flows) {
            json.writeStartObject();
            json.writeStringProperty("name", f.name());
            number("kWh", f.heat() / 3.6e6, 1000);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void seconds(String key, double time) {
        number(key, time - night.from(), 1);
    }

    private void celsius(String key, double kelvin) {
        number(key, kelvin - 273.15, 100);
    }

    private void number(String key, double value, double grain) {
        json.writeName(key);
        value(value, grain);
    }

    /** @param grain a power of ten: as many steps to one */
    private void value(double value, double grain) {
        double steps = Math.rint(value * grain);
        if (!Double.isFinite(value)) json.writeNull();
        else if (grain > 10_000 || Math.abs(steps) > 1e9) json.writeNumber(steps / grain);
        else json.writeRawValue(text, 0, digits((long) steps, (int) grain));
    }

    private final char[] text = new char[24];

    /** Digits of steps / grain in {@link #text}, their count returned: half the time of writing a night went into those of doubles. */
    private int digits(long steps, int grain) {
        int at = 0;
        if (steps < 0) text[at++] = '-';
        long size = Math.abs(steps);
        String whole = Long.toString(size / grain);
        whole.getChars(0, whole.length(), text, at);
        at += whole.length();
        long rest = size % grain;
        if (rest == 0) return at;
        text[at++] = '.';
        for (long unit = grain / 10; rest > 0; unit /= 10) {
            text[at++] = (char) ('0' + rest / unit);
            rest %= unit;
        }
        return at;
    }
}
