/**
 * What a shop remembers, in one file: readings by sensor, loads of wood, what else was done, versions of the rig, fits.
 *
 * <p>The file is an SQLite database with a write-ahead log. What was acknowledged is on the disk; what was not is either
 * there whole or not at all. Times are whole seconds since 1970 (UTC), values SI.
 */
package stokewell.shop;
