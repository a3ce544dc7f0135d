/**
 * What changed in a column of a log: two stretches held against each other with the drift of a
 * healthy one ({@link kelter.core.log.change.Comparison}), and the changes that nobody pointed at
 * ({@link kelter.core.log.change.ChangeSearch}). It knows nothing of files, units or jobs.
 *
 * <p>Stability: may change.
 */
package kelter.core.log.change;
