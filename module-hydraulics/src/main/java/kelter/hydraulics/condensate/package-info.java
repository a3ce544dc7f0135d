/**
 * The way of water without pressure: condensate hoses, hoses inside a machine, drains, the
 * condensate pump. Words, checks and faults; chances, spreads and thresholds are from memory.
 */
package kelter.hydraulics.condensate;
