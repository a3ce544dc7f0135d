/** What a shop keeps for all its jobs: its folder, its persons, and models of machines. */
package kelter.cli.command.shop;
