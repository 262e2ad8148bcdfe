package bitterend.serve;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Where the page is listened for.
 *
 * @param address the address of this machine that is bound
 * @param port its port; 0 for any that is free
 * @param secured the key store for https; null for http
 */
public record Listening(InetAddress address, int port, @Nullable Secured secured) {
    /** Plain http. */
    public Listening(InetAddress address, int port) {
        this(address, port, null);
    }

    /** {@code http} or {@code https}. */
    String scheme() {
        return secured == null ? "http" : "https";
    }

    /** An address of this machine by its text; a name is not looked up anywhere. */
    public static Optional<InetAddress> address(String text) {
        if (!text.matches("[0-9.]+|[0-9a-fA-F:.]*:[0-9a-fA-F:.]*|localhost")) {
            return Optional.empty();
        }
        try {
            return Optional.of(InetAddress.getByName(text));
        } catch (UnknownHostException fault) {
            return Optional.empty();
        }
    }

    /** Whether only this machine itself can reach it. */
    public boolean isLoopback() {
        return address.isLoopbackAddress();
    }

    /** What a browser may call it in a request that is answered, in small letters. */
    Set<String> hosts(int bound) {
        Set<String> hosts = new TreeSet<>();
        hosts.add(host() + ":" + bound);
        if (isLoopback()) {
            hosts.add("localhost:" + bound);
        }
        return hosts;
    }

    /** The address as a browser is told it. */
    String url(int bound) {
        return scheme() + "://" + host() + ":" + bound + "/";
    }

    private String host() {
        String text = address.getHostAddress();
        return text.contains(":") ? "[" + text + "]" : text;
    }
}
