/** Drawings in SVG: the shapes that charts need. It knows no chart. */
package kelter.cli.drawing;
