/**
 * What the contract test kit tries on a module as a whole: readings of all sizes, other languages,
 * calls in another order, the clock, and the modules beside which it will be loaded.
 */
package kelter.testkit.trial;
