package tintwright.phone;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.net.InetSocketAddress;
import java.util.Optional;

/**
 * Who is let in, before anything else of a request is looked at. Without a secret that opens something there is
 * nothing here, whatever the path.
 */
final class Gate {
    /** Fifty phones that load every page and its parts at once, and what no thumb reaches. */
    private static final double REQUESTS_A_SECOND = 200;

    private static final double REQUESTS_AT_ONCE = 400;

    static final String NOTHING_HERE =
            "There is nothing here. Scan the code on the bench: each code lets one phone in, once.";

    private final String host;
    private final Passes passes;
    private final Flow flow = new Flow(REQUESTS_A_SECOND, REQUESTS_AT_ONCE, System::nanoTime);

    /**
     * @param bound where the pages are served
     */
    Gate(InetSocketAddress bound, Passes passes) {
        String address = bound.getAddress().getHostAddress().replaceFirst("%.*", "");
        this.host = (address.contains(":") ? "[" + shortened(address) + "]" : address) + ":" + bound.getPort();
        this.passes = passes;
    }

    /** As every browser writes it: the first of the longest runs of zeros left out (RFC 5952, section 4.2). */
    private static String shortened(String address) {
        for (int zeros = 7; zeros > 1; zeros--) {
            String without = address.replaceFirst("(^|:)0(:0){" + (zeros - 1) + "}(:|$)", "::");
            if (!without.equals(address)) {
                return without;
            }
        }
        return address;
    }

    /** @return the start of every address, such as "http://192.168.1.20:8417/" */
    String origin() {
        return "http://" + host;
    }

    /**
     * What is asked for by one who is let in.
     *
     * @param pass  the secret
     * @param page  the one name behind it; empty for none
     * @param phone the number of the phone; empty for one that comes with an invitation
     */
    record Asked(String pass, String page, Optional<Integer> phone, boolean post) {}

    /** @throws Refused when the request is not served */
    Asked ask(HttpExchange exchange) throws Refused {
        Headers headers = exchange.getRequestHeaders();
        // A name that was made to lead here, by a page from elsewhere, comes with another host.
        if (!host.equalsIgnoreCase(only(headers, "Host"))) {
            throw nothing();
        }
        String[] path = exchange.getRequestURI().getRawPath().split("/", -1);
        if (path.length != 3) {
            throw nothing();
        }
        Optional<Integer> phone = passes.phone(path[1]);
        if (phone.isEmpty() && !passes.invited(path[1])) {
            throw nothing();
        }
        // Only who is let in takes from the flow: a stranger's flood finds nothing, and slows nobody else down.
        if (!flow.pass()) {
            throw new Refused(Reply.TOO_MANY, "The bench is asked too much at once. Wait a second and try again.");
        }
        boolean post = exchange.getRequestMethod().equals("POST");
        if (!post && !exchange.getRequestMethod().equals("GET")) {
            throw new Refused(Reply.METHOD_NOT_ALLOWED, "The bench only shows pages and takes forms.");
        }
        if (post && !origin().equals(only(headers, "Origin"))) {
            throw new Refused(
                    Reply.FORBIDDEN, "That form did not come from a page of this bench, so nothing was done.");
        }
        return new Asked(path[1], path[2], phone, post);
    }

    static Refused nothing() {
        return new Refused(Reply.NOT_FOUND, NOTHING_HERE);
    }

    /** @return the one value of a header; empty when there is none or more than one */
    private static String only(Headers headers, String name) {
        return headers.containsKey(name) && headers.get(name).size() == 1 ? headers.getFirst(name) : "";
    }
}
