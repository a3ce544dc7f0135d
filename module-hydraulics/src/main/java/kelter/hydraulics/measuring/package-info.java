/**
 * Ways of measuring water and the instruments for it that are typical of their class, with what a
 * reading by them is worth. It knows no job.
 *
 * <p>Stability: may change.
 */
package kelter.hydraulics.measuring;
