/** Runs of a compiled rig: night and season, where they start, what they leave behind. */
package stokewell.run;
