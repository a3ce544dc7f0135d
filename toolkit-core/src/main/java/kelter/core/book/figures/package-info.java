/**
 * What a shop asks its job book: which spares to carry, what an hour must be asked at, what to lay
 * aside for call-backs, how often the first job cures, where time goes, how long a repaired machine
 * runs. Pure functions over the entries; every figure tells from how many jobs it is and its
 * interval of 95 %, and is missing where there are too few.
 *
 * <p>Stability: internal.
 */
package kelter.core.book.figures;
