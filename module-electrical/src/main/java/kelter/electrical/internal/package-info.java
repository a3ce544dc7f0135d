/** How the laws of this module refuse a figure. Not exported. */
package kelter.electrical.internal;
