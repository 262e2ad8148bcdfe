package bitterend.serve;

import bitterend.measure.Units;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Anything as a request to the page of a shop: answered or refused, never a fault. What begins with {@code GET} or {@code POST} and a
 * path, its form in the second line, is sent as a person at a page of the server would send it; everything else as it is.
 */
public final class RequestFuzz {
    private static final Duration SOON = Duration.ofSeconds(20);
    private static final int TRIES_OF_A_SERVER = 2_000;
    /** What is in the way may pass (503); a version of the protocol that nobody speaks is refused (505). */
    private static final Pattern FAULT = Pattern.compile("HTTP/1.1 5(?!03|05)");

    private static final Set<String> HEAVY = Set.of("/plan", "/short", "/buying", "/quotes", "/news");

    private static Optional<RequestFuzz> served = Optional.empty();

    private final ByteArrayOutputStream faults = new ByteArrayOutputStream();
    private final ShopServer server;
    private final String headers;
    private int tries;

    private RequestFuzz() throws IOException {
        ServedLoft loft = new ServedLoft("eider-shed", Files.createTempDirectory("tried")).withLedger();
        server = ShopServer.start(
                loft.access(),
                new Listening(InetAddress.getLoopbackAddress(), 0),
                Units.METRIC,
                new PrintStream(faults, true, StandardCharsets.UTF_8));
        Visitor ada = new Visitor(server);
        ada.post("/who", Map.of("who", "Ada"));
        headers = ada.headers();
    }

    /** What a person sends by each screen. */
    public static List<byte[]> seeds() {
        List<String> seeds = new ArrayList<>();
        Stream.of(
                        "/",
                        "/bench",
                        "/bench/reel?id=E7",
                        "/book?saved=1",
                        "/count",
                        "/count/reel?id=E7",
                        "/count/result",
                        "/devices",
                        "/evening",
                        "/find?what=E7",
                        "/import",
                        "/ledger",
                        "/orders?order=E-31",
                        "/plans?number=1",
                        "/week",
                        "/tables",
                        "/reasons",
                        "/changes",
                        "/print/sheet?reel=E7",
                        "/print/tag?piece=E-31/1.1",
                        "/print/label?id=E7",
                        "/quotes/book?id=Q-1&rev=1",
                        "/quotes/kept?id=1&page=2",
                        "/buying/claims",
                        "/buying/again",
                        "/buying/idle?weeks=3",
                        "/rack",
                        "/rack/reel?id=E7",
                        "/rack/receive",
                        "/rack/trace?what=E-31/1.1&lot=12",
                        "/settings",
                        "/splicing?piece=E-31/1.1",
                        "/workbook/rack",
                        "/workbook/orders",
                        "/office?to=/buying",
                        "/pair?code=AAAA",
                        "/assets/mark.svg")
                .forEach(path -> seeds.add("GET " + path));
        Stream.of(
                        "/bench/reel what=cut&reel=E7&piece=E-31/1.1&plan=1&after=&length=4 m&sure=yes",
                        "/bench/reel what=flaw&reel=E7&flaw=2 m to 2.2 m: chafed",
                        "/bench/reel what=back&reel=E7&event=3",
                        "/bench/reel what=end&reel=E7&plan=1&after=E-31/1.1&length=0 m&note=none",
                        "/book/row row=1&order=E-40&line=1&rope=LAID-14&length=3 m&quantity=2",
                        "/book what=look&order=E-40&line=1&rope=LAID-14&length=3 m",
                        "/rack/receive reel=E11&rope=LAID-14&length=110 m&lot=16&tolerance=1.5 %&sure=yes",
                        "/rack/reel what=move&id=E7&reel=E7&place=cellar&length=3 m&note=x",
                        "/rack/reel what=correct&id=E7&reel=E7&lot=16&use-by=2030-01-31",
                        "/count/reel reel=E7&counted=9.4 m",
                        "/count/stranger reel=E99&rope=LAID-14&length=12 m",
                        "/splicing piece=E-31/1.1&length=6.72 m&minutes=12&how=measured&said=passed",
                        "/quotes/book id=Q-1&what=sent",
                        "/buying/again offer=B12-200&quantity=2",
                        "/office code=1234",
                        "/devices/revoke id=1",
                        "/pair code=AAAA&name=tablet",
                        "/issue number=1&reel=E7")
                .forEach(sent -> seeds.add("POST " + sent.replaceFirst(" ", "\n") + "&by=Ada&booking=b1"));
        seeds.add("GET / HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Length: 3\r\n\r\nabc");
        seeds.add(" OPTIONS * HTTP/1.1\r\nTransfer-Encoding: chunked\r\n\r\n3\r\nabc\r\n0\r\n\r\n");
        return seeds.stream().map(seed -> seed.getBytes(StandardCharsets.UTF_8)).toList();
    }

    private static RequestFuzz served() throws IOException {
        RequestFuzz now = served.orElse(null);
        if (now != null && now.tries++ > TRIES_OF_A_SERVER) {
            now.server.close();
            now = null;
        }
        if (now == null) {
            now = new RequestFuzz();
            served = Optional.of(now);
        }
        return now;
    }

    private byte[] request(byte[] data) {
        String text = new String(data, StandardCharsets.UTF_8);
        String[] lines = text.split("\n", 2);
        String[] words = lines[0].split(" ", 2);
        boolean asks = words[0].equals("GET");
        if (words.length < 2 || !(asks || words[0].equals("POST")) || words[1].contains("HTTP/")) {
            return data;
        }
        String path = words[1].replaceAll("[\\s\\p{Cntrl}]", "+");
        boolean isHeavy = !asks && HEAVY.contains(path.replaceAll("[?;].*", ""));
        if (isHeavy || path.startsWith("/news")) {
            return new byte[0];
        }
        byte[] body = (lines.length == 2 ? lines[1] : "").getBytes(StandardCharsets.UTF_8);
        byte[] head = (words[0] + " " + path + " HTTP/1.1\n" + headers + "Connection: close\nContent-Length: "
                        + body.length + "\n\n")
                .replace("\n", "\r\n")
                .getBytes(StandardCharsets.UTF_8);
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        whole.writeBytes(head);
        whole.writeBytes(body);
        return whole.toByteArray();
    }

    private void tried(byte[] request) throws IOException {
        String answer;
        try {
            answer = Visitor.answered(server.url(), request, SOON);
        } catch (SocketTimeoutException slow) {
            throw new AssertionError("no answer in " + SOON.toSeconds() + " s", slow);
        } catch (IOException closed) {
            answer = "";
        }
        String told = faults.toString(StandardCharsets.UTF_8);
        if (FAULT.matcher(answer).lookingAt() || !told.isEmpty()) {
            throw new AssertionError("answered " + answer + "\n" + told);
        }
    }

    /** The shop is there before the first try is timed. */
    public static void fuzzerInitialize() throws IOException {
        served();
    }

    /** One try. */
    public static void fuzzerTestOneInput(byte[] data) {
        try {
            RequestFuzz served = served();
            byte[] request = served.request(data);
            if (request.length > 0) {
                served.tried(request);
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
