/** The one solver of this module. It knows numbers only. */
package kelter.hydraulics.solve;
