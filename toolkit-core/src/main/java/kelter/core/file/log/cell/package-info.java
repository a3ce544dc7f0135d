/**
 * The cells of an instrument log by themselves: figures, times, units, and the marks in their
 * place, as instruments write them. It knows no file and no column.
 */
package kelter.core.file.log.cell;
