package bitterend.exchange;

import bitterend.buying.Study;
import bitterend.buying.steady.SteadyScenario;
import bitterend.buying.steady.WayNote;
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
 * @param ropes what was worked out, by rope id
 */
public record StudyPart(String key, Study.Size size, Map<String, OfRope> ropes) {
    public StudyPart {
        ropes = Collections.unmodifiableMap(new TreeMap<>(ropes));
    }

    /**
     * What was worked out of one rope.
     *
     * @param ways the ways to buy that were tried; every share of a study has the same
     * @param scenarios by number
     */
    public record OfRope(List<WayNote> ways, List<SteadyScenario> scenarios) {
        /** Nothing was worked out. */
        public static final OfRope NONE = new OfRope(List.of(), List.of());

        public OfRope {
            ways = List.copyOf(ways);
            scenarios = List.copyOf(scenarios);
        }
    }

    /** What a study of this shop asks, as one word: the digests of its files, the version of the engine, and what the rack must do. */
    public static String key(Shop shop, String engine, String goal) {
        String all = engine + "\n" + goal + "\n" + shop.digests();
        return InputFile.sha256(all.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }
}
