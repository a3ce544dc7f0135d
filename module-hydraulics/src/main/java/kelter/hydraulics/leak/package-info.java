/** Parts that hold water, and what shows that they no longer do. */
package kelter.hydraulics.leak;
