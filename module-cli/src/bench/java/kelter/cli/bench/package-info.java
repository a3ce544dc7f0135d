/** Benchmarks of whole diagnoses on the machines of the demo. */
package kelter.cli.bench;
