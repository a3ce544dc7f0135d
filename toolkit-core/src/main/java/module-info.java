/**
 * The core of Kelter: records of appliances, faults, measurements and jobs, quantities with
 * uncertainty, checks, the diagnosis engine, the contract for modules, and job files.
 *
 * <p>It can be used by itself, without a container and without a terminal. Only the packages under
 * {@code kelter.core.file} touch the disk.
 */
// The parts to which internal packages are open come after this one.
@SuppressWarnings("module")
module kelter.core {
  requires com.fasterxml.jackson.core;
  requires org.apache.commons.csv;
  requires org.apache.commons.numbers.gamma;
  requires org.apache.commons.numbers.rootfinder;
  requires org.apache.commons.rng.api;
  requires org.apache.commons.rng.core;
  requires org.apache.commons.rng.sampling;
  requires org.apache.commons.statistics.distribution;

  exports kelter.core.book;
  exports kelter.core.book.figures to
      kelter.cli;
  exports kelter.core.book.learned;
  exports kelter.core.book.learning;
  exports kelter.core.catalogue;
  exports kelter.core.check;
  exports kelter.core.diagnosis;
  exports kelter.core.diagnosis.engine;
  exports kelter.core.diagnosis.model;
  exports kelter.core.diagnosis.simulation;
  exports kelter.core.file.book;
  exports kelter.core.file.catalogue;
  exports kelter.core.file.disk to
      kelter.cli;
  exports kelter.core.file.job;
  exports kelter.core.file.json;
  exports kelter.core.file.log;
  exports kelter.core.file.person to
      kelter.cli;
  exports kelter.core.file.shop;
  exports kelter.core.instrument;
  exports kelter.core.job;
  exports kelter.core.job.rule to
      kelter.cli;
  exports kelter.core.job.work;
  exports kelter.core.law;
  exports kelter.core.log;
  exports kelter.core.log.change;
  exports kelter.core.log.measurement;
  exports kelter.core.module;
  exports kelter.core.numeric to
      kelter.costing,
      kelter.electrical,
      kelter.hydraulics;
  exports kelter.core.option;
  exports kelter.core.owner;
  exports kelter.core.problem;
  exports kelter.core.proof;
  exports kelter.core.quantity;
  exports kelter.core.quote;
  exports kelter.core.report;
  exports kelter.core.safety;
  exports kelter.core.safety.lockout;
  exports kelter.core.safety.lockout.table;
  exports kelter.core.session;
  exports kelter.core.sheet;
  exports kelter.core.shop;
  exports kelter.core.source;
  exports kelter.core.text to
      kelter.cli;
  exports kelter.core.uncertainty;
  exports kelter.core.uncertainty.montecarlo;
  exports kelter.core.vocabulary;
  exports kelter.core.workshop;
  exports kelter.core.workshop.book to
      kelter.cli;
}
