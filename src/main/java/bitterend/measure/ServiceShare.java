package bitterend.measure;

/** The share of the pieces for which there is to be rope in time, as files and the command line have it. */
public final class ServiceShare {
    private static final Ratio LEAST = Ratio.percent(50);
    private static final Ratio MOST = new Ratio(999, 1000);

    private ServiceShare() {}

    /** Reads {@code 97 %}, from 50 to 99.9. */
    public static Parsed<Ratio> parse(String text) {
        return RatioText.parse(text)
                .then(ratio -> ratio.compareTo(LEAST) < 0 || ratio.compareTo(MOST) > 0
                        ? Parsed.refused("a share of the pieces from 50 to 99.9 %, such as 97 %")
                        : Parsed.of(ratio));
    }
}
