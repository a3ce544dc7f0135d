/**
 * Limits of protective measures after repair, as data with their source, so that a shop can put its
 * local code in their place. Knows nothing of jobs.
 *
 * <p>Stability: may change.
 */
package kelter.electrical.protection;
