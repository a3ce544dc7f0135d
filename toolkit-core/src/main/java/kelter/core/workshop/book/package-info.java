/** What a closed case tells a job book. */
package kelter.core.workshop.book;
