package stokewell.shop;

/**
 * What became of the readings of one batch.
 *
 * @param sensor   whose they are
 * @param added    readings that are new
 * @param known    readings that the shop had, the same to the last digit
 * @param differed readings whose time the shop had with another value
 * @param replaced of those, how many now have the new value; the others stayed as they were
 */
public record Taken(Sensor sensor, int added, int known, int differed, int replaced) {

    /** Whether the shop is another than before. */
    public boolean changed() {
        return added > 0 || replaced > 0;
    }
}
