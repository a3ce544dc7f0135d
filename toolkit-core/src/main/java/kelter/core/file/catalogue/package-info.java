/**
 * What is known of machines beside any job: kinds, models, steps of work and the lock-out table,
 * those that come with Kelter and those of a shop. They are hostile until read like all files.
 *
 * <p>Stability: may change.
 */
package kelter.core.file.catalogue;
