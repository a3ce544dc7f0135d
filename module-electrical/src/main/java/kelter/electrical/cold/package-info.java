/** What starts a compressor and what thaws its evaporator; the sealed circuit is out of reach. */
package kelter.electrical.cold;
