package kelter.core.book;

/**
 * An entry and how like it is to what was looked for.
 *
 * @param entry the entry
 * @param points how like, by {@link Likeness}
 */
public record Similar(BookEntry entry, double points) {}
