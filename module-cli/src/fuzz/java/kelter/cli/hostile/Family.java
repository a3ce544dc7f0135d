package kelter.cli.hostile;

/** A kind of hostile input. */
interface Family {

  /** The next input. */
  Attempt draw(Chance chance);
}
