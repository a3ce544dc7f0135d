/**
 * The job book in a database, by JDBC: SQLite in one file, or PostgreSQL that several vans share.
 * Only the commands of the book come here; a diagnosis reads what the book taught from a file and
 * loads nothing of this.
 */
package kelter.cli.book;
