package stokewell.shop;

/**
 * Something done or noticed.
 *
 * @param id   its number in the shop; 0 while it has none
 * @param time s since 1970
 * @param kind {@code ash}, {@code sweep}, {@code water}, {@code change} or {@code note}
 * @param note in words; may be empty
 */
public record Event(long id, long time, String kind, String note) {}
