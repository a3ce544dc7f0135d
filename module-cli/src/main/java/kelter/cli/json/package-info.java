/**
 * Results as JSON for other programs. The names of the members are a contract, which the JSON
 * Schemas beside this package hold; they are kebab-case.
 */
package kelter.cli.json;
