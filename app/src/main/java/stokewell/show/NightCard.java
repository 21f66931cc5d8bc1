package stokewell.show;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stokewell.file.Quantity;
import stokewell.file.UnitSystem;
import stokewell.matter.Wood;
import stokewell.rig.Dimension;
import stokewell.run.Night;

/** The card of a night: one screen, what no gauge shows first. */
public final class NightCard {

    private static final double KWH = 3.6e6;
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final int WIDTH = 40;

    private final Night night;
    private final UnitSystem units;
    private final StringBuilder out = new StringBuilder();

    private NightCard(Night night, UnitSystem units) {
        this.night = night;
        this.units = units;
    }

    /**
     * The card as text.
     *
     * @param stackedDensity of the wood as stacked, kg/m3
     */
    public static String text(Night night, double stackedDensity, UnitSystem units) {
        NightCard card = new NightCard(night, units);
        card.write(stackedDensity);
        return card.out.toString();
    }

    private void write(double stackedDensity) {
        out.append(night.rig()).append("\n\n").append(verdict()).append("\n\n");
        for (String caution : Cautions.of(night))
            out.append("! ").append(caution).append('\n');
        out.append('\n');
        boolean store = night.charge() != null;
        line(
                "room at " + clock(night.morning().time()),
                temperature(night.morning().room()));
        line(
                "lowest room of the night",
                temperature(night.lowestRoom().room()) + " at "
                        + clock(night.lowestRoom().time()));
        if (store) {
            line(
                    "store in the morning",
                    temperature(night.morning().storeMean()) + " mean, "
                            + temperature(night.morning().storeTop()) + " top");
        }
        line("hours above " + temperature(night.limit()), Numbers.of(night.hoursAbove(), 1) + " h");
        line("hours carried after the fire", carried());
        if (store) charge();
        for (Night.ToBoil b : night.minutesToBoil()) {
            line(
                    "if flow stops, " + b.pickup() + " boils in",
                    Double.isFinite(b.minutes()) ? Numbers.of(b.minutes(), 1) + " min, at " + clock(b.time()) : "-");
        }
        if (Double.isFinite(night.boil().margin())) {
            line(
                    "least margin to boiling",
                    difference(night.boil().margin()) + " at "
                            + clock(night.boil().time()) + ", " + night.boil().where());
            line(
                    "boiling",
                    Numbers.of(night.boilingMinutes(), 0) + " min, steam " + Numbers.of(night.steam(), 2) + " kg");
        }
        if (night.evaporated() > 0.05) line("water evaporated", Numbers.of(night.evaporated(), 1) + " kg");
        line("wood", wood(stackedDensity));
        if (store) line("fire's heat that went into water", Math.round(100 * night.waterShare()) + " %");
        for (Night.Drive d : night.drives()) {
            line(d.name(), d.starts() + " starts, " + Numbers.of(d.hours(), 1) + " h");
        }
        line("hottest stove body", temperature(night.hottestBody()));
        ledger();
        out.append("\nstart: ").append(night.start()).append('\n');
    }

    private String verdict() {
        double limit = night.limit();
        double lowest = night.lowestRoom().room();
        if (lowest >= limit) {
            return "It carries the night: the room stays at or above " + temperature(limit) + ", lowest "
                    + temperature(lowest) + " at " + clock(night.lowestRoom().time()) + ".";
        }
        return "It does NOT carry the night: the room falls below " + temperature(limit) + ", to " + temperature(lowest)
                + " at " + clock(night.lowestRoom().time()) + ".";
    }

    private String carried() {
        if (Double.isNaN(night.hoursCarried())) return "the fire never goes out";
        if (Double.isInfinite(night.hoursCarried())) return "all of the night";
        return Numbers.of(night.hoursCarried(), 1) + " h";
    }

    private void charge() {
        Night.Charge c = night.charge();
        if (Double.isNaN(c.roomLeft())) return;
        line(
                "room left in store, fire still to come",
                Numbers.of(c.roomLeft() / KWH, 1) + " kWh, " + Numbers.of(c.coming() / KWH, 1) + " kWh");
        String safe = Double.isInfinite(c.lastSafeLoad())
                ? "at any time"
                : Double.isNaN(c.lastSafeLoad()) ? "none fits" : clock(c.lastSafeLoad());
        line("last time one more load fits", safe);
    }

    private String wood(double stackedDensity) {
        double volume = night.wood() / stackedDensity;
        String stacked =
                units == UnitSystem.US ? Numbers.of(volume / Wood.CORD, 3) + " cord" : Numbers.of(volume, 3) + " stere";
        return Quantity.write(night.wood(), Dimension.MASS, units, 3) + " in " + night.loads() + " loads, " + stacked;
    }

    private void ledger() {
        out.append("\nwhere the heat went, kWh\n");
        double fuel = night.ledger().fuel();
        line("  brought by wood (net)", Numbers.of(fuel / KWH, 1));
        List<Map.Entry<String, Double>> all =
                new ArrayList<>(night.ledger().accounts().entrySet());
        all.sort((a, b) -> Double.compare(b.getValue(), a.getValue()));
        for (Map.Entry<String, Double> e : all) {
            if (Math.abs(e.getValue()) < 0.05 * KWH) continue;
            boolean in = e.getValue() < 0;
            line("  " + e.getKey() + (in ? " (in)" : ""), Numbers.of(Math.abs(e.getValue()) / KWH, 1));
        }
        line("  kept by rig and room", Numbers.of(night.ledger().stored() / KWH, 1));
        line("  kept in the fuel bed", Numbers.of(night.ledger().bed() / KWH, 1));
    }

    private void line(String what, String value) {
        out.append(what);
        for (int i = what.length(); i < WIDTH; i++) out.append(' ');
        out.append(' ').append(value).append('\n');
    }

    private String temperature(double kelvin) {
        return Double.isFinite(kelvin) ? Quantity.write(kelvin, Dimension.TEMPERATURE, units, 3) : "-";
    }

    private String difference(double kelvin) {
        return Quantity.write(kelvin, Dimension.TEMPERATURE_DIFFERENCE, units, 3);
    }

    private String clock(double time) {
        LocalDateTime at = night.at(time);
        return at == null ? "-" : at.format(CLOCK);
    }
}
