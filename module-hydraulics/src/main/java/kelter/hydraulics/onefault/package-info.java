/** Parts with one fault each, whose signs follow from how bad it is: boiler, store and iron. */
package kelter.hydraulics.onefault;
