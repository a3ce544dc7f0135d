/**
 * What the entries of a job book teach, as pure functions over them: shares of causes, chances of
 * symptoms, times, rates of cure and call-back, lives of parts, and how far the shop's own
 * predictions held. Every figure says from how many jobs it comes and how much these count. It
 * knows no database and no file.
 *
 * <p>Only confirmed causes teach. The entries are of jobs that somebody called for, and mostly of
 * jobs that this diagnosis directed: what was not looked at is not known to be in order.
 *
 * <p>Stability: may change.
 */
package kelter.core.book.learning;
