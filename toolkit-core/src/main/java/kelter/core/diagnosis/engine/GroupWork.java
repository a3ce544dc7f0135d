package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicInteger;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.likelihood.Group;
import kelter.core.diagnosis.likelihood.Item;
import kelter.core.diagnosis.likelihood.Priors;

/**
 * Works out what the readings say for each model of one machine, in one thread or several. Models
 * share nothing, and each group has its place, so the result does not tell in how many.
 */
final class GroupWork implements Runnable {

  private final List<FaultModel> models;
  private final List<List<Item>> items;
  private final Priors priors;
  private final EngineSettings settings;
  private final int[] largestFirst;
  private final AtomicInteger next = new AtomicInteger();
  private final Group[] groups;

  /**
   * Gets ready.
   *
   * @param models the models
   * @param items for each of them the readings that it forecasts
   * @param priors the priors of all faults
   * @param settings what is taken for granted
   */
  GroupWork(
      List<FaultModel> models, List<List<Item>> items, Priors priors, EngineSettings settings) {
    this.models = models;
    this.items = items;
    this.priors = priors;
    this.settings = settings;
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

  /** Works on the models, one after the other, that no other thread has begun. */
  @Override
  public void run() {
    for (int place = next.getAndIncrement();
        place < largestFirst.length;
        place = next.getAndIncrement()) {
      int g = largestFirst[place];
      groups[g] = new Group(models.get(g), items.get(g), priors, settings);
    }
  }

  /** All groups, worked out in this thread. */
  List<Group> alone() {
    run();
    return List.of(groups);
  }

  /** All groups, worked out in this thread and as many others as have something to do. */
  List<Group> sideBySide() {
    List<ForkJoinTask<?>> others = new ArrayList<>();
    int helping = Math.min(ForkJoinPool.getCommonPoolParallelism(), models.size() - 1);
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
