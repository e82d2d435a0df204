package org.capwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version of the program, as the build has written it. */
final class Version implements IVersionProvider {
    private static final String RESOURCE = "version.properties";

    @Override
    public String[] getVersion() throws IOException {
        Properties properties = new Properties();
        try (InputStream stream = Version.class.getResourceAsStream(RESOURCE)) {
            properties.load(stream);
        }
        return new String[] {"Capwright " + properties.getProperty("version")};
    }
}
