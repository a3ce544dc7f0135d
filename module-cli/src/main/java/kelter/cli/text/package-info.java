/** Results as text for a person, at most 80 columns wide. */
package kelter.cli.text;
