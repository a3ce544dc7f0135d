/**
 * The contract test kit for modules, ours and outside ones. A module passes it by a small subclass
 * of {@link kelter.testkit.ModuleContract}; the rules by themselves return what they found, so that
 * a test can show that each of them can fail. {@link kelter.testkit.ContractRun} runs it without a
 * test runner, so that it cannot be passed over.
 *
 * <p>Nothing here knows of any particular module. Not covered: what a weigher answers, whether a
 * figure is right.
 */
package kelter.testkit;
