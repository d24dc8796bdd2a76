/**
 * The one place where text becomes values and values become text: case and wing files, coordinates
 * files, units, and the documents and pictures that the faces show.
 */
module trimwright.exchange {
  requires transitive trimwright.fitting;
  requires transitive trimwright.kernel;
  requires com.networknt.schema;
  requires org.apache.commons.csv;
  requires org.snakeyaml.engine;
  requires tools.jackson.databind;

  exports trimwright.exchange.demo;
  exports trimwright.exchange.picture;
  exports trimwright.exchange.read;
  exports trimwright.exchange.unit;
  exports trimwright.exchange.words;
  exports trimwright.exchange.write;
}
