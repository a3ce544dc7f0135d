/**
 * What a diagnosis says, for a person: the ranking, why a fault, and what if a reading were other.
 */
package kelter.cli.diagnosis;
