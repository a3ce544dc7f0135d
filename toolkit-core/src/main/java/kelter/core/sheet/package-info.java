/**
 * What a technician takes along and does, in order: the bag and the work sheet of a case. The steps
 * are data; power and isolation come from the lock-out table.
 *
 * <p>Stability: may change.
 */
package kelter.core.sheet;
