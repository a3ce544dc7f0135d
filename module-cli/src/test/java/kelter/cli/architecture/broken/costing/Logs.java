package kelter.cli.architecture.broken.costing;

final class Logs {
  void log() {
    System.getLogger("never").log(System.Logger.Level.INFO, "run");
  }
}
