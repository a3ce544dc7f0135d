/**
 * Uncertainty of measurement after JCGM 100:2008 (GUM): instruments' accuracy, estimates and the
 * propagation of uncertainty through a calculation.
 *
 * <p>Stability: stable.
 */
package kelter.core.uncertainty;
