/** Measured against limits: findings and verdicts after JCGM 106:2012. */
package kelter.core.check;
