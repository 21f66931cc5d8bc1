package stokewell.shop;

import stokewell.file.SensorUnit;

/**
 * Readings to be taken in.
 *
 * @param sensor   its name; one that the shop does not know yet is made
 * @param unit     what is measured, and the unit that it was written in
 * @param readings what it said
 */
public record Batch(String sensor, SensorUnit unit, Readings readings) {}
