/**
 * Job files: a job read with the content of its file, and changed so that every other byte stays.
 * Files are hostile until read: limits on size, depth and length hold, and every mistake is told
 * with its place.
 *
 * <p>Stability: may change.
 */
package kelter.core.file.job;
