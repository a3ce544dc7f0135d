package kelter.fleet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.spark.api.java.JavaPairRDD;
import org.apache.spark.storage.StorageLevel;
import scala.Tuple2;

/**
 * Which jobs belong together because ties lead from one to the other, over however many between
 * them. Large and small stars take turns until each job is joined to the least one of its group
 * alone (Kiveris et al., Connected components in MapReduce and beyond, SoCC 2014, from memory). The
 * rounds grow with the logarithm of what hangs together, and no machine has to hold it all.
 */
final class Groups {

  private Groups() {}

  /**
   * Groups of jobs.
   *
   * @param ties by a tie the job that has it
   * @return by a job the least job of its group; jobs that are alone, and the least ones
   *     themselves, are left out
   */
  static JavaPairRDD<String, String> of(JavaPairRDD<String, String> ties) {
    JavaPairRDD<String, String> edges =
        kept(ties.groupByKey().flatMapToPair(each -> star(set(each._2()), "").iterator()));
    while (true) {
      JavaPairRDD<String, String> next = kept(smallStars(largeStars(edges)));
      boolean isDone = next.count() == edges.count() && next.subtract(edges).isEmpty();
      edges.unpersist();
      edges = next;
      if (isDone) {
        return edges;
      }
    }
  }

  private static JavaPairRDD<String, String> kept(JavaPairRDD<String, String> edges) {
    return edges.distinct().persist(StorageLevel.MEMORY_AND_DISK_SER());
  }

  /** Each greater neighbour of a job is joined to the least of all its neighbours. */
  private static JavaPairRDD<String, String> largeStars(JavaPairRDD<String, String> edges) {
    return edges
        .flatMapToPair(edge -> List.of(edge, edge.swap()).iterator())
        .groupByKey()
        .flatMapToPair(
            each -> {
              Set<String> all = set(each._2());
              all.add(each._1());
              return star(all, each._1()).iterator();
            })
        .distinct();
  }

  /** A job and its lesser neighbours are joined to the least of them; edges go from the greater. */
  private static JavaPairRDD<String, String> smallStars(JavaPairRDD<String, String> edges) {
    return edges
        .groupByKey()
        .flatMapToPair(
            each -> {
              Set<String> all = set(each._2());
              all.add(each._1());
              return star(all, "").iterator();
            });
  }

  private static Set<String> set(Iterable<String> jobs) {
    Set<String> set = new HashSet<>();
    jobs.forEach(set::add);
    return set;
  }

  /** From those jobs that come after one to the least of all. */
  private static List<Tuple2<String, String>> star(Set<String> jobs, String after) {
    String least = jobs.stream().min(String::compareTo).orElseThrow();
    List<Tuple2<String, String>> edges = new ArrayList<>();
    for (String each : jobs) {
      if (!each.equals(least) && each.compareTo(after) > 0) {
        edges.add(new Tuple2<>(each, least));
      }
    }
    return edges;
  }
}
