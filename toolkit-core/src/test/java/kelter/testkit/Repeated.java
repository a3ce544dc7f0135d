package kelter.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Asks the same again, one after another and from two threads at once. */
final class Repeated {

  private static final int THREADS = 2;
  private static final int ROUNDS = 20;

  private Repeated() {}

  /** Whether every answer equals the first. */
  static boolean isSame(Callable<List<String>> question) {
    ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    try {
      List<String> first = question.call();
      if (!question.call().equals(first)) {
        return false;
      }
      CountDownLatch start = new CountDownLatch(THREADS);
      List<Future<Boolean>> answers = new ArrayList<>();
      for (int i = 0; i < THREADS; i++) {
        answers.add(threads.submit(() -> staysSame(question, first, start)));
      }
      for (Future<Boolean> answer : answers) {
        if (!answer.get()) {
          return false;
        }
      }
      return true;
    } catch (ExecutionException failed) {
      return false;
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(interrupted);
    } catch (RuntimeException failed) {
      throw failed;
    } catch (Exception failed) {
      throw new IllegalStateException(failed);
    } finally {
      threads.shutdownNow();
    }
  }

  private static boolean staysSame(
      Callable<List<String>> question, List<String> first, CountDownLatch start) throws Exception {
    start.countDown();
    start.await();
    for (int round = 0; round < ROUNDS; round++) {
      if (!question.call().equals(first)) {
        return false;
      }
    }
    return true;
  }
}
