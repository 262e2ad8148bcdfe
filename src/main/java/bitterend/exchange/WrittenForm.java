package bitterend.exchange;

import bitterend.exchange.form.Codec;
import bitterend.exchange.form.Members;
import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.Written;

/** A finished length in a file: the length itself, and beside it the text that it was ordered in, if there is one. */
final class WrittenForm {
    static final String LENGTH = "finished";
    static final String TEXT = "written";

    private static final Codec<FineLength> EXACT =
            new Codec<>(LengthText::exact, LengthText::parseFine, FineLength.ZERO);
    private static final Codec<String> TYPED =
            new Codec<>(text -> text, text -> Written.parse(text).map(any -> text), "");

    private WrittenForm() {}

    /** Files of before hold no text. */
    static Written written(Members<Written> members) {
        FineLength exact = members.is(LENGTH, Written::exact, EXACT);
        String text = members.mayBe(TEXT, Written::text, TYPED, "");
        Written written = Written.parse(text).value().orElse(Written.worked(exact));
        if (!written.exact().equals(exact)) {
            members.error(TEXT, "the finished length as it was ordered");
        }
        return written;
    }
}
