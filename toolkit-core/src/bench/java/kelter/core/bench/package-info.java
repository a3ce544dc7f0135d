/**
 * Times of the core, and what runs the benchmarks of any part. It is no part of what is shipped.
 */
package kelter.core.bench;
