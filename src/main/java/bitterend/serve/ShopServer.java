package bitterend.serve;

import bitterend.exchange.Settings;
import bitterend.measure.Units;
import bitterend.work.CrashLog;
import bitterend.work.ShopAccess;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.io.IOException;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.util.List;
import java.util.function.Predicate;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.io.EofException;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.ssl.SslContextFactory;

/** The page of one shop, for browsers on this machine or, where that is asked for, for paired devices beyond it. */
public final class ShopServer implements AutoCloseable {
    /** The shop in a command that a page names. */
    private static final String NAMED = "SHOP";

    static final long LARGEST_REQUEST = 2_000_000;

    private final Javalin server;
    private final String url;
    private final Devices devices;
    private final News news;

    private ShopServer(Javalin server, String url, Devices devices, News news) {
        this.news = news;
        this.server = server;
        this.url = url;
        this.devices = devices;
    }

    /**
     * Serves a shop; an address or port that cannot be had is an {@link IOException}.
     *
     * @param faults where a line is written for each fault that no page foresaw
     */
    public static ShopServer start(ShopAccess shop, Listening at, Units units, PrintStream faults) throws IOException {
        return start(shop, at, units, faults, Names::isHere);
    }

    /** @param here whether an address that a request comes from is the shop's own machine */
    static ShopServer start(ShopAccess served, Listening at, Units units, PrintStream faults, Predicate<String> here)
            throws IOException {
        ShopAccess shop = served.named(NAMED);
        int port = at.port() == 0 ? free(at.address()) : at.port();
        Keys keys = Keys.of(shop.folder());
        Devices devices = new Devices(new DeviceFile(shop.folder()), shop.clock());
        Guard guard = new Guard(keys, new Names(at, port), at.scheme(), devices, here);
        People people = new People(guard);
        Shelf shelf = new Shelf(shop);
        Loft loft = new Loft(shelf, units);
        News news = new News(shelf);
        String name = shop.settings().map(Settings::name).orElse("");
        Assets assets = new Assets();
        Site site = new Site(guard, people, name, assets.version());
        OfficeCode code = new OfficeCode(shop.folder());
        Office office = new Office(code, keys, guard, shop.clock());
        CountDraft count = new CountDraft(shop.folder());
        Faults noted = new Faults(faults, shop.clock(), new CrashLog(shop.folder(), shop.clock()));
        Runs runs = new Runs(noted);
        List<Screen> screens = List.of(
                assets,
                people,
                new TodayScreen(loft, site, people, runs),
                new ShortScreen(loft, site, runs),
                new BenchScreen(loft, site),
                new BenchBooking(loft, site, people),
                new RackScreen(loft, site, people, office),
                new ReelScreen(loft, site, people, office),
                new TraceScreen(loft, site),
                new CountScreen(loft, site, people, count),
                new CountResult(loft, site, people, count, office),
                new PrintScreen(loft, site, people),
                new BookScreen(loft, site, people),
                new ImportScreen(loft, site, people),
                new BuyingScreen(loft, site, runs),
                new OrderAgainScreen(loft, site, people),
                new QuotesScreen(loft, site, people, runs),
                new QuoteBookScreen(loft, site, people),
                new SplicingScreen(loft, site, people),
                news,
                new OfficeScreen(office, code, devices, guard, site),
                new PairScreen(devices, site, guard),
                new SettingsScreen(loft, site),
                new EveningScreen(loft, site),
                new LedgerScreen(loft, site, people),
                new FindScreen(loft, site),
                new TableScreen(loft, site, office),
                new PageScreen(loft, site));
        Javalin server = Javalin.create(config -> {
            settings(config);
            at.bound()
                    .forEach(address -> config.jetty.addConnector(
                            (jetty, http) -> connector(jetty, http, at, new InetSocketAddress(address, port))));
            guard.watch(config);
            config.routes.before(office::check);
            screens.forEach(screen -> screen.serve(config));
            config.routes.exception(HttpResponseException.class, (fault, request) -> told(site, request, fault));
            config.routes.exception(EofException.class, (gone, request) -> cutShort(request));
            config.routes.exception(HttpException.RuntimeException.class, (wrong, request) -> cutShort(request));
            config.routes.exception(Exception.class, (fault, request) -> {
                request.status(500);
                site.tell(request, noted.noted(request, fault));
            });
        });
        try {
            server.start();
        } catch (RuntimeException fault) {
            throw new IOException("port " + port + " of " + at.address().getHostAddress() + " cannot be had", fault);
        }
        return new ShopServer(server, at.url(port), devices, news);
    }

    private static Connector connector(Server jetty, HttpConfiguration http, Listening at, InetSocketAddress bound) {
        Secured secured = at.secured();
        ServerConnector connector;
        if (secured == null) {
            connector = new ServerConnector(jetty, new HttpConnectionFactory(http));
        } else {
            SslContextFactory.Server keys = new SslContextFactory.Server();
            keys.setKeyStore(secured.store());
            keys.setKeyStorePassword(secured.password());
            keys.setSniRequired(false);
            HttpConfiguration https = new HttpConfiguration(http);
            https.addCustomizer(new SecureRequestCustomizer(false));
            connector = new ServerConnector(jetty, keys, new HttpConnectionFactory(https));
        }
        connector.setHost(bound.getAddress().getHostAddress());
        connector.setPort(bound.getPort());
        return connector;
    }

    private static void settings(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.maxRequestSize = LARGEST_REQUEST;
        SentSheet.limit(config.jetty.multipartConfig);
        config.jetty.modifyHttpConfiguration(http -> {
            http.setSendServerVersion(false);
            http.setRequestHeaderSize(16_384);
        });
    }

    /** What was sent ends in its midst or is no request: whoever sent it has gone, or is no browser. */
    private static void cutShort(Context request) {
        request.status(400)
                .contentType("text/plain; charset=utf-8")
                .result("This request is not whole. Nothing was booked.\n");
    }

    private static void told(Site site, Context request, HttpResponseException fault) {
        request.status(fault.getStatus());
        String words = words(fault);
        if (fault.getStatus() == 403 || fault.getStatus() == 429) {
            request.contentType("text/plain; charset=utf-8").result(words + "\n");
        } else {
            site.tell(request, words);
        }
    }

    /** What the library says in its own words is said in ours. */
    private static String words(HttpResponseException fault) {
        String words = fault.getMessage() == null ? "" : fault.getMessage();
        boolean ours = words.endsWith(".");
        return switch (ours ? 0 : fault.getStatus()) {
            case 404 -> "There is no such page.";
            case 405 -> "That cannot be done with this page.";
            case 413 -> "A form of more than " + LARGEST_REQUEST / 1_000_000 + " MB is not taken. Nothing was booked.";
            default -> ours ? words : "That could not be read. Nothing was booked.";
        };
    }

    private static int free(InetAddress address) throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, address)) {
            return socket.getLocalPort();
        }
    }

    /** What to type into a browser. */
    public String url() {
        return url;
    }

    /** A code that pairs one device; it lasts ten minutes. */
    public String pairingCode() {
        return devices.newCode();
    }

    @Override
    public void close() {
        news.close();
        server.stop();
    }
}
