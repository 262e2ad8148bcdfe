package bitterend.exchange.form;

/**
 * How a record stands in a JSON object. It names each member once, with the part of the record that it holds, and makes the
 * record of what it is given: the same lines write a document and read it.
 *
 * @param <R> the record
 */
@FunctionalInterface
public interface Form<R> {
    /**
     * Passes every member through, in the order of the file.
     *
     * @return the record: of the values that stand in the file on the way in, the same as before on the way out
     */
    R through(Members<R> members);
}
