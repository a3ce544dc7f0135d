/** What can hurt at parts that water or air runs through, in words. Not exported. */
package kelter.hydraulics.caution;
