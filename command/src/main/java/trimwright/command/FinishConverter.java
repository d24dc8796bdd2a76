package trimwright.command;

import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import trimwright.kernel.section.Finish;

/** The state of a surface by its name in case files. */
final class FinishConverter implements ITypeConverter<Finish> {
  @Override
  public Finish convert(String word) {
    for (Finish finish : Finish.values()) {
      if (finish.name().toLowerCase(Locale.ROOT).equals(word)) {
        return finish;
      }
    }
    throw new TypeConversionException("'" + word + "' is neither clean nor scuffed");
  }
}
