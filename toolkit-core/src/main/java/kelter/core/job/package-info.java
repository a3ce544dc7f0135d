/**
 * The records of one call-out: the appliance with its nameplate and components, the complaint, the
 * instruments, what was measured, and the prices. All are immutable and valid once made.
 *
 * <p>Stability: stable.
 */
package kelter.core.job;
