/**
 * Instruments and ways of measuring that are typical of their class, for jobs that do not describe
 * their own and for telling which better one would settle a finding. It knows no shop and no maker:
 * the names are invented.
 *
 * <p>Stability: may change.
 */
package kelter.core.instrument;
