/**
 * What the parts of a rig measure and weigh, reckoned from the rig alone: plates to cut, insulation to buy, water held, load on
 * the floor. SI.
 */
package stokewell.size;
