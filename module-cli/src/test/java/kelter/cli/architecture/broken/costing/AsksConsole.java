package kelter.cli.architecture.broken.costing;

final class AsksConsole {
  boolean isThere() {
    return System.console() != null;
  }
}
