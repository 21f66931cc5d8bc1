/**
 * Readings against the model: which sensor is where, what the rig's uncertain numbers are with how much confidence, when
 * something changed, and whether a change saved wood.
 */
package stokewell.fit;
