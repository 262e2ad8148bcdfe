package bitterend.cli;

import bitterend.work.Release;
import picocli.CommandLine.IVersionProvider;

/** The version written into the packaged jar. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        return new String[] {Release.name()};
    }
}
