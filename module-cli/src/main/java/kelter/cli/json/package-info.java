/** Results as JSON for other programs. The names of the fields are a contract. */
package kelter.cli.json;
