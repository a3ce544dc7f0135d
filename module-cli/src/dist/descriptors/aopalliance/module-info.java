/** The interception interfaces that Guice refers to; their jar has no descriptor of its own. */
module aopalliance {
  exports org.aopalliance.aop;
  exports org.aopalliance.intercept;
}
