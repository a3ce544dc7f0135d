/**
 * What the kind of a machine adds to what is known of it: typical figures, shares of causes,
 * chances of symptoms. It reads no files.
 */
package kelter.core.workshop.kind;
