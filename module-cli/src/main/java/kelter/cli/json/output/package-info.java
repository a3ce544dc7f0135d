/** How a result becomes a JSON text. It knows no result. */
package kelter.cli.json.output;
