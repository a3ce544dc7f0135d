/**
 * Entries of a job book as files: lines of JSON, tables of comma-separated values, and the tables
 * of the Open Repair Data Standard; and the file of what a book taught. All are hostile until read.
 *
 * <p>Stability: may change.
 */
package kelter.core.file.book;
