/**
 * Machines that differ from what the engine is told of them, for trying how far that misleads it.
 * It knows nothing of how they are drawn or counted.
 */
package kelter.core.diagnosis.simulation.wrong;
