package bitterend.serve;

import bitterend.report.sheet.PagePart;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.CRC32;

/** The few files that a page asks for besides itself: each is named here, so that no request reaches the file system. */
final class Assets implements Screen {
    static final String PATH = "/assets/";
    private static final String HTMX = "/META-INF/resources/webjars/htmx.org/2.0.4/dist/htmx.min.js";

    private final Map<String, Asset> assets = Map.of(
            "page.css", new Asset("text/css; charset=utf-8", utf8(PagePart.css() + own("page.css"))),
            "mark.svg", new Asset("image/svg+xml", bytes("/bitterend/serve/mark.svg")),
            "outbox.js", new Asset("text/javascript; charset=utf-8", utf8(own("outbox.js"))),
            "page.js", new Asset("text/javascript; charset=utf-8", utf8(own("page.js"))),
            "htmx.js", new Asset("text/javascript; charset=utf-8", bytes(HTMX)));

    private static final class Asset {
        private final String type;
        private final byte[] content;

        Asset(String type, byte[] content) {
            this.type = type;
            this.content = content;
        }
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get(PATH + "{name}", request -> send(request, request.pathParam("name")));
        // Asked for by a browser that was told of no other, as on a page to print.
        config.routes.get("/favicon.ico", request -> send(request, "mark.svg"));
    }

    private void send(Context request, String name) {
        Asset asset = assets.get(name);
        if (asset == null) {
            throw new NotFoundResponse("There is no such file.");
        }
        request.contentType(asset.type).result(asset.content);
    }

    /** Other than before when one of them is: a page of a newer program asks for the newer files. */
    String version() {
        CRC32 sum = new CRC32();
        new TreeMap<>(assets).forEach((name, asset) -> sum.update(asset.content));
        return Long.toHexString(sum.getValue());
    }

    private static String own(String name) {
        return new String(bytes("/bitterend/serve/" + name), StandardCharsets.UTF_8);
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String resource) {
        try (InputStream in = Assets.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its resource " + resource);
            }
            return in.readAllBytes();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
