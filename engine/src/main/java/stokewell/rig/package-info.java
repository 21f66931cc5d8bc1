/**
 * The description of a rig: what a person built, in SI units, immutable. Every component of every record carries an
 * {@link stokewell.rig.Entry}; every record checks itself once, when it is made.
 */
package stokewell.rig;
