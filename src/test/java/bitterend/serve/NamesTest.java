package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** By which names a request may call the server, wherever it listens. */
final class NamesTest {
    private static Names names(String address, int port) {
        return new Names(new Listening(Listening.address(address).orElseThrow(), port), port);
    }

    @ParameterizedTest
    @CsvSource({
        "127.0.0.1, 7411, 127.0.0.1:7411, true",
        "127.0.0.1, 7411, localhost:7411, true",
        "127.0.0.1, 7411, LOCALHOST:7411, true",
        "127.0.0.1, 7411, localhost, false",
        "127.0.0.1, 7411, localhost:7412, false",
        "127.0.0.1, 7411, 192.0.2.7:7411, false",
        "127.0.0.1, 7411, elsewhere.example:7411, false",
        "127.0.0.1, 7411, 127.0.0.1.elsewhere.example:7411, false",
        "127.0.0.1, 7411, localhost:7411@elsewhere.example, false",
        "127.0.0.1, 7411, '', false",
        "::1, 7411, [::1]:7411, true",
        "::1, 7411, [0:0:0:0:0:0:0:1]:7411, true",
        "::1, 7411, ::1:7411, false",
        "192.0.2.7, 80, 192.0.2.7, true",
        "192.0.2.7, 80, 192.0.2.7:80, true",
        "192.0.2.7, 7411, 192.0.2.7, false",
        "192.0.2.7, 7411, 127.0.0.1:7411, true",
        "192.0.2.7, 7411, 192.0.2.8:7411, false",
        "0.0.0.0, 7411, 127.0.0.1:7411, true",
        "0.0.0.0, 7411, 192.0.2.8:7411, false",
        "0.0.0.0, 7411, 0.0.0.0:7411, false",
        "0.0.0.0, 7411, elsewhere.example:7411, false"
    })
    void host_isOneThatTheServerIsServedAt(String address, int port, String host, boolean answered) {
        assertEquals(answered, names(address, port).has(host));
    }

    @Test
    void listeningEverywhere_isCalledByEachAddressOfTheMachine() throws Exception {
        for (NetworkInterface each : NetworkInterface.networkInterfaces().toList()) {
            for (InetAddress address : each.inetAddresses().toList()) {
                if (address instanceof Inet4Address) {
                    assertTrue(names("0.0.0.0", 7411).has(address.getHostAddress() + ":7411"), address.toString());
                    assertTrue(Names.isHere(address.getHostAddress()), address.toString());
                }
            }
        }
        assertTrue(Names.isHere("::1") && Names.isHere("[0:0:0:0:0:0:0:1]"));
        assertFalse(Names.isHere("192.0.2.7"));
        assertFalse(Names.isHere("0.0.0.0"));
    }

    @Test
    void origin_isOfTheSchemeThatIsServed() {
        Names names = names("127.0.0.1", 80);
        assertTrue(names.hasOrigin("http://127.0.0.1"));
        assertTrue(names.hasOrigin("http://localhost:80"));
        assertFalse(names.hasOrigin("https://127.0.0.1"));
        assertFalse(names.hasOrigin("null"));
        assertFalse(names.hasOrigin("http://elsewhere.example"));
    }

    @Test
    void url_namesWhatABrowserReaches() {
        assertEquals("http://[0:0:0:0:0:0:0:1]:7411/", listening("::1").url(7411));
        assertEquals("http://192.0.2.7/", listening("192.0.2.7").url(80));
        assertFalse(listening("0.0.0.0").url(7411).contains("0.0.0.0:"));
    }

    private static Listening listening(String address) {
        Optional<InetAddress> at = Listening.address(address);
        return new Listening(at.orElseThrow(), 0);
    }
}
