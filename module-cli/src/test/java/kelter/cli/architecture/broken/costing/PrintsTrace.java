package kelter.cli.architecture.broken.costing;

final class PrintsTrace {
  void print(IllegalStateException defect) {
    defect.printStackTrace();
  }
}
