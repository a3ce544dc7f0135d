/** Gaskets, seals and bodies that leak. */
package kelter.electrical.seal;
