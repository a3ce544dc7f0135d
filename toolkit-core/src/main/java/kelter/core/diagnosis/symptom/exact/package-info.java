/**
 * The arithmetic of symptoms, reports and states of groups: exact sums over all joint states and
 * all sets of symptoms, by tables over the subsets of the symptoms that were asked for.
 *
 * <p>Everything adds or multiplies what is not negative, so that no digits are lost, however
 * unlikely the reports are. Sums with signs, as of Heckerman, A tractable inference algorithm for
 * diagnosing multiple diseases (Uncertainty in Artificial Intelligence 1989), are faster and lose
 * up to all digits where several symptoms of small chance are there at once.
 */
package kelter.core.diagnosis.symptom.exact;
