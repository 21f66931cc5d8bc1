package stokewell.file;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stokewell.rig.Dimension;

/**
 * The unit that a sensor's readings are written in: {@code SI = written * factor + zero}.
 *
 * @param kind   what is measured
 * @param symbol how it is written; empty for plain numbers
 * @param factor SI value of one of it
 * @param zero   SI value of none of it
 */
public record SensorUnit(SensorKind kind, String symbol, double factor, double zero) {

    private static final List<SensorUnit> KNOWN = known();

    /** SI value of a number written in it. */
    public double toSi(double written) {
        return written * factor + zero;
    }

    /** What is written for an SI value. */
    public double fromSi(double si) {
        return (si - zero) / factor;
    }

    /** The unit in which a kind's readings are held. */
    public static SensorUnit si(SensorKind kind) {
        return new SensorUnit(kind, kind.si.equals("1") ? "" : kind.si, 1, 0);
    }

    /** The unit of that name, of whatever kind. A per cent is a share. */
    public static Optional<SensorUnit> named(String text) {
        String plain = Unit.plain(text.replace("℃", "C").replace("℉", "F"));
        if (plain.isEmpty()) return Optional.empty();
        for (SensorUnit unit : KNOWN) {
            if (Unit.plain(unit.symbol).equals(plain)) return Optional.of(unit);
        }
        return switch (plain) {
            case "degc", "celsius", "degreescelsius", "degreecelsius", "gradc", "gradcelsius" -> named("C");
            case "degf", "fahrenheit", "degreesfahrenheit" -> named("F");
            case "kelvin", "degk" -> named("K");
            case "percent", "pct", "%rh", "rh%", "%rf" -> named("%");
            case "w/m2", "watt/m2", "w/sqm" -> named("W/m2");
            case "lpm", "l/minute" -> named("L/min");
            case "btuh", "btu/hr" -> named("Btu/h");
            case "kph", "kmh" -> named("km/h");
            default -> Optional.empty();
        };
    }

    /** The unit of that name among those of a kind. */
    public static Optional<SensorUnit> named(SensorKind kind, String text) {
        if (text.isBlank()) return Optional.of(si(kind));
        return named(text)
                .filter(u -> u.kind == kind || share(u.kind) && share(kind))
                .map(u -> u.as(kind));
    }

    /** The same unit for a kind that is written alike. */
    public SensorUnit as(SensorKind other) {
        return new SensorUnit(other, symbol, factor, zero);
    }

    /** Every unit that can be written, for a message. */
    public static String list() {
        List<String> symbols = new ArrayList<>();
        for (SensorUnit unit : KNOWN) symbols.add(unit.symbol);
        return String.join(", ", symbols);
    }

    private static boolean share(SensorKind kind) {
        return kind == SensorKind.SHARE || kind == SensorKind.HUMIDITY;
    }

    private static List<SensorUnit> known() {
        List<SensorUnit> units = new ArrayList<>();
        take(units, SensorKind.TEMPERATURE, Dimension.TEMPERATURE, "C", "F", "K");
        take(units, SensorKind.SHARE, Dimension.SHARE, "%");
        take(units, SensorKind.POWER, Dimension.POWER, "W", "kW", "Btu/h", "MBH");
        take(units, SensorKind.ENERGY, Dimension.ENERGY, "kWh", "Wh", "MWh", "J", "kJ", "MJ", "Btu", "kBtu");
        take(units, SensorKind.FLOW, Dimension.VOLUME_FLOW, "L/min", "L/s", "L/h", "m3/h", "m3/s", "gpm", "cfm");
        take(units, SensorKind.SPEED, Dimension.SPEED, "m/s", "km/h", "mph", "kt");
        units.add(new SensorUnit(SensorKind.SUN, "W/m2", 1, 0));
        units.add(new SensorUnit(SensorKind.SUN, "kW/m2", 1000, 0));
        take(units, SensorKind.PRESSURE, Dimension.PRESSURE, "Pa", "kPa", "bar", "mbar", "psi");
        units.add(new SensorUnit(SensorKind.PRESSURE, "hPa", 100, 0));
        take(units, SensorKind.MASS, Dimension.MASS, "kg", "lb", "g");
        return Collections.unmodifiableList(units);
    }

    private static void take(List<SensorUnit> units, SensorKind kind, Dimension is, String... symbols) {
        for (String symbol : symbols) {
            Unit unit = Units.named(is, symbol);
            if (unit == null) throw new IllegalStateException(String.format(Locale.ROOT, "no unit %s", symbol));
            units.add(new SensorUnit(kind, symbol, unit.factor(), unit.zero()));
        }
    }
}
