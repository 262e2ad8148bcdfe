package bitterend.finding;

/** How much a finding matters. */
public enum Severity {
    /** The input cannot be used; nothing is planned or written. */
    ERROR,
    /** The input is used as it stands, and the reader is told. */
    WARNING
}
