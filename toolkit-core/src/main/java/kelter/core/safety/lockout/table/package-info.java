/**
 * What stands in the lock-out table: its rows, when each holds and until when, and the steps back
 * to power. It knows no machine; {@link kelter.core.safety.lockout} holds machines against it.
 *
 * <p>Stability: may change.
 */
package kelter.core.safety.lockout.table;
