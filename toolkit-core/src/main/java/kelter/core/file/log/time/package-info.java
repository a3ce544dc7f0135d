/**
 * What headings and cells of a column of a log tell of times. It does not know what is made out of
 * several columns.
 */
package kelter.core.file.log.time;
