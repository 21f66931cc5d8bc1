package stokewell.web;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The addresses of this machine on the networks it is in. */
final class Lan {

    private Lan() {}

    /** Those that a phone can reach, private ones first. */
    static List<String> addresses() {
        List<String> found = new ArrayList<>();
        List<String> other = new ArrayList<>();
        try {
            for (NetworkInterface net : Collections.list(NetworkInterface.getNetworkInterfaces())) {
                if (!net.isUp() || net.isLoopback()) continue;
                for (InetAddress address : Collections.list(net.getInetAddresses())) {
                    if (!(address instanceof Inet4Address)) continue;
                    (address.isSiteLocalAddress() ? found : other).add(address.getHostAddress());
                }
            }
        } catch (SocketException e) {
            return List.of();
        }
        found.addAll(other);
        return found;
    }
}
