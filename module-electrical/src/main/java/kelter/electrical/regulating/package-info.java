/** Parts that open and close by temperature, steam, level or time. */
package kelter.electrical.regulating;
