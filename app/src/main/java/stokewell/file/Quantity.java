package stokewell.file;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Set;
import stokewell.rig.Dimension;

/**
 * A quantity as a person wrote it: read once into SI on the way in, written with its unit on the way out.
 *
 * @param si     the value in the SI unit of its dimension
 * @param is     what kind of quantity
 * @param number the bare number, where the text was one number; else {@code NaN}
 * @param system whose units it was written in; {@code null} where both families use them
 */
public record Quantity(double si, Dimension is, double number, UnitSystem system) {

    /** Units beside those of the two families in which people think of some things. */
    private static final Set<String> ALSO_SAID = Set.of("cm", "bar", "km/h", "%", "min", "h", "d");

    /** The SI value of a text. @throws QuantityFault that says what would be right */
    public static double parse(String text, Dimension is) {
        return read(text, is).si;
    }

    /** The quantity that a text tells. @throws QuantityFault that says what would be right */
    public static Quantity read(String text, Dimension is) {
        return read(text, is, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /** As {@link #read(String, Dimension)}; the limits (SI) only help to guess which unit was meant where one is missing. */
    public static Quantity read(String text, Dimension is, double low, double high) {
        String plain = text.strip();
        if (plain.isEmpty()) throw new QuantityFault("Nothing is written.", "Write " + like(is) + ".");
        if (plain.length() > 200) throw new QuantityFault("The text is too long.", "Write " + like(is) + ".");
        return switch (is) {
            case NONE, COUNT -> bare(plain, is);
            case SHARE -> share(plain);
            case CLOCK -> new Quantity(ClockText.read(plain), is, Double.NaN, null);
            case TIME ->
                plain.indexOf(':') > 0
                        ? new Quantity(ClockText.span(plain), is, Double.NaN, null)
                        : compound(plain, is, low, high);
            case ANGLE -> angle(plain, low, high);
            case THERMAL_RESISTANCE -> resistance(plain, low, high);
            case LENGTH, MASS -> compound(plain, is, low, high);
            default -> single(plain, is, low, high);
        };
    }

    private static Quantity bare(String text, Dimension is) {
        double sign = sign(text);
        int start = signed(text) ? blanks(text, 1) : 0;
        Numeral number = Numeral.at(text, start);
        if (number == null || number.end() < text.length()) {
            throw new QuantityFault("\"" + text + "\" is not a plain number.", "Write " + like(is) + ".");
        }
        double value = sign * number.value();
        if (is == Dimension.COUNT && (value != Math.rint(value) || Math.abs(value) > 1e9)) {
            throw new QuantityFault("\"" + text + "\" is not a whole number.", "Write " + like(is) + ".");
        }
        return new Quantity(value, is, value, null);
    }

    private static Quantity share(String text) {
        int start = signed(text) ? blanks(text, 1) : 0;
        Numeral number = Numeral.at(text, start);
        if (number == null) throw unclear(text, Dimension.SHARE);
        String unit = text.substring(number.end());
        double value = sign(text) * number.value();
        if (unit.isBlank()) return new Quantity(value, Dimension.SHARE, value, null);
        Unit percent = Units.named(Dimension.SHARE, unit);
        if (percent == null) throw strange(unit, Dimension.SHARE);
        return new Quantity(value / 100, Dimension.SHARE, value, null);
    }

    private static Quantity single(String text, Dimension is, double low, double high) {
        int start = signed(text) ? blanks(text, 1) : 0;
        Numeral number = Numeral.at(text, start);
        if (number == null) throw unclear(text, is);
        double value = sign(text) * number.value();
        String name = text.substring(number.end());
        if (name.isBlank()) throw unitless(text, value, is, low, high);
        Unit unit = Units.named(is, name);
        if (unit == null) throw strange(name, is);
        double si = unit.toSi(value);
        if (is == Dimension.TEMPERATURE && si < 0) {
            throw new QuantityFault(text + " is below absolute zero.", "Write " + like(is) + ".");
        }
        return new Quantity(si, is, value, unit.system());
    }

    /** Numbers with ever smaller units: {@code 5' 3 1/2"}, {@code 1 h 30 min}, {@code 3 lb 4 oz}. */
    private static Quantity compound(String text, Dimension is, double low, double high) {
        int n = text.length();
        int i = signed(text) ? blanks(text, 1) : 0;
        double sum = 0;
        double only = Double.NaN;
        Unit before = null;
        for (int parts = 0; i < n; parts++) {
            Numeral number = Numeral.at(text, i);
            if (number == null) throw unclear(text, is);
            int end = number.end();
            int stop = end;
            while (stop < n && !numberStarts(text, end, stop)) stop++;
            String name = text.substring(end, stop);
            Unit unit = name.isBlank() ? implied(text, number, before, is, low, high) : Units.named(is, dashless(name));
            if (unit == null) throw strange(name, is);
            if (before != null && !(unit.factor() < before.factor())) {
                throw new QuantityFault(
                        "\"" + text + "\" goes from " + before.symbol() + " to " + unit.symbol() + ".",
                        "Write the larger unit first, such as " + like(is) + ".");
            }
            sum += unit.toSi(number.value());
            only = parts == 0 ? number.value() : Double.NaN;
            before = unit;
            i = blanks(text, stop);
        }
        if (before == null) throw unclear(text, is);
        return new Quantity(sign(text) * sum, is, sign(text) * only, before.system());
    }

    private static boolean numberStarts(String text, int unitFrom, int at) {
        char c = text.charAt(at);
        if (Numeral.glyph(c)) return true;
        return Numeral.digit(c) && !text.substring(unitFrom, at).isBlank();
    }

    /** {@code 5'-3"}: the dash of a drawing. */
    private static String dashless(String name) {
        String bare = name.strip();
        return bare.length() > 1 && bare.endsWith("-") ? bare.substring(0, bare.length() - 1) : bare;
    }

    /** Inches after feet and bare binary fractions are plain without a mark; anything else is not. */
    private static Unit implied(String text, Numeral number, Unit before, Dimension is, double low, double high) {
        if (is == Dimension.LENGTH) {
            boolean afterFeet = before != null && before.symbol().equals("ft");
            boolean alone = before == null && number.fraction() && number.end() == text.length();
            double in64 = number.value() * 64;
            if (afterFeet || alone && in64 == Math.rint(in64)) return Units.named(is, "in");
        }
        throw unitless(text, sign(text) * number.value(), is, low, high);
    }

    private static Quantity angle(String text, double low, double high) {
        double bearing = Compass.bearing(text);
        if (!Double.isNaN(bearing)) return new Quantity(bearing, Dimension.ANGLE, Double.NaN, null);
        char last = Character.toUpperCase(text.charAt(text.length() - 1));
        boolean side = (last == 'N' || last == 'E' || last == 'S' || last == 'W')
                && !text.toLowerCase(Locale.ROOT).endsWith("min")
                && text.length() > 1
                && !Character.isLetter(text.charAt(text.length() - 2));
        String rest = side ? text.substring(0, text.length() - 1).strip() : text;
        if (side && signed(rest))
            throw new QuantityFault("\"" + text + "\" has a sign and a side.", "Write one of them.");
        if (side && rest.indexOf('°') < 0 && Numeral.digit(rest.charAt(rest.length() - 1))) rest += "°";
        Quantity plain = compound(rest.replace("°", " deg "), Dimension.ANGLE, low, high);
        return side && (last == 'S' || last == 'W')
                ? new Quantity(-plain.si, Dimension.ANGLE, -plain.number, plain.system)
                : plain;
    }

    private static Quantity resistance(String text, double low, double high) {
        String upper = text.toUpperCase(Locale.ROOT);
        boolean si = upper.startsWith("RSI");
        if (!upper.startsWith("R")) return single(text, Dimension.THERMAL_RESISTANCE, low, high);
        int start = si ? 3 : 1;
        if (start < text.length() && text.charAt(start) == '-') start++;
        String number = text.substring(start).strip();
        if (number.isEmpty()) throw unclear(text, Dimension.THERMAL_RESISTANCE);
        return single(number + (si ? " m2.K/W" : " h.ft2.F/Btu"), Dimension.THERMAL_RESISTANCE, low, high);
    }

    private static boolean signed(String text) {
        char c = text.charAt(0);
        return c == '-' || c == '+' || c == '−';
    }

    private static double sign(String text) {
        return signed(text) && text.charAt(0) != '+' ? -1 : 1;
    }

    private static int blanks(String text, int from) {
        int i = from;
        while (i < text.length() && (text.charAt(i) == ' ' || text.charAt(i) == '\u00a0')) i++;
        return i;
    }

    private static QuantityFault unclear(String text, Dimension is) {
        return new QuantityFault("\"" + text + "\" is not " + words(is) + ".", "Write " + like(is) + ".");
    }

    private static QuantityFault strange(String unit, Dimension is) {
        StringBuilder known = new StringBuilder();
        for (Unit each : Units.of(is)) known.append(known.isEmpty() ? "" : ", ").append(each.symbol());
        String other = "";
        for (Dimension each : Dimension.values()) {
            if (each != is && !unit.isBlank() && Units.named(each, unit) != null) {
                other = ", it is one of " + noun(each);
                break;
            }
        }
        return new QuantityFault(
                "\"" + unit.strip() + "\" is not a unit of " + noun(is) + other + ".", "Known: " + known + ".");
    }

    private static QuantityFault unitless(String text, double value, Dimension is, double low, double high) {
        StringBuilder meant = new StringBuilder();
        int shown = 0;
        for (Unit unit : Units.of(is)) {
            double si = unit.toSi(value);
            if (si < low || si > high || shown == 2 || !said(unit, is, si)) continue;
            meant.append(shown == 0 ? "" : " or ").append(text).append(' ').append(unit.symbol());
            shown++;
        }
        return new QuantityFault(
                text + " of what? The unit is missing.",
                shown == 0 ? "Write " + like(is) + "." : "Did you mean " + meant + "?");
    }

    /** The number as it stands with the first unit that brings it within the limits, or empty. */
    static String otherUnit(Quantity quantity, double low, double high) {
        if (Double.isNaN(quantity.number) || quantity.is == Dimension.ANGLE) return "";
        for (Unit unit : Units.of(quantity.is)) {
            double si = unit.toSi(quantity.number);
            if (si >= low && si <= high && said(unit, quantity.is, si)) {
                return figure(quantity.number, 12) + " " + unit.symbol();
            }
        }
        return "";
    }

    /** Whether people tell a value of this size in this unit: nobody lays 0.01 t of wood on. */
    private static boolean said(Unit unit, Dimension is, double si) {
        String symbol = unit.symbol();
        return symbol.equals(UnitSystem.SI.unit(is, si))
                || symbol.equals(UnitSystem.US.unit(is, si))
                || ALSO_SAID.contains(symbol);
    }

    /** What the quantity is called: {@code a length}. */
    static String words(Dimension is) {
        String noun = noun(is);
        return ("aeiou".indexOf(noun.charAt(0)) >= 0 ? "an " : "a ") + noun;
    }

    static String noun(Dimension is) {
        return switch (is) {
            case NONE -> "plain number";
            case COUNT -> "whole number";
            case CLOCK -> "time of day";
            case CONDUCTANCE -> "heat loss coefficient";
            default -> is.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        };
    }

    /** An example of how to write one. */
    static String like(Dimension is) {
        return switch (is) {
            case NONE -> "1.5";
            case COUNT -> "12";
            case SHARE -> "20 % or 0.2";
            case LENGTH -> "1.2 m, 26 mm, 2 in or 5 ft 3 in";
            case AREA -> "2.5 m2 or 27 ft2";
            case VOLUME -> "900 L or 240 gal";
            case MASS -> "25 kg or 55 lb";
            case DENSITY -> "30 kg/m3 or 2 lb/ft3";
            case TIME -> "30 s, 5 min or 1 h 30 min";
            case CLOCK -> "17:00 or 5:30 pm";
            case TEMPERATURE -> "70 C or 158 F";
            case TEMPERATURE_DIFFERENCE -> "7 K or 12 F";
            case PRESSURE -> "1.5 bar, 4 m water or 22 psi";
            case HEAD -> "4 m water, 13 ft head or 40 kPa";
            case POWER -> "8 kW or 27000 Btu/h";
            case ENERGY -> "40 kWh or 136 kBtu";
            case CONDUCTANCE -> "260 W/K or 490 Btu/h.F";
            case CONDUCTIVITY -> "0.04 W/m.K or 0.28 Btu.in/h.ft2.F";
            case TRANSMITTANCE -> "2.8 W/m2.K or 0.5 Btu/h.ft2.F";
            case THERMAL_RESISTANCE -> "2.3 m2.K/W or R-13";
            case HEAT_CAPACITY -> "600 Wh/K or 1100 Btu/F";
            case SPECIFIC_HEAT -> "0.48 kJ/kg.K or 0.115 Btu/lb.F";
            case HEATING_VALUE -> "4 kWh/kg or 6200 Btu/lb";
            case VOLUME_FLOW -> "12 L/min, 400 m3/h or 3 gpm";
            case MASS_FLOW -> "9 kg/h or 20 lb/h";
            case SPEED -> "3 m/s or 7 mph";
            case ANGLE -> "44.5 deg, 71 W or south";
            case AIR_CHANGE -> "15 1/h";
        };
    }

    /**
     * A value with its unit, as {@link #parse} reads it back.
     *
     * @param digits significant digits; on the temperature scale, decimals are two fewer than that
     */
    public static String write(double si, Dimension is, UnitSystem system, int digits) {
        if (Double.isNaN(si)) return "none";
        if (Double.isInfinite(si)) return si > 0 ? "no limit" : "none";
        switch (is) {
            case NONE, COUNT:
                return figure(si, digits);
            case CLOCK:
                return ClockText.write(si, digits);
            default:
        }
        String symbol = system.unit(is, si);
        if (symbol.equals("ft") && is == Dimension.LENGTH) return twoPart(si / 0.3048, "ft", 12, "in", digits);
        if (symbol.equals("h") && is == Dimension.TIME) return twoPart(si / 3600, "h", 60, "min", digits);
        Unit unit = Units.named(is, symbol);
        double value = unit.fromSi(si);
        if (is == Dimension.TEMPERATURE) return decimals(value, Math.max(0, digits - 2)) + " " + symbol;
        if (symbol.equals("h.ft2.F/Btu") && value >= 0) return "R-" + figure(value, digits);
        return figure(value, digits) + " " + symbol;
    }

    private static String twoPart(double value, String large, int ratio, String small, int digits) {
        double size = Math.abs(value);
        int places = Math.max(0, digits - (int) Math.ceil(Math.log10(size * ratio + 1)));
        BigDecimal all = new BigDecimal(size * ratio).setScale(places, RoundingMode.HALF_EVEN);
        BigDecimal[] parts = all.divideAndRemainder(BigDecimal.valueOf(ratio));
        String rest = plain(parts[1]);
        return (value < 0 ? "-" : "")
                + plain(parts[0].setScale(0, RoundingMode.DOWN))
                + " "
                + large
                + (rest.equals("0") ? "" : " " + rest + " " + small);
    }

    /** A number in plain digits, rounded to so many significant ones. */
    static String figure(double value, int digits) {
        return plain(new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_EVEN)));
    }

    private static String decimals(double value, int places) {
        return plain(new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN));
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
