package bitterend.serve;

import bitterend.work.imports.ImportSheets;
import io.javalin.config.MultipartConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Optional;

/** The one form that sends a file: it is taken at one address alone, within limits, and stays in memory. */
final class SentSheet {
    private static final String FIELD = "sheet";
    private static final String KIND = "multipart/form-data";
    /** Bytes of the fields beside the file, and of what parts them. */
    private static final int BESIDE = 100_000;

    private static final int MOST_FIELDS = 10;
    private static final int LONGEST_NAME = 80;

    private SentSheet() {}

    /** Nothing of a file goes to disk, and none is read that is too large. */
    static void limit(MultipartConfig config) {
        config.maxFileSize(ImportSheets.MOST_SENT + BESIDE, SizeUnit.BYTES);
        config.maxTotalRequestSize(ImportSheets.MOST_SENT + BESIDE, SizeUnit.BYTES);
        config.maxInMemoryFileSize((int) ImportSheets.MOST_SENT + BESIDE, SizeUnit.BYTES);
    }

    /** Whether a request may have a file in it, and has one. */
    static boolean isOne(Context request) {
        String type = request.contentType();
        return type != null
                && type.toLowerCase(Locale.ROOT).startsWith(KIND)
                && request.method().equals(HandlerType.POST)
                && request.path().equals(ImportScreen.PATH);
    }

    /** Reads the form; one that is too large, or none, is refused with a sentence. */
    static void read(Context request) {
        long size = request.req().getContentLengthLong();
        if (size < 0) {
            throw new HttpResponseException(411, "The form does not say how long it is. Nothing was written.");
        }
        if (size > ImportSheets.MOST_SENT + BESIDE) {
            throw tooLarge();
        }
        int fields;
        try {
            fields = request.formParamMap().size() + request.uploadedFiles().size();
        } catch (Exception unread) {
            throw new HttpResponseException(400, "The form could not be read. Nothing was written.");
        }
        if (fields > MOST_FIELDS) {
            throw new HttpResponseException(413, "One sheet is taken at a time. Nothing was written.");
        }
        if (file(request).filter(sent -> sent.size() > ImportSheets.MOST_SENT).isPresent()) {
            throw tooLarge();
        }
    }

    private static HttpResponseException tooLarge() {
        return new HttpResponseException(
                413,
                "A sheet of more than " + ImportSheets.MOST_SENT / 1_000_000
                        + " MB is not taken. Nothing was written.");
    }

    private static Optional<UploadedFile> file(Context request) {
        return isOne(request)
                ? Optional.ofNullable(request.uploadedFile(FIELD))
                        .filter(sent -> !Sent.oneLine(sent.filename()).isEmpty())
                : Optional.empty();
    }

    /** What its sender calls the file, to be shown and nothing else; empty where none was sent. */
    static String called(Context request) {
        String name = file(request).map(sent -> Sent.oneLine(sent.filename())).orElse("");
        String last = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
        return last.length() > LONGEST_NAME ? last.substring(last.length() - LONGEST_NAME) : last;
    }

    /** The bytes of the file; none where none was sent. */
    static byte[] bytes(Context request) {
        Optional<UploadedFile> sent = file(request);
        if (sent.isEmpty()) {
            return new byte[0];
        }
        try (InputStream in = sent.get().content()) {
            return in.readAllBytes();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
