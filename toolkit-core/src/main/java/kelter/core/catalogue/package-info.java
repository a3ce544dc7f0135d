/**
 * What is known of machines before anything is said of one: kinds of machines with their parts,
 * typical figures and shares of causes. It reads no files and weighs nothing.
 */
package kelter.core.catalogue;
