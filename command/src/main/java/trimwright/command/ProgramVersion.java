package trimwright.command;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;
import trimwright.exchange.write.ModelVersion;

/** The version that the build wrote beside the classes. */
final class ProgramVersion implements IVersionProvider {
  @Override
  public String[] getVersion() throws IOException {
    Properties properties = new Properties();
    try (InputStream in = ProgramVersion.class.getResourceAsStream("version.properties")) {
      properties.load(in);
    }
    return new String[] {
      "Trimwright " + properties.getProperty("version") + ", model " + ModelVersion.TEXT
    };
  }
}
