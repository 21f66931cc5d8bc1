/**
 * What the sheet for the bench tells of a rig: plates to cut, weights, parts, heights, and what the first small fire should
 * do. Facts in SI, reckoned from the rig alone or from a run; how they are told is the app's.
 */
package stokewell.sheet;
