package kelter.cli.bench;

import kelter.cli.trial.BookReport;

/** Prints what a job book is worth to the next diagnoses. */
public final class BookTrial {

  private static final int JOBS = 2_000;
  private static final int BOOKS = 8;
  private static final int WORLDS = 3;

  private BookTrial() {}

  /**
   * Prints the tables.
   *
   * @param arguments the number of jobs in the book, 2,000 where none is given, half as many are
   *     diagnosed after it; the seed, 1 where none is given; the number of worlds, 3 where none is
   *     given; the number of books of three jobs of each kind, 8 where none is given
   */
  public static void main(String[] arguments) {
    int jobs = arguments.length > 0 ? Integer.parseInt(arguments[0]) : JOBS;
    long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
    int worlds = arguments.length > 2 ? Integer.parseInt(arguments[2]) : WORLDS;
    int books = arguments.length > 3 ? Integer.parseInt(arguments[3]) : BOOKS;
    BookReport.print(jobs, books, seed, worlds, System.out);
  }
}
