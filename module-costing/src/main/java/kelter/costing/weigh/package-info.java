/**
 * Weighs the options of a diagnosed job: which there are, what each may turn out to cost, and how
 * often each is the cheapest. Not for use from outside; the module hands out the weigher.
 */
package kelter.costing.weigh;
