/**
 * Whether stated probabilities hold: scores of forecasts against what turned out to be true. It
 * knows numbers only, nothing of faults, jobs or the engine that made the forecasts.
 */
package kelter.core.diagnosis.calibration;
