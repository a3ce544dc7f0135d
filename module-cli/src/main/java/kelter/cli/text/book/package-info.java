/** The job book in words for a person. */
package kelter.cli.text.book;
