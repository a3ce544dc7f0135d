/**
 * The circuit of the wash water: filter, wash pump, passage, jets. Its words, its physics, what is
 * held against limits on it, and what can be wrong. It knows nothing of the other parts.
 */
package kelter.hydraulics.washpump;
