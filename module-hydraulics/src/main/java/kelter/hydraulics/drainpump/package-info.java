/**
 * The way of the water out: strainer, drain pump, check valve, hose. Its words, its physics, what
 * is held against limits on it, and what can be wrong. It knows nothing of the other parts.
 */
package kelter.hydraulics.drainpump;
