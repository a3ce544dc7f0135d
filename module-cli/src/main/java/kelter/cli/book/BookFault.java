package kelter.cli.book;

import java.sql.SQLException;
import kelter.core.problem.InputException;

/** What went wrong with a book, in words for a person. */
final class BookFault {

  /** Result codes of SQLite (sqlite.org/rescode.html, from memory). */
  private static final int BUSY = 5;

  private static final int LOCKED = 6;
  private static final int READ_ONLY = 8;
  private static final int INPUT_OUTPUT = 10;
  private static final int CORRUPT = 11;
  private static final int FULL = 13;
  private static final int CANNOT_OPEN = 14;
  private static final int NO_DATABASE = 26;

  private static final int PRIMARY = 0xFF;

  private static final String UNTOLD = "what is not told as added was not added";

  private BookFault() {}

  /** The fault of a database as a mistake that can be mended. */
  static InputException of(String book, Dialect dialect, SQLException fault) {
    return dialect == Dialect.SQLITE ? ofFile(book, fault) : ofServer(book, fault);
  }

  /** The fault of a copy of a book in a file: the book is damaged, or the copy cannot be made. */
  static InputException ofCopy(String book, String copy, SQLException fault) {
    boolean isOfBook = (fault.getErrorCode() & PRIMARY) == CORRUPT;
    return ofFile(isOfBook ? book : copy, fault);
  }

  private static InputException ofFile(String book, SQLException fault) {
    return switch (fault.getErrorCode() & PRIMARY) {
      case BUSY, LOCKED ->
          told(book, "is being written by another program", "try again when that is done");
      case READ_ONLY ->
          told(
              book,
              "may not be written, which takes place beside it even to read it",
              "give yourself the right to write file and folder");
      case INPUT_OUTPUT ->
          told(
              book,
              "could not be read or written: the disk is full, your share of it is used up, or it"
                  + " fails",
              "look at the disk; " + UNTOLD);
      case CORRUPT -> told(book, "is damaged", "keep it aside and take the last backup");
      case FULL -> told(book, "the disk is full", "make room and try again; " + UNTOLD);
      case CANNOT_OPEN ->
          told(book, "cannot be opened", "look whether folder and file are there and yours");
      case NO_DATABASE -> told(book, "is no job book", "name the book.db of a shop");
      default -> told(book, plain(fault), "");
    };
  }

  /** By the class of the state (SQL standard; 08 is a connection that failed). */
  private static InputException ofServer(String book, SQLException fault) {
    String state = fault.getSQLState() == null ? "" : fault.getSQLState();
    if (state.startsWith("08") || state.startsWith("57")) {
      return told(
          book,
          "the database cannot be reached or closed the connection: " + plain(fault),
          "look at address, network and server; " + UNTOLD);
    }
    if (state.startsWith("28")) {
      return told(book, "the database refuses the user: " + plain(fault), "");
    }
    if (state.startsWith("53")) {
      return told(book, "the database has no room left", UNTOLD);
    }
    return told(book, plain(fault), "");
  }

  private static String plain(SQLException fault) {
    String message = fault.getMessage() == null ? "the database failed" : fault.getMessage();
    return message.lines().findFirst().orElse("the database failed");
  }

  private static InputException told(String book, String what, String remedy) {
    return new InputException(book, what, remedy);
  }
}
