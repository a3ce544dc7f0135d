package kelter.core.book.learned;

/**
 * A rate that was learned, with its interval of 95 %.
 *
 * @param cases of how many cases; old ones count for less than one
 * @param weight how much they count against what was taken for granted, 0 to below 1
 * @param rate the mean, 0 to 1
 * @param low the lower end
 * @param high the upper end
 */
public record LearnedRate(double cases, double weight, double rate, double low, double high) {}
