/**
 * What the owner of a machine wants to know when it comes back: eight points, in plain words. It
 * says what was entered and what nobody has looked at; that the machine may be used is said by the
 * person who did the work.
 *
 * <p>Stability: may change.
 */
package kelter.core.report;
