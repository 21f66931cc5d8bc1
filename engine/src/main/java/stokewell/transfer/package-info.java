/**
 * How heat passes: convection, radiation, conduction, boiling, evaporation, and the exchangers made of them.
 *
 * <p>Pure functions with the symbols of the textbooks, in SI units, each with its published source and range. A heat
 * transfer coefficient is in W/(m2 K).
 */
package stokewell.transfer;
