/** What an instrument log shows, as text for a person: a class for each section. */
package kelter.cli.text.readings;
