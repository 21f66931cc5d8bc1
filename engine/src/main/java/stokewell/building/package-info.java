/**
 * The shed round the fire: walls of layers, the slab and the ground, leaks, windows, and how a wall's mass is cut into a few
 * nodes. m, m² K/W, W/(m² K), J/(m² K), temperatures in °C.
 */
package stokewell.building;
