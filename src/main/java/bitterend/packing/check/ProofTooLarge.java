package bitterend.packing.check;

/** A proof that would take more work to follow than is allowed. It may hold; it is not checked again. */
final class ProofTooLarge extends ArithmeticException {
    private static final long serialVersionUID = 1L;

    ProofTooLarge() {
        super("too large");
    }
}
