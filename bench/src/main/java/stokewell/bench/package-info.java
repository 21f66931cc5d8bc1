/** Measurements: JMH benchmarks and the side-by-side run against a general-purpose solver. */
package stokewell.bench;
