/** What counts or feels the flow of the water. */
package kelter.hydraulics.flowmeter;
