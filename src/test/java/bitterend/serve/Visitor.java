package bitterend.serve;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A browser without a screen: it keeps its cookies, follows where it is sent, and sends forms as a page of the server would. */
final class Visitor {
    private static final Pattern TOKEN = Pattern.compile("data-token=\"([^\"]+)\"");

    private final CookieManager cookies = new CookieManager();
    private final HttpClient client = HttpClient.newBuilder()
            .cookieHandler(cookies)
            .followRedirects(HttpClient.Redirect.ALWAYS)
            .build();
    private final String url;

    Visitor(ShopServer server) {
        this(server.url());
    }

    Visitor(String url) {
        this.url = url;
    }

    /** What came back. */
    record Seen(int status, String page, HttpResponse<String> whole) {
        /** Without markup. */
        String text() {
            return page.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ").strip();
        }

        /** The value of the first field of that name. */
        String field(String name) {
            Matcher found =
                    Pattern.compile("name=\"" + name + "\" value=\"([^\"]*)\"").matcher(page);
            return found.find() ? found.group(1) : "";
        }
    }

    Seen get(String path) {
        return send(request(path).GET().build());
    }

    /** A file that is taken away; none where the answer is a page. */
    byte[] file(String path) {
        try {
            HttpResponse<byte[]> answer =
                    client.send(request(path).GET().build(), HttpResponse.BodyHandlers.ofByteArray());
            String kind = answer.headers().firstValue("Content-Disposition").orElse("");
            return kind.startsWith("attachment; filename=") ? answer.body() : new byte[0];
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        } catch (InterruptedException fault) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(fault);
        }
    }

    Seen post(String path, Map<String, String> fields) {
        Matcher token = TOKEN.matcher(get("/find").page());
        return post(path, fields, url.substring(0, url.length() - 1), token.find() ? token.group(1) : "");
    }

    Seen post(String path, Map<String, String> fields, String origin, String token) {
        String body = fields.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
        return send(request(path)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Origin", origin)
                .header("X-Bitterend-Token", token)
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build());
    }

    /** Something else than a form, with all that a page of the server would send along. */
    Seen send(String path, String type, String body) {
        return send(request(path)
                .header("Content-Type", type)
                .header("Origin", url.substring(0, url.length() - 1))
                .header("X-Bitterend-Token", token())
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build());
    }

    /** A file by a form of the page, called as its sender likes. */
    Seen sends(String path, String called, byte[] file, String token) {
        return sends(path, called, file, token, url.substring(0, url.length() - 1));
    }

    Seen sends(String path, String called, byte[] file, String token, String origin) {
        String before = "--parts\r\nContent-Disposition: form-data; name=\"token\"\r\n\r\n" + token
                + "\r\n--parts\r\nContent-Disposition: form-data; name=\"sheet\"; filename=\"" + called
                + "\"\r\nContent-Type: application/octet-stream\r\n\r\n";
        return send(request(path)
                .header("Content-Type", "multipart/form-data; boundary=parts")
                .header("Origin", origin)
                .POST(HttpRequest.BodyPublishers.ofByteArray(joined(
                        before.getBytes(StandardCharsets.UTF_8),
                        file,
                        "\r\n--parts--\r\n".getBytes(StandardCharsets.UTF_8))))
                .build());
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return all.toByteArray();
    }

    /** The token of its pages. */
    String token() {
        Matcher token = TOKEN.matcher(get("/find").page());
        return token.find() ? token.group(1) : "";
    }

    /** The lines that a form of a page is sent with, but for its length. */
    String headers() {
        String at = URI.create(url).getAuthority();
        return "Host: " + at + "\nOrigin: http://" + at + "\nX-Bitterend-Token: " + token() + "\nCookie: " + kept()
                + "\nContent-Type: application/x-www-form-urlencoded\n";
    }

    /** What is answered to bytes that are sent as they are; no more than these come. */
    static String answered(String url, byte[] bytes, Duration soon) throws IOException {
        try (Socket socket =
                new Socket(InetAddress.getLoopbackAddress(), URI.create(url).getPort())) {
            socket.setSoTimeout((int) soon.toMillis());
            OutputStream out = socket.getOutputStream();
            out.write(bytes);
            out.flush();
            socket.shutdownOutput();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** What it was given to keep, as it sends it. */
    private String kept() {
        return cookies.getCookieStore().getCookies().stream()
                .map(cookie -> cookie.getName() + "=" + cookie.getValue())
                .collect(Collectors.joining("; "));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(url + path.substring(1)));
    }

    private Seen send(HttpRequest request) {
        try {
            HttpResponse<String> answer = client.send(request, HttpResponse.BodyHandlers.ofString());
            return new Seen(answer.statusCode(), answer.body(), answer);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        } catch (InterruptedException fault) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(fault);
        }
    }
}
