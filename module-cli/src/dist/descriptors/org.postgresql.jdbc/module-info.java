/** The driver of PostgreSQL, whose jar has a reserved module name but no descriptor. */
module org.postgresql.jdbc {
  requires java.logging;
  requires java.management;
  requires java.naming;
  requires java.security.jgss;
  requires java.security.sasl;
  requires java.transaction.xa;
  requires transitive java.sql;

  exports org.postgresql;

  provides java.sql.Driver with
      org.postgresql.Driver;
}
