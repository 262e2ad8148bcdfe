package bitterend.work;

/** Which program it is, as it is written into what it makes. */
public final class Release {
    private Release() {}

    /** The version written into the packaged jar. */
    public static String number() {
        String version = Release.class.getPackage().getImplementationVersion();
        return version == null ? "unpackaged" : version;
    }

    /** The program with its version. */
    public static String name() {
        return "bitterend " + number();
    }
}
