/**
 * How the outcome of a run is told: the card and the plot for a terminal, the page and the picture for the eye, the trace
 * and JSON for programs. One picture language: what is drawn is a {@link stokewell.show.Drawing}, told as SVG or painted.
 */
package stokewell.show;
