package bitterend.exchange;

import bitterend.exchange.form.Fields;
import bitterend.exchange.form.JsonTree;
import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.Written;

/** A finished length in a file: the length itself, and beside it the text that it was ordered in, if there is one. */
final class WrittenForm {
    static final String LENGTH = "finished";
    static final String TEXT = "written";

    private WrittenForm() {}

    static JsonTree with(JsonTree tree, Written finished) {
        tree.with(LENGTH, LengthText.exact(finished.exact()));
        return finished.text().isEmpty() ? tree : tree.with(TEXT, finished.text());
    }

    /** Files of before hold no text. */
    static Written read(Fields fields) {
        FineLength exact = fields.require(LENGTH, LengthText::parseFine, FineLength.ZERO);
        Written written = fields.optional(TEXT, Written::parse, Written.worked(exact));
        if (!written.exact().equals(exact)) {
            fields.error(TEXT, "the finished length as it was ordered");
        }
        return written;
    }
}
