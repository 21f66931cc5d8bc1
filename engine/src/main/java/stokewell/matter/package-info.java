/**
 * What things are made of: water and its steam, glycol mixtures, air, wood, flue gas, building materials.
 *
 * <p>Pure functions of temperature (K), pressure (Pa) and composition, in SI units, each with its published source,
 * range and checked accuracy. Nothing here knows a rig.
 */
package stokewell.matter;
