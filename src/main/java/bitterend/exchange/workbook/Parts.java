package bitterend.exchange.workbook;

import java.io.Closeable;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/** The parts packed in one file. They are read from memory only as far as they are looked at, and no further than the limits. */
final class Parts implements Closeable {
    private final ZipFile zip;
    private long left = Limits.MOST_UNPACKED;

    private Parts(ZipFile zip) {
        this.zip = zip;
    }

    static Parts open(Path file) throws IOException {
        ZipFile zip = zip(file);
        int parts = zip.size();
        if (parts > Limits.MOST_PARTS) {
            zip.close();
            throw new Refused(parts + " parts", "a workbook of at most " + Limits.MOST_PARTS + " parts");
        }
        return new Parts(zip);
    }

    private static ZipFile zip(Path file) throws IOException {
        try {
            return new ZipFile(file.toFile());
        } catch (ZipException | IllegalArgumentException broken) {
            throw damaged("a file");
        }
    }

    /** What is said of what cannot be unpacked. */
    static Refused damaged(String what) {
        return new Refused(
                what + " that is cut short or damaged", "a whole workbook; save it again as .xlsx, or copy it again");
    }

    /** A part by its name, capitals not minding; nothing when there is none. */
    Optional<InputStream> find(String name) throws IOException {
        ZipEntry exact = zip.getEntry(name);
        Optional<? extends ZipEntry> entry = exact != null
                ? Optional.of(exact)
                : zip.stream()
                        .filter(each -> each.getName().equalsIgnoreCase(name))
                        .findFirst();
        if (entry.isEmpty() || entry.get().isDirectory()) {
            return Optional.empty();
        }
        return Optional.of(new Limited(zip.getInputStream(entry.get()), entry.get()));
    }

    boolean has(String name) {
        return zip.getEntry(name) != null;
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }

    /** Stops at the limits, whatever the file says of its own size. */
    private final class Limited extends FilterInputStream {
        private final String name;
        private final long packed;
        private long read;

        Limited(InputStream in, ZipEntry entry) {
            super(in);
            this.name = entry.getName();
            this.packed = Math.max(1, entry.getCompressedSize());
        }

        @Override
        public int read() throws IOException {
            int next = in.read();
            count(next < 0 ? 0 : 1);
            return next;
        }

        @Override
        public int read(byte[] into, int from, int most) throws IOException {
            int got = in.read(into, from, most);
            count(Math.max(got, 0));
            return got;
        }

        private void count(int bytes) throws Refused {
            read += bytes;
            left -= bytes;
            if (left < 0) {
                throw new Refused(
                        "more than " + Limits.MOST_UNPACKED / 1_000_000 + " MB when unpacked",
                        "a workbook that unpacks to at most " + Limits.MOST_UNPACKED / 1_000_000
                                + " MB; take out what is not of the table");
            }
            if (read > Limits.ANY_RATIO && read / packed > Limits.MOST_RATIO) {
                throw new Refused(
                        name + " unpacks to more than " + Limits.MOST_RATIO + " times its size",
                        "a workbook as a spreadsheet program saves it");
            }
        }
    }
}
