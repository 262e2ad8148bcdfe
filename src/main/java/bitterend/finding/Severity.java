package bitterend.finding;

/** How much a finding matters. */
public enum Severity {
    /** The input cannot be used; nothing is planned or written. */
    ERROR,
    /** One line of the input cannot be used and is left out, the rest goes on. */
    LEFT_OUT,
    /** The input is used as it stands, and the reader is told. */
    WARNING
}
