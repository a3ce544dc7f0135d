/**
 * JSON texts of Kelter's files: values that keep their spelling, reading within limits, and every
 * mistake told with its place. It knows no format of its own.
 *
 * <p>Stability: may change.
 */
package kelter.core.file.json;
