package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntFunction;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.likelihood.Group;

/**
 * Works out what the readings say for each model of one machine, in one thread or several. Models
 * share nothing, and each group has its place, so the result does not tell in how many.
 */
final class GroupWork implements Runnable {

  private final int[] largestFirst;
  private final IntFunction<Group> work;
  private final AtomicInteger next = new AtomicInteger();
  private final Group[] groups;

  private GroupWork(List<FaultModel> models, IntFunction<Group> work) {
    this.work = work;
    this.largestFirst = largestFirst(models);
    this.groups = new Group[models.size()];
  }

  private static int[] largestFirst(List<FaultModel> models) {
    int[] order = new int[models.size()];
    for (int g = 0; g < order.length; g++) {
      int place = g;
      int faults = models.get(g).faults().size();
      while (place > 0 && models.get(order[place - 1]).faults().size() < faults) {
        order[place] = order[place - 1];
        place--;
      }
      order[place] = g;
    }
    return order;
  }

  /**
   * Works out one group for each model.
   *
   * @param models the models
   * @param sideBySide whether to use as many threads as have something to do
   * @param work makes the group of a model, by its place; asked by any thread
   */
  static List<Group> of(List<FaultModel> models, boolean sideBySide, IntFunction<Group> work) {
    GroupWork all = new GroupWork(models, work);
    return sideBySide ? all.sideBySide() : all.alone();
  }

  /** Works on the models, one after the other, that no other thread has begun. */
  @Override
  public void run() {
    for (int place = next.getAndIncrement();
        place < largestFirst.length;
        place = next.getAndIncrement()) {
      int g = largestFirst[place];
      groups[g] = work.apply(g);
    }
  }

  /** All groups, worked out in this thread. */
  private List<Group> alone() {
    run();
    return List.of(groups);
  }

  /** All groups, worked out in this thread and as many others as have something to do. */
  private List<Group> sideBySide() {
    List<ForkJoinTask<?>> others = new ArrayList<>();
    int helping = Math.min(ForkJoinPool.getCommonPoolParallelism(), groups.length - 1);
    for (int i = 0; i < helping; i++) {
      others.add(ForkJoinPool.commonPool().submit(this));
    }
    run();
    for (ForkJoinTask<?> other : others) {
      other.join();
    }
    return List.of(groups);
  }
}
