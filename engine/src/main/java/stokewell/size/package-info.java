/**
 * What the parts of a rig measure and weigh, reckoned from the rig alone: plates to cut, insulation to buy, water held, load on
 * the floor; and what a rig of other sizes saves. SI.
 */
package stokewell.size;
