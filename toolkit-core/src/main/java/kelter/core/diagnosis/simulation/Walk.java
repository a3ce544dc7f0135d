package kelter.core.diagnosis.simulation;

/**
 * How one machine was measured in some order, until the diagnosis was sure or nothing was left.
 *
 * @param reached whether it was sure
 * @param right whether it was sure of the truth
 * @param readings how many measurements it took
 * @param minutes how long they took
 */
record Walk(boolean reached, boolean right, int readings, double minutes) {}
