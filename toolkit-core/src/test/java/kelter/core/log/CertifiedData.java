package kelter.core.log;

/**
 * Data sets of the NIST Statistical Reference Datasets (StRD), univariate summary statistics, with
 * their certified values. The data of Michelso, Mavro and Lew and all certified values were taken
 * second-hand, from the tests of other programs that quote the files of NIST; NumAcc1 to NumAcc4
 * are made as the files describe them.
 *
 * @param name the name of the file
 * @param samples the data
 * @param mean the certified mean
 * @param standardDeviation the certified standard deviation
 * @param autocorrelation the certified autocorrelation coefficient at lag 1
 * @param digits to how many digits double arithmetic can come: fewer where the data are nearly
 *     equal beside their size
 */
record CertifiedData(
    String name,
    double[] samples,
    double mean,
    double standardDeviation,
    double autocorrelation,
    int digits) {

  @Override
  public String toString() {
    return name;
  }

  static CertifiedData[] all() {
    return new CertifiedData[] {
      new CertifiedData(
          "Michelso", MICHELSO, 299.852400000000, 0.0790105478190518, 0.535199668621283, 12),
      new CertifiedData(
          "Mavro", MAVRO, 2.00185600000000, 0.000429123454003053, 0.937989183438248, 11),
      new CertifiedData("Lew", LEW, -177.435000000000, 277.332168044316, -0.307304800605679, 14),
      new CertifiedData(
          "NumAcc1", new double[] {10000001, 10000003, 10000002}, 10000002, 1, -0.5, 14),
      new CertifiedData("NumAcc2", alternating(1), 1.2, 0.1, -0.999, 13),
      new CertifiedData("NumAcc3", alternating(1000000), 1000000.2, 0.1, -0.999, 9),
      new CertifiedData("NumAcc4", alternating(10000000), 10000000.2, 0.1, -0.999, 8)
    };
  }

  /** One value in the middle, then one tenth below and one above it, five hundred times. */
  private static double[] alternating(double whole) {
    double[] samples = new double[1001];
    samples[0] = whole + 0.2;
    for (int i = 1; i < samples.length; i++) {
      samples[i] = whole + (i % 2 == 1 ? 0.1 : 0.3);
    }
    return samples;
  }

  private static final double[] MICHELSO = {
    299.85, 299.74, 299.90, 300.07, 299.93, 299.85, 299.95, 299.98, 299.98, 299.88, 300.00, 299.98,
    299.93, 299.65, 299.76, 299.81, 300.00, 300.00, 299.96, 299.96, 299.96, 299.94, 299.96, 299.94,
    299.88, 299.80, 299.85, 299.88, 299.90, 299.84, 299.83, 299.79, 299.81, 299.88, 299.88, 299.83,
    299.80, 299.79, 299.76, 299.80, 299.88, 299.88, 299.88, 299.86, 299.72, 299.72, 299.62, 299.86,
    299.97, 299.95, 299.88, 299.91, 299.85, 299.87, 299.84, 299.84, 299.85, 299.84, 299.84, 299.84,
    299.89, 299.81, 299.81, 299.82, 299.80, 299.77, 299.76, 299.74, 299.75, 299.76, 299.91, 299.92,
    299.89, 299.86, 299.88, 299.72, 299.84, 299.85, 299.85, 299.78, 299.89, 299.84, 299.78, 299.81,
    299.76, 299.81, 299.79, 299.81, 299.82, 299.85, 299.87, 299.87, 299.81, 299.74, 299.81, 299.94,
    299.95, 299.80, 299.81, 299.87
  };

  private static final double[] MAVRO = {
    2.00180, 2.00170, 2.00180, 2.00190, 2.00180, 2.00170, 2.00150, 2.00140, 2.00150, 2.00150,
    2.00170, 2.00180, 2.00180, 2.00190, 2.00190, 2.00210, 2.00200, 2.00160, 2.00140, 2.00130,
    2.00130, 2.00150, 2.00150, 2.00160, 2.00150, 2.00140, 2.00130, 2.00140, 2.00150, 2.00140,
    2.00150, 2.00160, 2.00150, 2.00160, 2.00190, 2.00200, 2.00200, 2.00210, 2.00220, 2.00230,
    2.00240, 2.00250, 2.00270, 2.00260, 2.00260, 2.00260, 2.00270, 2.00260, 2.00250, 2.00240
  };

  private static final double[] LEW = {
    -213, -564, -35, -15, 141, 115, -420, -360, 203, -338, -431, 194, -220, -513, 154, -125, -559,
    92, -21, -579, -52, 99, -543, -175, 162, -457, -346, 204, -300, -474, 164, -107, -572, -8, 83,
    -541, -224, 180, -420, -374, 201, -236, -531, 83, 27, -564, -112, 131, -507, -254, 199, -311,
    -495, 143, -46, -579, -90, 136, -472, -338, 202, -287, -477, 169, -124, -568, 17, 48, -568,
    -135, 162, -430, -422, 172, -74, -577, -13, 92, -534, -243, 194, -355, -465, 156, -81, -578,
    -64, 139, -449, -384, 193, -198, -538, 110, -44, -577, -6, 66, -552, -164, 161, -460, -344, 205,
    -281, -504, 134, -28, -576, -118, 156, -437, -381, 200, -220, -540, 83, 11, -568, -160, 172,
    -414, -408, 188, -125, -572, -32, 139, -492, -321, 205, -262, -504, 142, -83, -574, 0, 48, -571,
    -106, 137, -501, -266, 190, -391, -406, 194, -186, -553, 83, -13, -577, -49, 103, -515, -280,
    201, 300, -506, 131, -45, -578, -80, 138, -462, -361, 201, -211, -554, 32, 74, -533, -235, 187,
    -372, -442, 182, -147, -566, 25, 68, -535, -244, 194, -351, -463, 174, -125, -570, 15, 72, -550,
    -190, 172, -424, -385, 198, -218, -536, 96
  };
}
