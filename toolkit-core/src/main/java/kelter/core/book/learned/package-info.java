/**
 * What a job book taught, as figures that each say from how many jobs they come and how much these
 * count, and how they take the place of the tables of a kind of machine. It knows neither the
 * entries nor any file.
 *
 * <p>Stability: may change.
 */
package kelter.core.book.learned;
