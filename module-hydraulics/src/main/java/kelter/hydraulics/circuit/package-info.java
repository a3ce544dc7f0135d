/**
 * A pump with its motor against a hose, a lift and jets: the one point at which they agree, from
 * which flow rate, head, speed and power all follow. It knows nothing of jobs or of the names of
 * faults; what is wrong with a pump comes in as figures.
 *
 * <p>Stability: may change.
 */
package kelter.hydraulics.circuit;
