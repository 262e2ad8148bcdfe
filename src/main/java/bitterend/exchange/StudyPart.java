package bitterend.exchange;

import bitterend.buying.Scenario;
import bitterend.buying.Study;
import bitterend.exchange.form.InputFile;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A share of a buying study, as it travels between machines.
 *
 * @param key what was asked: parts of one study have the same
 * @param size how large the whole study is
 * @param ropes scenarios worked out, by rope id
 */
public record StudyPart(String key, Study.Size size, Map<String, List<Scenario>> ropes) {
    public StudyPart {
        TreeMap<String, List<Scenario>> copy = new TreeMap<>();
        ropes.forEach((rope, scenarios) -> copy.put(rope, List.copyOf(scenarios)));
        ropes = Collections.unmodifiableMap(copy);
    }

    /** What a study of this shop asks, as one word: the digests of its files and the version of the engine. */
    public static String key(Shop shop, String engine) {
        String all = engine + "\n" + shop.digests();
        return InputFile.sha256(all.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }
}
