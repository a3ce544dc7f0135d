/**
 * Instrument logs as files: what stands in them is recognised and told, and they are read once,
 * from front to back, in little room. A mistake is told with its row and column. It knows no job.
 *
 * <p>Stability: may change.
 */
package kelter.core.file.log;
