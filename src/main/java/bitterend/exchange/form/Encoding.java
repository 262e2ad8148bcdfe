package bitterend.exchange.form;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * How the bytes of a text file stand for letters: UTF-8, UTF-16 where a byte order mark says so, or Windows-1252 where the bytes
 * are no UTF-8 and every one above 127 is a letter or a sign that people type there.
 */
enum Encoding {
    UTF_8(StandardCharsets.UTF_8),
    UTF_16_LITTLE(StandardCharsets.UTF_16LE),
    UTF_16_BIG(StandardCharsets.UTF_16BE),
    WINDOWS_1252(Charset.forName("windows-1252"));

    private static final char MARK = '\ufeff';
    /** Besides letters: signs of measures, money and fractions, and the quotes, dashes and spaces that programs put in. */
    private static final String SIGNS =
            "\u00b0\u00b1\u00b2\u00b3\u00b5\u00b7\u00bc\u00bd\u00be\u00d7\u00a3\u00a7\u00ab\u00bb\u00ba\u00aa\u00a0"
                    + "\u20ac\u2018\u2019\u201c\u201d\u201e\u2013\u2014\u2026\u2022\u2030";

    private static final int PLAIN = 128;

    private final Charset charset;

    Encoding(Charset charset) {
        this.charset = charset;
    }

    /** A text and how it was written. */
    record Decoded(Encoding encoding, String text) {}

    /** The text without its byte order mark; nothing where the bytes are none of these. */
    static Optional<Decoded> decode(byte[] bytes) {
        for (Encoding encoding : marked(bytes)) {
            Optional<String> text = encoding.text(bytes);
            if (text.isPresent()) {
                return text.map(each -> new Decoded(encoding, each.indexOf(MARK) == 0 ? each.substring(1) : each));
            }
        }
        return Optional.empty();
    }

    private static List<Encoding> marked(byte[] bytes) {
        boolean two = bytes.length >= 2 && bytes.length % 2 == 0;
        if (two && (bytes[0] & 0xff) == 0xff && (bytes[1] & 0xff) == 0xfe) {
            return List.of(UTF_16_LITTLE);
        }
        if (two && (bytes[0] & 0xff) == 0xfe && (bytes[1] & 0xff) == 0xff) {
            return List.of(UTF_16_BIG);
        }
        return List.of(UTF_8, WINDOWS_1252);
    }

    private Optional<String> text(byte[] bytes) {
        try {
            String text = charset.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return Optional.of(text).filter(each -> this != WINDOWS_1252 || isPlainlyTyped(each));
        } catch (CharacterCodingException otherBytes) {
            return Optional.empty();
        }
    }

    private static boolean isPlainlyTyped(String text) {
        return text.chars()
                .allMatch(letter -> letter < PLAIN
                        ? letter >= ' ' || Character.isWhitespace(letter)
                        : Character.isLetter(letter) || SIGNS.indexOf(letter) >= 0);
    }
}
