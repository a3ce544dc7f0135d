/** What hobs alone have: the glass, the coils under it and the fan that cools their electronics. */
package kelter.electrical.hob;
