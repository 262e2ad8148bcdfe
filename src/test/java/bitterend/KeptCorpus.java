package bitterend;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/** What a fuzzer came upon in an hour that led it on to code that nothing before had reached; kept packed, one file a target. */
record KeptCorpus(List<byte[]> inputs) {
    private static final Path FOLDER = FoundByFuzzTest.FOUND.resolve("corpus");

    KeptCorpus {
        inputs = List.copyOf(inputs);
    }

    static KeptCorpus of(FuzzIT.Target target) throws IOException {
        List<byte[]> inputs = new ArrayList<>();
        try (InputStream packed = Files.newInputStream(FOLDER.resolve(target + ".zip"));
                ZipInputStream zip = new ZipInputStream(packed)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                inputs.add(zip.readAllBytes());
            }
        }
        return new KeptCorpus(inputs);
    }

    /** So many of them or a few more, evenly out of all. */
    List<byte[]> some(int many) {
        int step = Math.max(1, inputs.size() / many);
        List<byte[]> some = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i += step) {
            some.add(inputs.get(i));
        }
        return some;
    }

    /** Each into a file of its own. */
    void unpack(Path folder) throws IOException {
        for (int i = 0; i < inputs.size(); i++) {
            Files.write(folder.resolve("kept-" + i), inputs.get(i));
        }
    }
}
