/**
 * The text of a log as rows of cells: character set, delimiter, where readings begin, and rows that
 * are none. It does not know what columns hold.
 */
package kelter.core.file.log.row;
