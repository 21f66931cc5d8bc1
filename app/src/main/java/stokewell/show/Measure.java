package stokewell.show;

import static stokewell.file.Units.BTU;
import static stokewell.file.Units.GALLON;
import static stokewell.file.Units.INCH;
import static stokewell.file.Units.POUND;
import static stokewell.file.Units.PSI;

import stokewell.file.UnitSystem;

/**
 * SI values told in the user's units, with as many decimals as mean something. Factors as in the unit table of rig files.
 * A difference of temperatures never gets the offset of the scale.
 */
public final class Measure {

    private static final double INCH_WATER = INCH * 9806.65;
    private static final double KWH = 3.6e6;

    private final boolean us;
    private final String degree;
    private final char blank;

    private Measure(UnitSystem units, String degree, char blank) {
        us = units == UnitSystem.US;
        this.degree = degree;
        this.blank = blank;
    }

    /** For a terminal: letters only. */
    public static Measure plain(UnitSystem units) {
        return new Measure(units, "", ' ');
    }

    /** For page and paper: with the degree sign, and no line ends between a number and its unit. */
    static Measure printed(UnitSystem units) {
        return new Measure(units, "°", '\u00a0');
    }

    boolean us() {
        return us;
    }

    /** The number of a temperature on the user's scale. */
    public double scale(double kelvin) {
        return us ? (kelvin - 273.15) * 1.8 + 32 : kelvin - 273.15;
    }

    /** The temperature of a number on the user's scale, K. */
    double kelvin(double scale) {
        return us ? (scale - 32) / 1.8 + 273.15 : scale + 273.15;
    }

    public String scaleUnit() {
        return degree + (us ? "F" : "C");
    }

    String temperature(double kelvin, int decimals) {
        return told(scale(kelvin), decimals, scaleUnit());
    }

    /** Of a room: a tenth counts beside a limit. */
    String room(double kelvin) {
        return temperature(kelvin, 1);
    }

    /** Of a store, a stove: whole degrees. */
    String hot(double kelvin) {
        return temperature(kelvin, 0);
    }

    /** Of a setting: as few decimals as it needs. */
    String setting(double kelvin) {
        double shown = scale(kelvin);
        return Double.isFinite(shown) ? Numbers.bare(shown, 1) + blank + scaleUnit() : "-";
    }

    double differenceNumber(double kelvin) {
        return us ? 1.8 * kelvin : kelvin;
    }

    String differenceUnit() {
        return us ? degree + "F" : "K";
    }

    String difference(double kelvin, int decimals) {
        return told(differenceNumber(kelvin), decimals, differenceUnit());
    }

    double energyNumber(double joules) {
        return us ? joules / (1e3 * BTU) : joules / KWH;
    }

    String energyUnit() {
        return us ? "kBtu" : "kWh";
    }

    /** Decimals for numbers of which the largest is so many J. */
    int energyDecimals(double largest) {
        return us || energyNumber(Math.abs(largest)) >= 999.95 ? 0 : 1;
    }

    /** One of many of which the largest is so many J. */
    String energy(double joules, double largest) {
        return told(energyNumber(joules), energyDecimals(largest), energyUnit());
    }

    String energy(double joules) {
        return told(energyNumber(joules), energyDecimals(joules), energyUnit());
    }

    double powerNumber(double watts) {
        return us ? watts * 3.6 / BTU : watts / 1e3;
    }

    /** Thousands of Btu an hour, or kW. */
    String powerUnit() {
        return us ? "kBtu/h" : "kW";
    }

    public double massNumber(double kg) {
        return us ? kg / POUND : kg;
    }

    public String massUnit() {
        return us ? "lb" : "kg";
    }

    String mass(double kg, int decimals) {
        return told(massNumber(kg), decimals, massUnit());
    }

    /** Water by its volume at 1 kg/L. */
    String water(double kg) {
        return us ? told(kg / 1e3 / GALLON, 2, "gal") : told(kg, 1, "L");
    }

    double massFlowNumber(double kgPerSecond) {
        return us ? kgPerSecond * 3600 / POUND : kgPerSecond * 3600;
    }

    String massFlowUnit() {
        return us ? "lb/h" : "kg/h";
    }

    public double pressureNumber(double pascal) {
        return us() ? pascal / PSI : pascal / 1e5;
    }

    public String pressureUnit() {
        return us() ? "psi" : "bar";
    }

    double draftNumber(double pascal) {
        return us ? pascal / INCH_WATER : pascal;
    }

    String draftUnit() {
        return us ? "in wc" : "Pa";
    }

    double degreeDaysNumber(double kelvinDays) {
        return us ? 1.8 * kelvinDays : kelvinDays;
    }

    String degreeDaysUnit() {
        return us ? degree + "F d" : "K d";
    }

    String hours(double hours) {
        return told(hours, Math.abs(hours) >= 99.95 ? 0 : 1, "h");
    }

    /** Minutes that a person has: whole ones, tenths below three, hours beyond two. */
    String minutes(double minutes) {
        if (Double.isNaN(minutes)) return "-";
        if (minutes > 48 * 60) return "over 48 h";
        if (minutes >= 120) return told(minutes / 60, 1, "h");
        if (minutes > 0 && minutes < 1) return told(60 * minutes, 0, "s");
        return told(minutes, minutes < 3 ? 1 : 0, "min");
    }

    private String told(double value, int decimals, String unit) {
        if (!Double.isFinite(value)) return "-";
        return Numbers.of(value, decimals) + blank + unit;
    }
}
