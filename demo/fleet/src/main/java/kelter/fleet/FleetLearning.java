package kelter.fleet;

import java.util.Iterator;
import java.util.List;
import kelter.core.book.learned.Learned;
import kelter.core.book.learning.BookLearning;
import kelter.core.book.learning.BookTally;
import kelter.core.book.learning.LearningRule;
import kelter.core.file.book.EntryLine;
import org.apache.spark.api.java.JavaPairRDD;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.storage.StorageLevel;
import scala.Tuple2;

/**
 * What entries of many books teach together.
 *
 * @param learned what they teach
 * @param refused how many lines, or jobs, cannot be used
 * @param told what is wrong with the first of them
 */
record FleetLearning(Learned learned, long refused, List<String> told) {

  private static final int TOLD = 20;

  /**
   * Learns.
   *
   * @param lines the entries
   * @param rule how entries count
   * @param parts into how many parts they are put, each learned from by itself; 1 or more
   */
  static FleetLearning of(JavaRDD<Line> lines, LearningRule rule, int parts) {
    JavaPairRDD<String, Entry> all =
        lines
            .mapToPair(line -> Entry.of(line).keyed())
            .reduceByKey(Entry::or)
            .persist(StorageLevel.MEMORY_AND_DISK());
    JavaRDD<String> wrong = all.values().filter(entry -> !entry.isUsed()).map(Entry::refused);
    BookTally tally = tally(all.filter(each -> each._2().isUsed()), rule, parts);
    FleetLearning learning =
        new FleetLearning(
            tally.learned(Tool.workshop().kinds()::kind), wrong.count(), wrong.takeOrdered(TOLD));
    all.unpersist();
    return learning;
  }

  private static BookTally tally(JavaPairRDD<String, Entry> jobs, LearningRule rule, int parts) {
    JavaPairRDD<String, String> groups =
        Groups.of(
            jobs.flatMapToPair(
                job ->
                    new Mapped<>(job._2().ties().iterator(), tie -> new Tuple2<>(tie, job._1()))));
    BookTally tally =
        jobs.leftOuterJoin(groups)
            .mapToPair(
                job -> {
                  Entry entry = job._2()._1();
                  String group = job._2()._2().orElse(job._1());
                  return new Tuple2<>(new Turn(group, entry.closed(), job._1()), entry.text());
                })
            .repartitionAndSortWithinPartitions(new Turn.Parts(parts))
            .values()
            .mapPartitions(part -> List.of(tally(part, rule)).iterator())
            .treeReduce(BookTally::plus);
    groups.unpersist();
    return tally;
  }

  private static BookTally tally(Iterator<String> part, LearningRule rule) {
    BookLearning learning = BookLearning.begin(Tool.workshop().kinds()::kind, rule);
    part.forEachRemaining(text -> learning.read(EntryLine.read(text)));
    return learning.tally();
  }
}
