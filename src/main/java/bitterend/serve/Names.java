package bitterend.serve;

import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * By which names a request may call the server: the addresses that it is served at, in figures, and {@code localhost}. A name
 * that somebody points at this machine is none of them. No name is looked up anywhere.
 */
final class Names {
    private static final Pattern HOST =
            Pattern.compile("(\\[[0-9a-fA-F:.]+]|[0-9]{1,3}(?:[.][0-9]{1,3}){3}|localhost)" + "(?::([0-9]{1,5}))?");

    private final Listening at;
    private final int bound;

    /** @param bound the port that is bound */
    Names(Listening at, int bound) {
        this.at = at;
        this.bound = bound;
    }

    /** Whether the host that a request names is this server; without a port it means the usual one of http or https. */
    boolean has(String host) {
        Matcher parts = HOST.matcher(host.toLowerCase(java.util.Locale.ROOT));
        if (!parts.matches()) {
            return false;
        }
        String port = parts.group(2);
        int asked = port == null ? at.usualPort() : Integer.parseInt(port);
        return asked == bound
                && Listening.address(parts.group(1).replaceAll("[\\[\\]]", ""))
                        .filter(this::isServed)
                        .isPresent();
    }

    /** Whether a page of this server sent it. */
    boolean hasOrigin(String origin) {
        String scheme = at.scheme() + "://";
        return origin.startsWith(scheme) && has(origin.substring(scheme.length()));
    }

    private boolean isServed(InetAddress asked) {
        return asked.isLoopbackAddress()
                || (asked.equals(at.address()) && !asked.isAnyLocalAddress())
                || (at.address().isAnyLocalAddress() && isThisMachine(asked));
    }

    /** Whether a request came from this machine itself: nobody else has its addresses. */
    static boolean isHere(String from) {
        Optional<InetAddress> address = Listening.address(from.replaceAll("[\\[\\]]", ""));
        return address.filter(Names::isThisMachine).isPresent();
    }

    private static boolean isThisMachine(InetAddress address) {
        try {
            return address.isLoopbackAddress()
                    || (!address.isAnyLocalAddress() && NetworkInterface.getByInetAddress(address) != null);
        } catch (SocketException fault) {
            return false;
        }
    }
}
