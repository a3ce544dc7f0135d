package kelter.core.book.learned;

/**
 * A share that was learned.
 *
 * @param share the share among calls at the typical age of the kind, 0 to 1
 * @param table the share by the table
 * @param jobs how many jobs had the cause; old ones count for less than one
 */
public record LearnedShare(double share, double table, double jobs) {}
