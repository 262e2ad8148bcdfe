package bitterend.store;

import static java.nio.charset.StandardCharsets.UTF_8;

import bitterend.stock.LoftAddress;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tukaani.xz.XZInputStream;

/**
 * A real PostgreSQL server for tests, unpacked from the class path into a folder of its own and started on a free port of
 * this machine. It does not run as the super-user: where the tests do, it is given to {@code nobody}. Whoever connects from
 * this machine is let in, but for {@code sworn}, who needs a password.
 */
public final class LoftServer implements AutoCloseable {
    private static final String NOBODY = "65534";
    private static final long PATIENCE_S = 60;
    private static final AtomicInteger LOFTS = new AtomicInteger();

    private static @Nullable LoftServer shared;

    private final Path home;
    private final int port;
    private @Nullable Process process;

    private LoftServer() throws IOException {
        home = Files.createTempDirectory("bitterend-server");
        Runtime.getRuntime().addShutdownHook(new Thread(this::close));
        unpack();
        port = freePort();
        initialise();
        start();
    }

    /** The server that all tests of one run share; started when it is first asked for. */
    public static synchronized LoftServer shared() {
        LoftServer there = shared;
        if (there == null) {
            there = ofItsOwn();
            shared = there;
        }
        return there;
    }

    /** A server that a test may kill. */
    static LoftServer ofItsOwn() {
        try {
            return new LoftServer();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** A loft that no other test has, not begun yet. */
    public LoftAddress newLoft() {
        return loft("loft-" + LOFTS.incrementAndGet());
    }

    /** A loft of a name. */
    public LoftAddress loft(String name) {
        return server("bench", "postgres").of(name);
    }

    /** The server, for a user. */
    LoftAddress server(String user, String database) {
        return new LoftAddress("127.0.0.1", port, database, user, "");
    }

    /** As {@code shop.json} names it. */
    public String named() {
        return "bench@127.0.0.1:" + port + "/postgres";
    }

    /** Names a loft that no other test has in the {@code shop.json} of a shop. */
    public String name(Path shop) throws IOException {
        return name(shop, newLoft().loft());
    }

    /** Names a loft in the {@code shop.json} of a shop. */
    public String name(Path shop, String loft) throws IOException {
        Path settings = shop.resolve("shop.json");
        Files.writeString(
                settings,
                unnamed(Files.readString(settings, UTF_8))
                        .replaceFirst(
                                "\\{", "{\"ledger\": {\"server\": \"" + named() + "\", \"loft\": \"" + loft + "\"},"),
                UTF_8);
        return loft;
    }

    /** A loft goes from the server, as when a copy of it is to be put back. */
    public void dropLoft(String loft) throws SQLException {
        script("DROP SCHEMA " + ServerConnection.schema(loft(loft)) + " CASCADE");
    }

    /** Takes the loft out of it again. */
    public static void forget(Path shop) throws IOException {
        Path settings = shop.resolve("shop.json");
        Files.writeString(settings, unnamed(Files.readString(settings, UTF_8)), UTF_8);
    }

    private static String unnamed(String settings) {
        return settings.replaceFirst("\"ledger\": \\{[^}]*\\},", "");
    }

    /** Does something behind the back of the program. */
    void script(String... statements) throws SQLException {
        try (Connection connection = connection();
                Statement statement = connection.createStatement()) {
            for (String each : statements) {
                statement.execute(each);
            }
        }
    }

    /** A connection for which the names of the tables are those of a loft. */
    Connection behind(LoftAddress loft) throws SQLException {
        Connection connection = connection();
        connection.setSchema("loft_" + loft.loft());
        return connection;
    }

    Connection connection() throws SQLException {
        return DriverManager.getConnection("jdbc:postgresql://127.0.0.1:" + port + "/postgres", "bench", "");
    }

    /** Stops it at once, as when the plug is pulled. */
    void kill() throws InterruptedException {
        Objects.requireNonNull(process).destroyForcibly().waitFor();
    }

    /** Starts it again where it was killed; the processes of the killed one first have to notice. */
    void start() throws IOException {
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
        while (System.nanoTime() < until) {
            Process started = asNobody(
                    "bin/postgres",
                    "-D",
                    home.resolve("data").toString(),
                    "-p",
                    "" + port,
                    "-k",
                    "",
                    "-h",
                    "127.0.0.1");
            process = started;
            while (started.isAlive() && System.nanoTime() < until) {
                if (answers()) {
                    return;
                }
                pause();
            }
            pause();
        }
        throw new IOException("the server did not start: " + Files.readString(log(), UTF_8));
    }

    private boolean answers() {
        try (Connection connection = connection()) {
            return connection.isValid(1);
        } catch (SQLException notYet) {
            return false;
        }
    }

    private static void pause() {
        try {
            Thread.sleep(50);
        } catch (InterruptedException stop) {
            throw new IllegalStateException(stop);
        }
    }

    private void initialise() throws IOException {
        Path password = home.resolve("password");
        Files.writeString(password, "unused\n", UTF_8);
        give(home);
        run(
                "bin/initdb",
                "-D",
                home.resolve("data").toString(),
                "-U",
                "bench",
                "-A",
                "trust",
                "-E",
                "UTF8",
                "--locale=C",
                "--no-sync",
                "--no-instructions");
        Files.writeString(
                home.resolve("data/pg_hba.conf"),
                "host all sworn 127.0.0.1/32 scram-sha-256\nhost all all 127.0.0.1/32 trust\n",
                UTF_8);
    }

    private void run(String... command) throws IOException {
        try {
            if (asNobody(command).waitFor() != 0) {
                throw new IOException(Files.readString(log(), UTF_8));
            }
        } catch (InterruptedException stop) {
            throw new IllegalStateException(stop);
        }
    }

    private Path log() {
        return home.resolve("server.log");
    }

    private Process asNobody(String... command) throws IOException {
        List<String> words = new ArrayList<>();
        if (isSuperUser()) {
            words.addAll(List.of("setpriv", "--reuid=" + NOBODY, "--regid=" + NOBODY, "--clear-groups"));
        }
        words.add(home.resolve(command[0]).toString());
        words.addAll(List.of(command).subList(1, command.length));
        return new ProcessBuilder(words)
                .directory(home.toFile())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.appendTo(log().toFile()))
                .start();
    }

    private static boolean isSuperUser() {
        return System.getProperty("user.name").equals("root");
    }

    /** All of it to whom the server runs as. */
    private static void give(Path folder) throws IOException {
        if (isSuperUser()) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path each : all.toList()) {
                    Files.setAttribute(
                            each, "unix:uid", Integer.parseInt(NOBODY), java.nio.file.LinkOption.NOFOLLOW_LINKS);
                }
            }
        }
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }

    private void unpack() throws IOException {
        boolean arm = System.getProperty("os.arch").equals("aarch64");
        String system = System.getProperty("os.name").startsWith("Mac") ? "darwin" : "linux";
        String name = "postgres-" + system + "-" + (arm ? "arm_64" : "x86_64") + ".txz";
        try (InputStream packed = LoftServer.class.getResourceAsStream("/" + name)) {
            if (packed == null) {
                throw new IOException("no " + name + " on the class path: the profiles of pom.xml bring it");
            }
            InputStream tar = new BufferedInputStream(new XZInputStream(packed), 1 << 16);
            boolean more = true;
            while (more) {
                more = unpackNext(tar);
            }
        }
    }

    /** One entry of a tar archive: blocks of 512 bytes, a head and what is in the file. */
    private boolean unpackNext(InputStream tar) throws IOException {
        byte[] head = tar.readNBytes(512);
        String name = text(head, 0, 100);
        if (name.isEmpty()) {
            return false;
        }
        int size = Integer.parseInt(text(head, 124, 12).strip(), 8);
        byte[] bytes = tar.readNBytes(size);
        tar.skipNBytes((512 - size % 512) % 512);
        Path file = home.resolve(name);
        switch ((char) head[156]) {
            case '5' -> Files.createDirectories(file);
            case '2' -> Files.createSymbolicLink(file, Path.of(text(head, 157, 100)));
            default -> {
                Files.createDirectories(file.getParent());
                Files.write(file, bytes);
                boolean runs = (Integer.parseInt(text(head, 100, 8).strip(), 8) & 0100) != 0;
                Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(runs ? "rwxr-xr-x" : "rw-r--r--"));
            }
        }
        return true;
    }

    private static String text(byte[] head, int from, int length) {
        String text = new String(head, from, length, UTF_8);
        int end = text.indexOf('\0');
        return end < 0 ? text : text.substring(0, end);
    }

    @Override
    public void close() {
        Process running = process;
        if (running != null) {
            running.destroyForcibly();
        }
        try (Stream<Path> all = Files.walk(home)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(each);
            }
        } catch (IOException | UncheckedIOException stays) {
            return;
        }
    }
}
