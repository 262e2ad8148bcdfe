package bitterend.serve;

import bitterend.serve.Visitor.Seen;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Devices that tick cuts at the bench of the large demo loft, each on reels of its own, while a plan runs or not. */
public final class TickLoad {
    private static final Pattern TOKEN = Pattern.compile("data-token=\"([^\"]+)\"");
    private static final Pattern REEL = Pattern.compile("\"reel\": ?\"([^\":]+)\"");
    private static final int PATIENCE = 600;
    private static final long PAUSE_MILLIS = 300;

    private final Served served;
    private final List<String> reels = new ArrayList<>();

    private TickLoad(Served served) {
        this.served = served;
    }

    /**
     * What ticking came to.
     *
     * @param millis of each tick: sent, booked, and the page with the next cut there again
     * @param refused of each that was not booked, what the page answered
     */
    public record Ticks(List<Double> millis, List<String> refused) {
        public Ticks {
            millis = List.copyOf(millis);
            refused = List.copyOf(refused);
        }
    }

    /**
     * Ticks on a copy of the loft, of which a plan is in force.
     *
     * @param folder where the copy goes
     * @param each how many ticks of each device
     * @param planning whether plans run all the while
     */
    public static Ticks of(Path folder, int devices, int each, boolean planning)
            throws IOException, InterruptedException, ExecutionException {
        try (Served served = Served.withLedger("gannet-loft", folder)) {
            return new TickLoad(served).ticks(devices, each, planning);
        }
    }

    private Ticks ticks(int devices, int each, boolean planning)
            throws IOException, InterruptedException, ExecutionException {
        served.plans();
        Matcher found = REEL.matcher(Files.readString(served.file("plans/1.json"))
                .split("\"draws\"")[1]
                .split("\"unplanned\"")[0]);
        while (found.find()) {
            if (!reels.contains(found.group(1))) {
                reels.add(found.group(1));
            }
        }
        AtomicBoolean ended = new AtomicBoolean();
        ExecutorService threads = Executors.newFixedThreadPool(devices + 1);
        try {
            Future<?> plans = threads.submit(() -> {
                while (planning && !ended.get()) {
                    plan();
                }
                return null;
            });
            List<Future<Ticks>> all = new ArrayList<>();
            for (int device = 0; device < devices; device++) {
                int number = device;
                all.add(threads.submit(() -> device(number, devices, each)));
            }
            List<Double> millis = new ArrayList<>();
            List<String> refused = new ArrayList<>();
            for (Future<Ticks> one : all) {
                millis.addAll(one.get().millis());
                refused.addAll(one.get().refused());
            }
            ended.set(true);
            plans.get();
            return new Ticks(millis, refused);
        } finally {
            threads.shutdownNow();
        }
    }

    /** A plan from the tap to its end; another may run. */
    private void plan() throws InterruptedException {
        served.ada().post("/plan", Map.of());
        for (int i = 0; i < PATIENCE && !served.ada().get("/plan").page().contains("data-done"); i++) {
            Thread.sleep(100);
        }
    }

    /** Every so many-th reel, cut after cut. */
    private Ticks device(int number, int devices, int each) throws InterruptedException {
        Visitor visitor = new Visitor(served.server());
        visitor.post("/who", Map.of("name", "device " + number));
        List<Double> millis = new ArrayList<>();
        List<String> refused = new ArrayList<>();
        for (int reel = number; reel < reels.size() && millis.size() < each; reel += devices) {
            Seen page = visitor.get("/bench/reel?id=" + reels.get(reel));
            while (!page.field("piece").isEmpty() && millis.size() < each) {
                Thread.sleep(PAUSE_MILLIS);
                Map<String, String> cut = new HashMap<>();
                for (String field : List.of("plan", "reel", "piece", "booking")) {
                    cut.put(field, page.field(field));
                }
                cut.put("what", "cut");
                Matcher token = TOKEN.matcher(page.page());
                String url = served.server().url();
                long begun = System.nanoTime();
                page = visitor.post(
                        "/bench/reel", cut, url.substring(0, url.length() - 1), token.find() ? token.group(1) : "");
                millis.add((System.nanoTime() - begun) / 1e6);
                if (page.status() != 200) {
                    refused.add(cut.get("reel") + " " + cut.get("piece") + ": " + page.status() + " " + said(page));
                    break;
                }
            }
        }
        return new Ticks(millis, refused);
    }

    private static String said(Seen page) {
        return page.page()
                .replaceAll("(?s)<(script|style).*?</\\1>", "")
                .replaceAll("<[^>]*>", " ")
                .replaceAll("\\s+", " ")
                .strip();
    }
}
