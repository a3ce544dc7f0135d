package kelter.core.book.learned;

/**
 * How long some work takes.
 *
 * @param times from how many times; old ones count for less than one
 * @param weight how much they count against all work together, 0 to below 1
 * @param median the minutes that half exceed
 * @param mean the mean minutes
 * @param high the minutes that one in twenty exceeds
 */
public record LearnedTime(double times, double weight, double median, double mean, double high) {}
