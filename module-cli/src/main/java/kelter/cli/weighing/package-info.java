/**
 * Repair or replace, told to the owner: in words and figures, in pictures of plain characters, and
 * as a drawing. It computes nothing and asks no module.
 */
package kelter.cli.weighing;
