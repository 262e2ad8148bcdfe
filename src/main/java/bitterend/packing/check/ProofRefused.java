package bitterend.packing.check;

/** A proof that cannot be followed: it names what is not there, or contradicts itself. */
final class ProofRefused extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    ProofRefused(String why) {
        super(why);
    }
}
