package trimwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Matcher;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.Reading;
import trimwright.exchange.read.SectionFiles;

class CaseShelfTest {
  @TempDir private Path place;
  private Path shop;
  private CaseShelf shelf;

  @BeforeEach
  void open() {
    shop = place.resolve("shop");
    shelf = new CaseShelf(shop);
  }

  private static CaseFile named(String name) {
    String quoted = Matcher.quoteReplacement("name: \"" + name + "\"");
    String text = DemoCases.list().get(1).text().replaceAll("(?m)^name:.*$", quoted);
    return CaseReader.read(text, SectionFiles.NONE).findValue().orElseThrow();
  }

  @Test
  void nothingIsMadeBeforeTheFirstSave() {
    assertThat(shelf.list()).isEmpty();
    assertThat(shelf.find("anything")).isEmpty();
    assertThat(shop).doesNotExist();
  }

  @Test
  void aSavedCaseComesBackAsTheSame() {
    CaseFile saved = named("Ana on Tuesday");
    CaseShelf.Outcome outcome = shelf.save(saved, false);
    assertThat(outcome).isEqualTo(new CaseShelf.Outcome.Saved("ana-on-tuesday"));
    CaseShelf again = new CaseShelf(shop);
    CaseFile found = again.find("ana-on-tuesday").orElseThrow().findValue().orElseThrow();
    assertThat(found.digest()).isEqualTo(saved.digest());
    assertThat(found.name()).isEqualTo("Ana on Tuesday");
    assertThat(again.list())
        .singleElement()
        .satisfies(listed -> assertThat(listed.name().findValue()).hasValue("Ana on Tuesday"));
  }

