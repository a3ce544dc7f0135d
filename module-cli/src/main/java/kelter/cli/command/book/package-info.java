/** The job book: entries are added, looked up, learned from and taken elsewhere. */
package kelter.cli.command.book;
