package trimwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import trimwright.exchange.write.ModelVersion;

/** Reads the documents that commands print, strictly. */
final class Documents {
  private static final JsonMapper STRICT =
      JsonMapper.builder().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS).build();

  private Documents() {}

  /** A good run's standard output as one document that satisfies its schema and has its heading. */
  static JsonNode of(CommandRun run, String kind) {
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    return read(run.out(), kind);
  }

  /** One document and nothing else, checked against the schema of its kind. */
  static JsonNode read(String text, String kind) {
    JsonNode document = STRICT.readTree(text);
    assertThat(schema(kind).validate(document)).isEmpty();
    assertThat(document.propertyNames()).startsWith("format", "model_version", "case_digest");
    assertThat(document.get("format").asString()).isEqualTo("trimwright-" + kind + "/1");
    assertThat(document.get("model_version").asString()).isEqualTo(ModelVersion.TEXT);
    assertThat(document.get("case_digest").asString()).matches("[0-9a-f]{64}");
    return document;
  }

  private static Schema schema(String kind) {
    String resource = "/trimwright/exchange/output/" + kind + ".schema.json";
    try (InputStream in = ModelVersion.class.getResourceAsStream(resource)) {
      assertThat(in).as(resource).isNotNull();
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(STRICT.readTree(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
