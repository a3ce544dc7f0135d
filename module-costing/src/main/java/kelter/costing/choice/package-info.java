/**
 * What can be done about a diagnosed machine, what it costs today and how it may turn out. It knows
 * nothing of what follows over the years. Not for use from outside.
 */
package kelter.costing.choice;
