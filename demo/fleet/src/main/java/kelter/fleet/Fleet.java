package kelter.fleet;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import kelter.core.file.book.LearnedFile;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import org.apache.hadoop.mapred.FileAlreadyExistsException;
import org.apache.hadoop.mapreduce.lib.input.InvalidInputException;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;

/** The program: learns from entries of job books, or diagnoses jobs. */
public final class Fleet {

  private Fleet() {}

  /**
   * Runs on the cluster that {@code spark-submit} names, or in this process where it is told so by
   * {@code -Dspark.master=local[2]}.
   *
   * @param words what to do; without any, what can be done is told
   */
  public static void main(String[] words) {
    int code;
    try (JavaSparkContext spark = new JavaSparkContext(configuration())) {
      spark.setLogLevel("WARN");
      code = run(spark, Orders.of(words, LocalDate.now(), spark.defaultParallelism()));
    } catch (InputException mistakes) {
      mistakes.problems().stream().map(Problem::display).forEach(System.err::println);
      code = 1;
    }
    if (code != 0) {
      System.exit(code);
    }
  }

  /** What Spark is told in any case; all else comes from outside. */
  static SparkConf configuration() {
    return new SparkConf().setIfMissing("spark.app.name", "kelter-fleet");
  }

  private static int run(JavaSparkContext spark, Orders orders) {
    try {
      return orders.isLearning() ? learn(spark, orders) : diagnose(spark, orders);
    } catch (Exception failed) {
      throw told(failed);
    }
  }

  static int learn(JavaSparkContext spark, Orders orders) {
    FleetLearning all =
        FleetLearning.of(Line.in(spark, orders.from()), orders.rule(), orders.parts());
    LearnedFile.write(all.learned(), Path.of(orders.to()));
    all.told().forEach(System.err::println);
    if (all.refused() > all.told().size()) {
      System.err.println(
          all.refused() - all.told().size() + " more mistakes are not told one by one.");
    }
    System.out.printf(
        "Learned from %d jobs; %d lines or jobs could not be used.%n",
        all.learned().jobs(), all.refused());
    return all.refused() == 0 ? 0 : 1;
  }

  static int diagnose(JavaSparkContext spark, Orders orders) {
    Optional<String> learned = orders.learned().map(file -> file.getFileName().toString());
    orders.learned().ifPresent(file -> LearnedFile.read(file));
    orders.learned().ifPresent(file -> spark.addFile(file.toString()));
    FleetDiagnosis.of(Line.in(spark, orders.from()), learned, orders.parts())
        .saveAsTextFile(orders.to());
    return 0;
  }

  /** Where data is not where it should be, that is no failure of the program. */
  private static RuntimeException told(Exception failed) {
    if (failed instanceof InvalidInputException || failed instanceof FileAlreadyExistsException) {
      return new InputException("", failed.getMessage(), "");
    }
    return failed instanceof RuntimeException mistake ? mistake : new IllegalStateException(failed);
  }
}
