/**
 * How long machines last: Weibull lives, what is left at an age, and the studies that the figures
 * come from. Nothing here knows of money or jobs.
 *
 * <p>Stability: may change.
 */
package kelter.costing.life;
