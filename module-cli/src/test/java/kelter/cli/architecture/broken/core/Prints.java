package kelter.cli.architecture.broken.core;

final class Prints {
  void print() {
    System.out.println("never run");
  }
}
