package stokewell.shop;

/**
 * The rig as it was from some day on.
 *
 * @param id    its number in the shop
 * @param since from when it was so, s since 1970
 * @param name  of the rig
 * @param text  the rig file, as it was
 */
public record RigVersion(long id, long since, String name, String text) {}
