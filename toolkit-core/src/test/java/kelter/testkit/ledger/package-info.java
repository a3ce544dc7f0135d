/**
 * A ledger of what a module computes: for each calculation its source and standing, and the test
 * that holds it against something outside the project, or the reason why none does. What is in it
 * is declared beside the tests ({@link kelter.testkit.ledger.OutsideCheck}, {@link
 * kelter.testkit.ledger.NoOutsideCheck}); the page is made from that.
 */
package kelter.testkit.ledger;
