/** How the outcome of a run is told: the card for a person, JSON and CSV for programs. */
package stokewell.show;
