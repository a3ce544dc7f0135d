/** Work sheets and bags as text. It knows no commands. */
package kelter.cli.sheet;
