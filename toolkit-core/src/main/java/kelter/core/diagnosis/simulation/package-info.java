/**
 * How good the diagnosis is, tried on machines that are drawn by chance, with what their owners say
 * of them, on right and on wrong forecasts: how often it is right, whether it is right as often as
 * it says (scores and calibration of forecasts), and how soon it knows when it leads the measuring.
 * It knows the engine and the fault models only by their contracts, and never prints.
 *
 * <p>Stability: may change.
 */
package kelter.core.diagnosis.simulation;
