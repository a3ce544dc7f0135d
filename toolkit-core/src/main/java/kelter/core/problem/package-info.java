/** Mistakes in what a person gave, told all at once. */
package kelter.core.problem;
