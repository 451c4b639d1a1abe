package slackwater.cli;

import picocli.CommandLine.IVersionProvider;

/** The version of this build, from the jar's manifest. */
final class Version implements IVersionProvider {
    static String number() {
        String version = Version.class.getPackage().getImplementationVersion();
        return version == null ? "unpackaged" : version;
    }

    @Override
    public String[] getVersion() {
        return new String[] {"slackwater " + number() + ", Java " + Runtime.version()};
    }
}
