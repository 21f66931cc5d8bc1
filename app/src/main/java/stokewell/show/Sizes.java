package stokewell.show;

import static stokewell.file.Units.BTU;
import static stokewell.file.Units.FOOT;
import static stokewell.file.Units.INCH;
import static stokewell.file.Units.POUND;

/**
 * Sizes as they are read from a tape, a scale and a bucket: whole millimetres, or feet, inches and sixteenths. No line ends
 * between a number and its unit.
 */
final class Sizes {

    private static final double GALLON = 231 * INCH * INCH * INCH;
    private static final double PSI = POUND * 9.80665 / (INCH * INCH);
    private static final char BLANK = '\u00a0';

    private final boolean us;

    Sizes(Measure as) {
        us = as.us();
    }

    /** To cut to: 1250 mm, or 49 3/16 in. */
    String cut(double metres) {
        if (!us) return Math.round(1000 * metres) + "" + BLANK + "mm";
        return inches(metres, 16);
    }

    /** A height or a width on the rig: 1950 mm, or 6 ft 4 3/4 in. */
    String tape(double metres) {
        if (!us) return Math.round(1000 * metres) + "" + BLANK + "mm";
        long eighths = Math.round(Math.abs(metres) / INCH * 8);
        long feet = eighths / 96;
        String sign = metres < 0 && eighths > 0 ? "-" : "";
        if (feet == 0) return sign + inches(Math.abs(metres), 8);
        long rest = eighths % 96;
        return sign + feet + BLANK + "ft" + (rest == 0 ? "" : BLANK + inches(rest * INCH / 8, 8));
    }

    private static String inches(double metres, int parts) {
        long all = Math.round(Math.abs(metres) / INCH * parts);
        long whole = all / parts;
        long up = all % parts;
        long down = parts;
        while (up > 0 && up % 2 == 0) {
            up /= 2;
            down /= 2;
        }
        String sign = metres < 0 && all > 0 ? "-" : "";
        String fraction = up == 0 ? "" : up + "/" + down;
        String number = whole == 0 && up > 0 ? fraction : whole + (up == 0 ? "" : BLANK + fraction);
        return sign + number + BLANK + "in";
    }

    /** A plate's or pipe wall's thickness, a bore: 5 mm, or 0.197 in. */
    String gauge(double metres) {
        if (!us) return Numbers.bare(1000 * metres, 1) + BLANK + "mm";
        double in = metres / INCH;
        double sixteenths = Math.rint(16 * in) / 16;
        return Math.abs(in - sixteenths) < 0.004 && sixteenths > 0
                ? inches(metres, 16)
                : Numbers.bare(in, 2) + BLANK + "in";
    }

    /** A run of pipe, to buy. */
    String run(double metres) {
        return us ? Numbers.of(metres / FOOT, 1) + BLANK + "ft" : Numbers.of(metres, 1) + BLANK + "m";
    }

    String area(double square) {
        return us ? Numbers.of(square / FOOT / FOOT, 1) + BLANK + "ft²" : Numbers.of(square, 2) + BLANK + "m²";
    }

    /** Water by its volume. */
    String volume(double cubic) {
        double v = us ? cubic / GALLON : 1000 * cubic;
        return Numbers.of(v, v < 99.5 ? 1 : 0) + BLANK + (us ? "gal" : "L");
    }

    String mass(double kg) {
        double v = us ? kg / POUND : kg;
        return Numbers.of(v, v < 9.95 ? 1 : 0) + BLANK + (us ? "lb" : "kg");
    }

    /** Over the air's. */
    String pressure(double pascal) {
        return us
                ? Numbers.of(pascal / PSI, pascal < 7 * PSI ? 1 : 0) + BLANK + "psi"
                : Numbers.of(pascal / 1e5, 2) + BLANK + "bar";
    }

    /** A pump's head: metres or feet of water. */
    String head(double pascal) {
        double metres = pascal / 9806.65;
        return us ? Numbers.of(metres / FOOT, 1) + BLANK + "ft" : Numbers.of(metres, 1) + BLANK + "m";
    }

    /** A load on a floor. */
    String load(double pascal) {
        return us ? Numbers.of(pascal / 47.880259, 0) + BLANK + "psf" : Numbers.of(pascal / 1000, 1) + BLANK + "kPa";
    }

    /** Section modulus. */
    String modulus(double cubic) {
        return us
                ? Numbers.of(cubic / INCH / INCH / INCH, 2) + BLANK + "in³"
                : Numbers.of(1e6 * cubic, 1) + BLANK + "cm³";
    }

    String flow(double perSecond) {
        return us
                ? Numbers.of(perSecond / GALLON * 60, 1) + BLANK + "gpm"
                : Numbers.of(perSecond * 60000, 0) + BLANK + "L/min";
    }

    String air(double perSecond) {
        return us
                ? Numbers.of(perSecond / FOOT / FOOT / FOOT * 60, 0) + BLANK + "cfm"
                : Numbers.of(perSecond * 3600, 0) + BLANK + "m³/h";
    }

    String power(double watts) {
        return us
                ? Numbers.of(watts * 3600 / BTU / 1000, 1) + BLANK + "kBtu/h"
                : Numbers.of(watts / 1000, 1) + BLANK + "kW";
    }
}
