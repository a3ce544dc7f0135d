/**
 * Weighs the states of a machine by its readings. A model is weighed in a {@code Group}, all groups
 * are put together in a {@code JointPosterior}, and the rest reads from that: the ranking, what to
 * measure next, the order of remedies, the conclusion. Nothing here knows of pumps or heaters.
 */
package kelter.core.diagnosis.engine;
