/**
 * Instrument logs as numbers: samples over time, condensed as they come, the windows in which they
 * stand still, and what such a window is worth as a reading. It knows nothing of files, columns of
 * text, jobs or units: values are in the unit of the log, times in s from a start of one's own.
 *
 * <p>Stability: may change.
 */
package kelter.core.log;
