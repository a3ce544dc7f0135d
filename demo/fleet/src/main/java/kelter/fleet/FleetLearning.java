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
    JavaRDD<Entry> read = lines.map(Entry::of).persist(StorageLevel.MEMORY_AND_DISK_SER());
    JavaRDD<Entry> jobs =
        read.filter(Entry::isUsed)
            .mapToPair(entry -> new Tuple2<>(entry.job(), entry))
            .reduceByKey(Entry::or)
            .values()
            .persist(StorageLevel.MEMORY_AND_DISK_SER());
    JavaRDD<String> wrong =
        read.union(jobs).filter(entry -> !entry.isUsed()).map(Entry::refused);
    BookTally tally = tally(jobs.filter(Entry::isUsed), rule, parts);
    FleetLearning all =
        new FleetLearning(
            tally.learned(Tool.workshop().kinds()::kind), wrong.count(), wrong.takeOrdered(TOLD));
    jobs.unpersist();
    read.unpersist();
    return all;
  }

  private static BookTally tally(JavaRDD<Entry> jobs, LearningRule rule, int parts) {
    JavaPairRDD<String, String> groups =
        Groups.of(
            jobs.flatMapToPair(
                entry ->
                    new Mapped<>(
                        entry.ties().iterator(), tie -> new Tuple2<>(tie, entry.job()))));
    BookTally tally =
        jobs.mapToPair(entry -> new Tuple2<>(entry.job(), entry))
            .leftOuterJoin(groups)
            .values()
            .mapToPair(each -> new Tuple2<>(turn(each._1(), each._2().orElse("")), each._1().text()))
            .repartitionAndSortWithinPartitions(new Turn.Parts(parts))
            .values()
            .mapPartitions(part -> List.of(tally(part, rule)).iterator())
            .treeReduce(BookTally::plus);
    groups.unpersist();
    return tally;
  }

  private static Turn turn(Entry entry, String group) {
    return new Turn(group.isEmpty() ? entry.job() : group, entry.closed(), entry.job());
  }

  private static BookTally tally(Iterator<String> part, LearningRule rule) {
    BookLearning learning = BookLearning.begin(Tool.workshop().kinds()::kind, rule);
    part.forEachRemaining(text -> learning.read(EntryLine.read(text)));
    return learning.tally();
  }
}
