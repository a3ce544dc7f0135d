/** What can hurt at electrical parts, in words. Not exported. */
package kelter.electrical.caution;
