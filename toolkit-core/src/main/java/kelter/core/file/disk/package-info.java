/**
 * Files as they are written: whole or not at all, where links lead, with mode and owner kept. It
 * knows no format; everything that Kelter writes into a file goes through {@link
 * kelter.core.file.disk.TextFile}.
 *
 * <p>Stability: internal.
 */
package kelter.core.file.disk;
