package trimwright.exchange.write;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class OutputSchemaTest {

  private static Schema schema(OutputSchema schema) {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(schema.text(), InputFormat.JSON);
  }

  @ParameterizedTest
  @EnumSource(OutputSchema.class)
  void everyDocumentSatisfiesItsSchema(OutputSchema kind) {
    Schema schema = schema(kind);
    assertThat(Documents.json().get(kind))
        .isNotEmpty()
        .allSatisfy(text -> assertThat(schema.validate(text, InputFormat.JSON)).isEmpty());
  }

  @ParameterizedTest
  @EnumSource(OutputSchema.class)
  void aDocumentOfAnotherKindIsRefused(OutputSchema kind) {
    Schema schema = schema(kind);
    Documents.json()
        .forEach(
            (other, texts) -> {
              if (other != kind) {
                assertThat(schema.validate(texts.get(0), InputFormat.JSON)).isNotEmpty();
              }
            });
  }

  @Test
  void aMissingOrRenamedNumberIsRefused() {
    String text = Documents.curve(Samples.curve());
    assertThat(
            schema(OutputSchema.CURVE)
                .validate(text.replace("\"thrust_n\"", "\"thrust\""), InputFormat.JSON))
        .isNotEmpty();
  }

  @Test
  void aSplitBesideNoSplitIsRefused() {
    String text =
        Documents.cause(Samples.caseFile())
            .replaceFirst("\"foot_share\" : \\{[^}]*}", "\"foot_share\" : null");
    assertThat(schema(OutputSchema.CAUSE).validate(text, InputFormat.JSON)).isNotEmpty();
  }
}
