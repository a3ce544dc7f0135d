package kelter.core.book.learned;

/**
 * A chance that was learned.
 *
 * @param chance 0 to 1
 * @param answers from how many answers; old ones count for less than one
 * @param weight how much they count against the table, 0 to below 1
 */
public record LearnedChance(double chance, double answers, double weight) {}
