/** What doses detergent, softener and rinse aid. */
package kelter.hydraulics.dosing;
