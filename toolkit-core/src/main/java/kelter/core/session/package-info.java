/**
 * A case that is led: what is asked next, what an answer does, and how it is taken back. It knows
 * no terminal and writes no file; whoever shows it keeps its content.
 *
 * <p>Stability: may change.
 */
package kelter.core.session;
