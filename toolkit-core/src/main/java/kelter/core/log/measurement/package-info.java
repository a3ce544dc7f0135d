/**
 * From an instrument log to measurements of a job: what the log shows ({@link
 * kelter.core.log.measurement.LogReport}), which stretches and columns are meant, and what they are
 * worth with their instrument ({@link kelter.core.log.measurement.LogReader}). It knows neither how
 * results are shown nor how a job is written.
 *
 * <p>Stability: may change.
 */
package kelter.core.log.measurement;
