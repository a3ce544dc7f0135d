/**
 * What the lock-out table means for a machine: what a complaint, a reading or the kind does to what
 * may be proposed, and what releases it. It knows no module, no file and no diagnosis; {@link
 * kelter.core.workshop} applies it.
 *
 * <p>Stability: may change.
 */
package kelter.core.safety.lockout;
