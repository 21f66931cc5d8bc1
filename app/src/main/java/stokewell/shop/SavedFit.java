package stokewell.shop;

/**
 * A fit that was kept.
 *
 * @param id   its number in the shop
 * @param made when, s since 1970
 * @param rig  number of the version of the rig that it was made on; 0 where none
 * @param body the fit, as JSON
 */
public record SavedFit(long id, long made, long rig, String body) {}
