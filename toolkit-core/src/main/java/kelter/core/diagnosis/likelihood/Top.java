package kelter.core.diagnosis.likelihood;

import java.util.Arrays;

/**
 * The likelihood of many linked readings, by Laplace's method: the integrand over the shared
 * quantities z is taken for normal about its top, with the curvature that it has there (L. Tierney,
 * J. B. Kadane, J. Am. Stat. Assoc. 81 (1986) 82, equation 2.2 to first order). Any number of the
 * readings may be blunders. The work grows with the number of readings and not with that of the
 * choices of blunders among them.
 *
 * <p>The top is found by weighing each reading with the chance that it is sound, and solving for z
 * (the EM algorithm of a mixture: A. P. Dempster, N. M. Laird, D. B. Rubin, J. R. Stat. Soc. B 39
 * (1977) 1). Where that leaves a doubt of some reading, it is sought from a second start, z by all
 * readings; if they end at two tops both count.
 */
final class Top {

  private static final int STEPS = 30;
  private static final double CLOSE = 1e-5;
  private static final double SAME = 1e-3;
  private static final double LIKELY_SOUND = 0.9;

  private final int readings;
  private final int latents;
  private final double[] sound;
  private final double[] z;
  private final double[] first;
  private final double[][] matrix;
  private final double[] vector;

  Top(int readings, int latents) {
    this.readings = readings;
    this.latents = latents;
    this.sound = new double[readings];
    this.z = new double[latents];
    this.first = new double[latents];
    this.matrix = new double[latents][latents];
    this.vector = new double[latents];
  }

  /**
   * The natural logarithm of the integral over z of the standard normal density times, for each
   * reading m, {@code exp(logPeak) exp(-(r - a z)^2 / 2) + exp(logBlunder)}.
   *
   * @param residual r of each reading
   * @param ratio a of each reading, for each shared quantity
   * @param logPeak of each reading
   * @param logBlunder of each reading
   */
  double log(double[] residual, double[][] ratio, double[] logPeak, double[] logBlunder) {
    Arrays.fill(z, 0);
    double usual = climb(residual, ratio, logPeak, logBlunder);
    if (allAreSound()) {
      return usual;
    }
    System.arraycopy(z, 0, first, 0, latents);
    Arrays.fill(sound, 1);
    solve(residual, ratio);
    double byAll = climb(residual, ratio, logPeak, logBlunder);
    if (isFirst()) {
      return usual;
    }
    double most = Math.max(usual, byAll);
    return most + Math.log(Math.exp(usual - most) + Math.exp(byAll - most));
  }

  private boolean allAreSound() {
    for (double each : sound) {
      if (each < LIKELY_SOUND) {
        return false;
      }
    }
    return true;
  }

  private boolean isFirst() {
    for (int j = 0; j < latents; j++) {
      if (Math.abs(z[j] - first[j]) > SAME) {
        return false;
      }
    }
    return true;
  }

  private double climb(double[] residual, double[][] ratio, double[] logPeak, double[] logBlunder) {
    double moved = 1;
    for (int step = 0; step < STEPS && moved > CLOSE; step++) {
      weigh(residual, ratio, logPeak, logBlunder);
      moved = solve(residual, ratio);
    }
    double height = weigh(residual, ratio, logPeak, logBlunder);
    return height - halfLogCurvature(residual, ratio);
  }

  /** Finds how likely each reading is sound; returns the logarithm of the integrand. */
  private double weigh(double[] residual, double[][] ratio, double[] logPeak, double[] logBlunder) {
    double height = 0;
    for (int j = 0; j < latents; j++) {
      height -= z[j] * z[j] / 2;
    }
    for (int m = 0; m < readings; m++) {
      double off = off(m, residual, ratio);
      double logSound = logPeak[m] - off * off / 2;
      double toBlunder = Math.exp(-Math.abs(logBlunder[m] - logSound));
      height += Math.max(logSound, logBlunder[m]) + Math.log1p(toBlunder);
      sound[m] = (logSound > logBlunder[m] ? 1 : toBlunder) / (1 + toBlunder);
    }
    return height;
  }

  private double off(int m, double[] residual, double[][] ratio) {
    double off = residual[m];
    for (int j = 0; j < latents; j++) {
      off -= ratio[m][j] * z[j];
    }
    return off;
  }

  /** Moves z to where the weighted readings have it; returns the longest way of a part of z. */
  private double solve(double[] residual, double[][] ratio) {
    Arrays.fill(vector, 0);
    unit();
    for (int m = 0; m < readings; m++) {
      add(sound[m], ratio[m]);
      for (int i = 0; i < latents; i++) {
        vector[i] += sound[m] * ratio[m][i] * residual[m];
      }
    }
    eliminate();
    double moved = 0;
    for (int i = latents - 1; i >= 0; i--) {
      double value = vector[i];
      for (int j = i + 1; j < latents; j++) {
        value -= matrix[i][j] * vector[j];
      }
      vector[i] = value / matrix[i][i];
      moved = Math.max(moved, Math.abs(vector[i] - z[i]));
      z[i] = vector[i];
    }
    return moved;
  }

  /**
   * Half the logarithm of the determinant of the curvature at the top. A reading that may be a
   * blunder bends less than a sound one; where that leaves no top, it is left as sound as it is.
   */
  private double halfLogCurvature(double[] residual, double[][] ratio) {
    unit();
    for (int m = 0; m < readings; m++) {
      double off = off(m, residual, ratio);
      add(sound[m] * (1 - (1 - sound[m]) * off * off), ratio[m]);
    }
    double determinant = eliminate();
    if (determinant > 0) {
      return Math.log(determinant) / 2;
    }
    unit();
    for (int m = 0; m < readings; m++) {
      add(sound[m], ratio[m]);
    }
    return Math.log(eliminate()) / 2;
  }

  private void unit() {
    for (int i = 0; i < latents; i++) {
      Arrays.fill(matrix[i], 0);
      matrix[i][i] = 1;
    }
  }

  private void add(double weight, double[] a) {
    for (int i = 0; i < latents; i++) {
      for (int j = 0; j < latents; j++) {
        matrix[i][j] += weight * a[i] * a[j];
      }
    }
  }

  /** Makes the matrix an upper triangle, the vector with it; 0 unless it is positive definite. */
  private double eliminate() {
    double determinant = 1;
    for (int i = 0; i < latents; i++) {
      double pivot = matrix[i][i];
      if (!(pivot > 0)) {
        return 0;
      }
      determinant *= pivot;
      for (int row = i + 1; row < latents; row++) {
        double factor = matrix[row][i] / pivot;
        vector[row] -= factor * vector[i];
        for (int j = i + 1; j < latents; j++) {
          matrix[row][j] -= factor * matrix[i][j];
        }
      }
    }
    return determinant;
  }
}
