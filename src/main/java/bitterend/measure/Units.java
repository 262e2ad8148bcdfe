package bitterend.measure;

/** The system that lengths are printed in. Reading accepts both everywhere. */
public enum Units {
    METRIC,
    IMPERIAL
}
