/**
 * Job files and shop profiles: the only part of the core that touches the disk. Files are hostile
 * until read: limits on size, depth and length hold, and every mistake is told with its place.
 *
 * <p>Stability: may change.
 */
package kelter.core.file;
