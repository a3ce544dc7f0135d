/**
 * Puts what the fault models of a machine say together and reads from that: the ranking, what to
 * measure next, the order of remedies, the conclusion. Nothing here knows of pumps or heaters.
 *
 * <p>Stability: may change.
 */
package kelter.core.diagnosis.engine;
