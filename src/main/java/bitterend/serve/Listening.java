package bitterend.serve;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.List;
import java.util.Optional;
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

    /** The port that a browser means when it names none. */
    int usualPort() {
        return secured == null ? 80 : 443;
    }

    /** Each address that is bound: this machine itself reaches the page over its loopback, too. */
    List<InetAddress> bound() {
        return isLoopback() || address.isAnyLocalAddress()
                ? List.of(address)
                : List.of(address, InetAddress.getLoopbackAddress());
    }

    /** The address as a browser is told it; of all addresses of this machine one that other devices reach. */
    String url(int bound) {
        String text = reached().getHostAddress().replaceAll("%.*", "");
        String host = text.contains(":") ? "[" + text + "]" : text;
        return scheme() + "://" + host + (bound == usualPort() ? "" : ":" + bound) + "/";
    }

    private InetAddress reached() {
        if (!address.isAnyLocalAddress()) {
            return address;
        }
        try {
            return NetworkInterface.networkInterfaces()
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(each -> each.isSiteLocalAddress() && each instanceof Inet4Address)
                    .findFirst()
                    .orElseGet(InetAddress::getLoopbackAddress);
        } catch (SocketException fault) {
            return InetAddress.getLoopbackAddress();
        }
    }
}
