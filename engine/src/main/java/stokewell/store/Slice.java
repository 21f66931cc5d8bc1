package stokewell.store;

/**
 * One of the level slices into which the water of a store is cut, counted from the bottom.
 *
 * @param bottom height above the inside bottom of the store, m
 * @param top height, m
 * @param volume m³
 * @param side surface towards the jacket, flat top and bottom of the store not counted, m²
 * @param centroid height of the middle of its mass, m
 */
public record Slice(double bottom, double top, double volume, double side, double centroid) {}
