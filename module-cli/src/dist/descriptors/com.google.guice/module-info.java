/** Guice, whose jar has a reserved module name but no descriptor; a runtime image needs one. */
module com.google.guice {
  requires transitive aopalliance;
  requires transitive com.google.common;
  requires transitive jakarta.inject;
  requires java.logging;

  exports com.google.inject;
  exports com.google.inject.binder;
  exports com.google.inject.matcher;
  exports com.google.inject.multibindings;
  exports com.google.inject.name;
  exports com.google.inject.spi;
  exports com.google.inject.util;
}
