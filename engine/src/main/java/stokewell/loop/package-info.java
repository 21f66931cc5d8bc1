/**
 * Water on its way: friction and fittings, pipe sizes, pumps, the pull of warm water, freezing, expansion and relief.
 * Every function takes the properties of the water as arguments; kg, m, s, Pa, W, temperatures in °C.
 */
package stokewell.loop;
