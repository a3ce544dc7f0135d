/**
 * Hostile input: published collections of it, and what must hold whatever is put in. The fuzzing of
 * {@code src/fuzz} uses the same rules.
 */
package kelter.cli.hostile;
