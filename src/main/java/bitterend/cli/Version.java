package bitterend.cli;

import picocli.CommandLine.IVersionProvider;

/** The version written into the packaged jar. */
final class Version implements IVersionProvider {
    static String number() {
        String version = Version.class.getPackage().getImplementationVersion();
        return version == null ? "unpackaged" : version;
    }

    @Override
    public String[] getVersion() {
        return new String[] {"bitterend " + number()};
    }
}
