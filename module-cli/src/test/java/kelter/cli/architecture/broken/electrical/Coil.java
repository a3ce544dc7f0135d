package kelter.cli.architecture.broken.electrical;

/** What a neighbour must not know. */
public final class Coil {}
