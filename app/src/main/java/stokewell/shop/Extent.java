package stokewell.shop;

/**
 * How much there is of a sensor.
 *
 * @param count how many readings
 * @param first time of the first, s since 1970; 0 where there is none
 * @param last  time of the last
 */
public record Extent(long count, long first, long last) {}
