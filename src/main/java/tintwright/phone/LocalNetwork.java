package tintwright.phone;

import java.net.Inet4Address;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A network of the shop that this machine is on.
 *
 * @param card    the network card's name, such as "wlan0"
 * @param address this machine's own address there, never one of the whole world
 */
public record LocalNetwork(String card, InetAddress address) {
    /** The first seven bits of a unique local address (RFC 4193, section 3.1). */
    private static final int UNIQUE_LOCAL = 0xfc;

    private static final int FIRST_SEVEN_BITS = 0xfe;

    public LocalNetwork {
        if (!ofTheShop(address) && !address.isLoopbackAddress()) {
            throw new IllegalArgumentException(address.getHostAddress()
                    + " is no address of a local network, so the phone's pages are not served there");
        }
    }

    /** @return the networks this machine is on now, the likeliest first */
    public static List<LocalNetwork> all() throws PhoneFailure {
        List<LocalNetwork> found = new ArrayList<>();
        try {
            for (NetworkInterface card : NetworkInterface.networkInterfaces().toList()) {
                if (!card.isUp() || card.isLoopback() || card.isPointToPoint()) {
                    continue;
                }
                card.inetAddresses()
                        .filter(LocalNetwork::ofTheShop)
                        .forEach(address -> found.add(new LocalNetwork(card.getName(), address)));
            }
        } catch (SocketException e) {
            throw new PhoneFailure("The networks of this machine cannot be listed (" + e.getMessage() + ").", e);
        }
        found.sort(Comparator.comparing(LocalNetwork::rank));
        return found;
    }

    /**
     * @param among  the networks there are
     * @param wanted the card or the address that was asked for; empty when nobody chose
     * @throws PhoneFailure when there is none, when there are several to choose from, or none of that name
     */
    public static LocalNetwork choose(List<LocalNetwork> among, Optional<String> wanted) throws PhoneFailure {
        if (among.isEmpty()) {
            throw new PhoneFailure(
                    "This machine is on no local network. Join it to the same Wi-Fi as the phone, or open"
                            + " a hotspot on the phone and join that.");
        }
        if (wanted.isPresent()) {
            return among.stream()
                    .filter(one -> one.card.equals(wanted.get())
                            || one.address.getHostAddress().equals(wanted.get()))
                    .findFirst()
                    .orElseThrow(() -> new PhoneFailure("This machine is not on the network \"" + wanted.get()
                            + "\". It is on " + names(among) + "."));
        }
        List<LocalNetwork> best =
                among.stream().filter(one -> one.rank() == among.get(0).rank()).toList();
        if (best.size() > 1) {
            throw new PhoneFailure(
                    "This machine is on several networks: " + names(best) + ". Choose the one that the phone is on.");
        }
        return best.get(0);
    }

    private static String names(List<LocalNetwork> networks) {
        return String.join(", ", networks.stream().map(LocalNetwork::words).toList());
    }

    /** @return the network as it is offered for choice, such as "wlan0 (192.168.1.20)" */
    public String words() {
        return card + " (" + address.getHostAddress() + ")";
    }

    /** An address everybody can type comes first, one a card gave itself for want of a better last. */
    private int rank() {
        return address.isLinkLocalAddress() ? 2 : address instanceof Inet4Address ? 0 : 1;
    }

    /** Private use (RFC 1918), unique local (RFC 4193), or link-local in four numbers (RFC 3927). */
    private static boolean ofTheShop(InetAddress address) {
        if (address instanceof Inet6Address) {
            return (address.getAddress()[0] & FIRST_SEVEN_BITS) == UNIQUE_LOCAL;
        }
        return address.isSiteLocalAddress() || address.isLinkLocalAddress();
    }
}
