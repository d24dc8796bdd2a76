package trimwright.command;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import trimwright.exchange.read.Mounting;

/** The stabilizer's side of the fuselage by its name in case files. */
final class MountingConverter implements ITypeConverter<Mounting> {
  @Override
  public Mounting convert(String word) {
    for (Mounting mounting : Mounting.values()) {
      if (mounting.code().equals(word)) {
        return mounting;
      }
    }
    throw new TypeConversionException("'" + word + "' is neither above nor below");
  }
}
