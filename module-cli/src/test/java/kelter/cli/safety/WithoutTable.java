package kelter.cli.safety;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.List;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.FaultHistory;
import kelter.core.diagnosis.Knowledge;
import kelter.core.diagnosis.engine.DiagnosisEngine;
import kelter.core.job.Job;
import kelter.core.workshop.Case;

/**
 * What the engine would propose on a machine if there were no lock-out table. No program can ask
 * for it; this test breaks in.
 */
final class WithoutTable {

  private WithoutTable() {}

  static List<Diagnosis.NextMeasurement> next(Case machine) {
    try {
      Knowledge knowledge = (Knowledge) call(Case.class, "knowledge", machine);
      Object known = call(Case.class, "known", machine);
      EngineSettings settings = (EngineSettings) call(known.getClass(), "settings", known);
      Method weighed =
          Class.forName("kelter.core.workshop.Locking").getDeclaredMethod("weighed", Job.class);
      weighed.setAccessible(true);
      Job job = (Job) weighed.invoke(null, machine.job());
      return new DiagnosisEngine(settings, FaultHistory.NONE, true).diagnose(job, knowledge).next();
    } catch (ReflectiveOperationException changed) {
      throw new AssertionError(changed);
    }
  }

  private static Object call(Class<?> type, String method, Object on)
      throws NoSuchMethodException, IllegalAccessException, InvocationTargetException {
    Method called = type.getDeclaredMethod(method);
    called.setAccessible(true);
    return called.invoke(on);
  }
}
