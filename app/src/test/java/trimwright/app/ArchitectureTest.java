package trimwright.app;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;

/** The house's walls: who may use whom. What each room is for stands in docs/modules. */
@AnalyzeClasses(packages = "trimwright", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  /** Packages of the kernel; each may use those before it. */
  private static final List<String> KERNEL_ORDER =
      List.of(
          "frame",
          "numeric",
          "water",
          "layer",
          "section",
          "surface",
          "limit",
          "propel",
          "rig",
          "trim",
          "cause",
          "quick",
          "hull",
          "turn",
          "motion",
          "fall",
          "play",
          "range",
          "envelope",
          "band",
          "wedge");

  private static final String KERNEL = "trimwright.kernel..";

  @ArchTest
  static final ArchRule MODULES_POINT_ONE_WAY =
      layeredArchitecture()
          .consideringOnlyDependenciesInAnyPackage("trimwright..")
          .layer("kernel")
          .definedBy(KERNEL)
          .layer("reference")
          .definedBy("trimwright.reference..")
          .layer("exchange")
          .definedBy("trimwright.exchange..")
          .layer("fitting")
          .definedBy("trimwright.fitting..")
          .layer("cache")
          .definedBy("trimwright.cache..")
          .layer("desk")
          .definedBy("trimwright.desk..")
          .layer("sheet")
          .definedBy("trimwright.sheet..")
          .layer("command")
          .definedBy("trimwright.command..")
          .layer("web")
          .definedBy("trimwright.web..")
          .layer("app")
          .definedBy("trimwright.app..")
          .whereLayer("kernel")
          .mayNotAccessAnyLayer()
          .whereLayer("reference")
          .mayOnlyAccessLayers("kernel")
          .whereLayer("fitting")
          .mayOnlyAccessLayers("kernel")
          .whereLayer("exchange")
          .mayOnlyAccessLayers("kernel", "fitting")
          .whereLayer("cache")
          .mayOnlyAccessLayers("kernel")
          .whereLayer("desk")
          .mayOnlyAccessLayers("kernel", "fitting", "exchange", "cache")
          .whereLayer("command")
          .mayOnlyAccessLayers("kernel", "reference", "fitting", "exchange", "desk", "sheet")
          .whereLayer("sheet")
          .mayOnlyAccessLayers("kernel", "exchange", "desk")
          .whereLayer("web")
          .mayOnlyAccessLayers("kernel", "fitting", "exchange", "desk", "sheet")
          .whereLayer("app")
          .mayNotBeAccessedByAnyLayer();

  @ArchTest
  static final ArchRule NO_PACKAGE_CYCLES =
      slices().matching("trimwright.(**)").should().beFreeOfCycles();

  @ArchTest static final ArchRule KERNEL_IN_ITS_ORDER = inOrder();

  private static ArchRule inOrder() {
    LayeredArchitecture layers =
        layeredArchitecture().consideringOnlyDependenciesInAnyPackage(KERNEL);
    for (String name : KERNEL_ORDER) {
      layers = layers.optionalLayer(name).definedBy("trimwright.kernel." + name + "..");
    }
    for (int i = 0; i < KERNEL_ORDER.size(); i++) {
      String[] before = KERNEL_ORDER.subList(0, i).toArray(String[]::new);
      layers =
          i == 0
              ? layers.whereLayer(KERNEL_ORDER.get(i)).mayNotAccessAnyLayer()
              : layers.whereLayer(KERNEL_ORDER.get(i)).mayOnlyAccessLayers(before);
    }
    return layers;
  }

  /** Plain Java only: no files, network, clock, logging or framework. */
  @ArchTest
  static final ArchRule KERNEL_IS_PLAIN_JAVA =
      classes()
          .that()
          .resideInAPackage(KERNEL)
          .should()
          .onlyDependOnClassesThat(
              resideInAnyPackage(
                      KERNEL,
                      "java.lang",
                      "java.lang.invoke",
                      "java.lang.runtime",
                      "java.util",
                      "java.util.function",
                      "java.util.stream",
                      "")
                  .or(resideInAPackage("org.ojalgo..").or(resideInAPackage("org.hipparchus..")))
                  .as("plain Java and the two mathematics libraries"));

  @ArchTest
  static final ArchRule DENSE_SYSTEMS_BEHIND_ONE_DOOR =
      noClasses()
          .that()
          .resideInAPackage("trimwright..")
          .and()
          .resideOutsideOfPackage("trimwright.kernel.numeric..")
          .and()
          .resideOutsideOfPackage("trimwright.bench..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.ojalgo.matrix..", "org.ejml..", "org.hipparchus..");

  /** What the library answers is believed in one class, by a sum of its own. */
  @ArchTest
  static final ArchRule LINEAR_PROGRAMMES_BEHIND_ONE_DOOR =
      noClasses()
          .that()
          .haveNameNotMatching("trimwright\\.fitting\\.fleet\\.Programme(\\$.*)?")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.ojalgo.optimisation..");

  /** The same input gives the same answer, always: no clock, environment, or unseeded chance. */
  @ArchTest
  static final ArchRule KERNEL_IS_REPRODUCIBLE =
      noClasses()
          .that()
          .resideInAPackage(KERNEL)
          .should()
          .callCodeUnitWhere(
              describe(
                  "it reads clock or environment, prints, or draws unseeded chance",
                  ArchitectureTest::isMoody))
          .orShould()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err")
          .orShould()
          .dependOnClassesThat()
          .areAssignableTo(Thread.class)
          .orShould()
          .dependOnClassesThat()
          .areAssignableTo(ThreadLocal.class);

  /** Workspaces live for one call and are shared with nobody. */
  @ArchTest
  static final ArchRule KERNEL_SHARES_NO_STATE =
      fields()
          .that()
          .areDeclaredInClassesThat()
          .resideInAPackage(KERNEL)
          .and(describe("are static", ArchitectureTest::isStatic))
          .should()
          .beFinal();

  @ArchTest
  static final ArchRule RADIANS_INSIDE =
      noClasses()
          .that()
          .resideInAPackage(KERNEL)
          .should()
          .callMethod(Math.class, "toDegrees", double.class);

  @ArchTest
  static final ArchRule WEB_FRAMEWORK_STAYS_IN_WEB =
      noClasses()
          .that(not(resideInAnyPackage("trimwright.web..")))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.springframework..", "jakarta..", "org.apache.catalina..");

  @ArchTest
  static final ArchRule TEMPLATES_STAY_WHERE_THINGS_ARE_LAID_OUT =
      noClasses()
          .that(not(resideInAnyPackage("trimwright.web..", "trimwright.sheet..")))
          .should()
          .dependOnClassesThat()
          .resideInAPackage("gg.jte..");

  /** Whoever wants a PDF asks the sheet for it, so that nothing else loads what prints. */
  @ArchTest
  static final ArchRule PRINTING_STAYS_IN_SHEET =
      noClasses()
          .that(not(resideInAPackage("trimwright.sheet..")))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "com.openhtmltopdf..",
              "org.apache.pdfbox..",
              "org.apache.fontbox..",
              "com.google.zxing..");

  @ArchTest
  static final ArchRule COMMAND_LINE_LIBRARY_STAYS_IN_COMMAND =
      noClasses()
          .that(not(resideInAPackage("trimwright.command..")))
          .should()
          .dependOnClassesThat()
          .resideInAPackage("picocli..");

  /** Text becomes values in one place. */
  @ArchTest
  static final ArchRule PARSERS_STAY_IN_EXCHANGE =
      noClasses()
          .that(not(resideInAPackage("trimwright.exchange..")))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "tools.jackson..",
              "com.fasterxml..",
              "com.networknt..",
              "org.yaml..",
              "org.snakeyaml..");

  private static boolean isStatic(JavaField field) {
    return field.getModifiers().contains(JavaModifier.STATIC);
  }

  private static boolean isMoody(JavaCall<?> call) {
    JavaClass owner = call.getTargetOwner();
    String name = call.getName();
    if (owner.isEquivalentTo(System.class)) {
      return !name.equals("arraycopy") && !name.equals("identityHashCode");
    }
    if (owner.isEquivalentTo(Math.class)) {
      return name.equals("random");
    }
    boolean unseeded = call.getTarget().getRawParameterTypes().isEmpty();
    return name.equals("<init>")
        && unseeded
        && (owner.isEquivalentTo(Random.class) || owner.isEquivalentTo(SplittableRandom.class));
  }
}
