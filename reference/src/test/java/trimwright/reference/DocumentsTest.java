package trimwright.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * The two pages that are written from the tables. To write them anew: {@code mvn -pl reference -am
 * test -Dtest=DocumentsTest -Dtrimwright.write.documents=true
 * -Dsurefire.failIfNoSpecifiedTests=false}.
 */
class DocumentsTest {
  private static final Path DOCS = Path.of("..", "docs");

  @Test
  void thePageOfReferencesIsUpToDate() throws IOException {
    check("references.md", ReferencesPage.markdown(Source.list(), NotInHand.list()));
  }

  @Test
  void thePageOfValidationIsUpToDate() throws IOException {
    check(
        "validation.md",
        ValidationPage.markdown(CheckRunner.checks(), CheckRunner.runAll(), Ledger.shipped()));
  }

  private static void check(String name, String wanted) throws IOException {
    Path file = DOCS.resolve(name);
    String text = wanted.replace("\r\n", "\n");
    if (Boolean.getBoolean("trimwright.write.documents")) {
      Files.writeString(file, text, StandardCharsets.UTF_8);
    }
    assertThat(file).as("docs/%s, which the tables write", name).hasContent(text);
  }
}
