/**
 * Measured against limits: findings and verdicts after JCGM 106:2012.
 *
 * <p>Stability: stable.
 */
package kelter.core.check;
