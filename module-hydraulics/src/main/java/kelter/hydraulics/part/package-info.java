/** What the parts that water runs through share. It knows no part. */
package kelter.hydraulics.part;
