/**
 * The lock-out table: what a complaint, a reading or the kind of a machine does to what may be
 * proposed. It knows no module, no file and no diagnosis; {@link kelter.core.workshop} applies it.
 *
 * <p>Stability: may change.
 */
package kelter.core.safety.lockout;