  @Test
  void aNameThatIsTakenIsReplacedOnlyWhenAsked() throws IOException {
    shelf.save(named("Ana"), false);
    Path file = shelf.folder().resolve("ana.yaml");
    String before = Files.readString(file);
    assertThat(shelf.save(named("ANA"), false)).isEqualTo(new CaseShelf.Outcome.Taken("ana"));
    assertThat(file).hasContent(before);
    assertThat(shelf.save(named("ANA"), true)).isEqualTo(new CaseShelf.Outcome.Saved("ana"));
    assertThat(file).content().contains("name: ANA");
    assertThat(shelf.list()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource({
    "../../outside, outside",
    "/etc/passwd, etc-passwd",
    "..\\\\..\\\\windows, windows",
    "nul, nul-case",
    "a.yaml, a-yaml",
    ".hidden, hidden",
  })
  void noNameLeadsOutOfTheFolder(String name, String id) throws IOException {
    assertThat(shelf.save(named(name), false)).isEqualTo(new CaseShelf.Outcome.Saved(id));
    try (var inside = Files.walk(place)) {
      assertThat(inside.filter(Files::isRegularFile).map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrder(id + ".yaml", ".lock");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"../cases/ana", "cases/ana", "ana.yaml", "", ".", "..", ".lock", "ana\0"})
  void onlyNamesOfTheShelfAreOpened(String id) {
    shelf.save(named("Ana"), false);
    assertThat(shelf.find(id)).isEmpty();
  }

  @Test
  void namesInOtherScriptsAndLongOnesStayApart() {
    List<String> ids = new ArrayList<>();
    for (String name : List.of("Jürgen", "Jörgen", "小林", "小森", "x".repeat(119), "x".repeat(120))) {
      assertThat(shelf.save(named(name), false))
          .isInstanceOfSatisfying(CaseShelf.Outcome.Saved.class, saved -> ids.add(saved.id()));
    }
    assertThat(ids).doesNotHaveDuplicates().allMatch(id -> id.matches("[a-z0-9-]{1,100}"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"!!!", "...", "/"})
  void aNameWithoutLetterOrDigitIsNone(String name) {
    assertThat(shelf.save(named(name), false)).isEqualTo(new CaseShelf.Outcome.Unnameable());
    assertThat(shop).doesNotExist();
  }

  @Test
  void damagedFilesAreListedWithAWordAndKept() throws IOException {
    shelf.save(named("Ana"), false);
    Path torn = shelf.folder().resolve("torn.yaml");
    Files.writeString(torn, "rider: {mass_kg: 80\n");
    Files.write(shelf.folder().resolve("picture.yaml"), new byte[] {(byte) 0xff, (byte) 0xd8, 0});
    Files.write(shelf.folder().resolve("huge.yaml"), new byte[CaseShelf.LARGEST_BYTES + 1]);
    assertThat(shelf.list())
        .extracting(CaseShelf.Listed::id)
        .containsExactlyInAnyOrder("ana", "torn", "picture", "huge");
    for (String id : List.of("torn", "picture", "huge")) {
      Reading<CaseFile> reading = shelf.find(id).orElseThrow();
      assertThat(reading.findValue()).isEmpty();
      assertThat(reading.problems()).isNotEmpty().allMatch(p -> p.message().length() > 10);
      assertThat(shelf.list())
          .filteredOn(listed -> listed.id().equals(id))
          .allSatisfy(listed -> assertThat(listed.name().problems()).isNotEmpty());
    }
    assertThat(shelf.save(named("Torn"), false)).isEqualTo(new CaseShelf.Outcome.Taken("torn"));
    assertThat(torn).hasContent("rider: {mass_kg: 80\n");
  }

  @Test
  void whatAKilledSaveLeftIsNoCaseAndIsClearedByTheNext() throws IOException {
    shelf.save(named("Ana"), false);
    Path left = shelf.folder().resolve(".unfinished-1.tmp");
    Files.writeString(left, "half a ca");
    assertThat(shelf.list()).hasSize(1);
    shelf.save(named("Ben"), false);
    assertThat(left).doesNotExist();
    assertThat(shelf.list()).hasSize(2);
  }

  @Test
  void aFolderThatCannotBeIsSaidInWords() throws IOException {
    Files.writeString(shop, "a file where the folder should be");
    CaseFile ana = named("Ana");
    assertThatThrownBy(() -> shelf.save(ana, false))
        .isInstanceOf(ShelfException.class)
        .hasMessageContaining("not saved")
        .hasMessageContaining(shop.toString());
    assertThat(shelf.list()).isEmpty();
  }

  @Test
  void ofManyAtOnceExactlyOneTakesTheName() throws Exception {
    ExecutorService people = Executors.newFixedThreadPool(4);
    try {
      List<Callable<CaseShelf.Outcome>> saves = new ArrayList<>();
      for (int i = 0; i < 12; i++) {
        saves.add(() -> shelf.save(named("Ana"), false));
      }
      int taken = 0;
      for (Future<CaseShelf.Outcome> outcome : people.invokeAll(saves)) {
        taken += outcome.get() instanceof CaseShelf.Outcome.Taken ? 1 : 0;
      }
      assertThat(taken).isEqualTo(11);
    } finally {
      people.shutdownNow();
    }
  }

  @Test
  void aListFollowsWhatIsOnTheDisk() throws IOException {
    shelf.save(named("Ana"), false);
    shelf.save(named("Ben"), false);
    assertThat(shelf.list()).hasSize(2);
    Files.delete(shelf.folder().resolve("ana.yaml"));
    Files.writeString(shelf.folder().resolve("put here by hand.yaml"), named("Cleo").text());
    assertThat(shelf.list())
        .extracting(listed -> listed.name().findValue().orElse(""))
        .containsExactlyInAnyOrder("Ben", "Cleo");
    assertThat(shelf.find("put here by hand").orElseThrow().findValue()).isPresent();
    assertThat(shelf.find("ana")).isEmpty();
  }

  @Test
  void anotherNameUnderTheSameFileIsSeenAtOnce() {
    shelf.save(named("ana"), false);
    assertThat(shelf.list()).hasSize(1);
    shelf.save(named("ANA"), true);
    assertThat(shelf.list().get(0).name().findValue()).hasValue("ANA");
  }
}
