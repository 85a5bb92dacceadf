package tintwright.phone;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.net.SocketException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A phone that says exactly what a test wants it to say, good manners or not, over a bare socket. */
public final class RawPhone {
    private final URI origin;
    private final String secret;

    /** @param address with the secret, such as "http://127.0.0.1:8417/9f.../" */
    RawPhone(String address) {
        URI whole = URI.create(address);
        this.origin = URI.create("http://" + whole.getAuthority());
        this.secret = whole.getPath().replace("/", "");
    }

    /** What came back. */
    public record Heard(int status, String head, String body) {
        public String header(String name) {
            Matcher line = Pattern.compile("(?mi)^" + name + ": (.*?)\r?$").matcher(head);
            return line.find() ? line.group(1) : "";
        }

        /** @return what the page says, without its mark-up */
        public String words() {
            return body.replaceAll("(?s)<title>.*?</title>", "")
                    .replaceAll("<[^>]*>", " ")
                    .replaceAll("\\s+", " ")
                    .strip();
        }
    }

    /** Takes the invitation up, as a thumb does. */
    public static RawPhone in(PhoneServer server) throws IOException {
        return at(server.invitation());
    }

    /** @param invitation what the code holds */
    public static RawPhone at(String invitation) throws IOException {
        RawPhone guest = new RawPhone(invitation);
        Heard let = guest.post("in", "");
        if (let.status() != Reply.SEE_OTHER) {
            throw new IOException("not let in: " + let);
        }
        return new RawPhone(guest.origin + let.header("Location"));
    }

    public String secret() {
        return secret;
    }

    public Socket socket() throws IOException {
        Socket socket = new Socket(origin.getHost(), origin.getPort());
        socket.setSoTimeout(30_000);
        return socket;
    }

    public Map<String, String> usual() {
        Map<String, String> headers = new LinkedHashMap<>();
        headers.put("Host", origin.getAuthority());
        headers.put("Connection", "close");
        return headers;
    }

    public Heard get(String page) throws IOException {
        return ask("GET", "/" + secret + "/" + page, usual(), new byte[0]);
    }

    Heard post(String page, String form) throws IOException {
        return post(page, "application/x-www-form-urlencoded", form.getBytes(StandardCharsets.UTF_8));
    }

    Heard post(String page, String type, byte[] body) throws IOException {
        Map<String, String> headers = usual();
        headers.put("Origin", origin.toString());
        headers.put("Content-Type", type);
        headers.put("Content-Length", Integer.toString(body.length));
        return ask("POST", "/" + secret + "/" + page, headers, body);
    }

    /** Sends a file as a browser does. */
    public Heard photo(byte[] file) throws IOException {
        return post("photo", "multipart/form-data; boundary=edge", form("photo", file));
    }

    static byte[] form(String field, byte[] file) throws IOException {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        body.write(("--edge\r\nContent-Disposition: form-data; name=\"" + field
                        + "\"; filename=\"../../etc/passwd\"\r\nContent-Type: image/jpeg\r\n\r\n")
                .getBytes(StandardCharsets.UTF_8));
        body.write(file);
        body.write("\r\n--edge--\r\n".getBytes(StandardCharsets.UTF_8));
        return body.toByteArray();
    }

    Heard ask(String method, String path, Map<String, String> headers, byte[] body) throws IOException {
        try (Socket socket = socket()) {
            OutputStream out = socket.getOutputStream();
            out.write(head(method, path, headers));
            try {
                out.write(body);
                out.flush();
            } catch (SocketException alreadyAnswered) {
                // What came back until then still stands to be read.
            }
            return heard(new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    public static byte[] head(String method, String path, Map<String, String> headers) {
        StringBuilder head = new StringBuilder(method + " " + path + " HTTP/1.1\r\n");
        headers.forEach(
                (name, value) -> head.append(name).append(": ").append(value).append("\r\n"));
        return head.append("\r\n").toString().getBytes(StandardCharsets.UTF_8);
    }

    static Heard heard(String all) {
        int end = all.indexOf("\r\n\r\n");
        Optional<String> head = end < 0 ? Optional.empty() : Optional.of(all.substring(0, end));
        return head.map(lines -> new Heard(Integer.parseInt(lines.split(" ")[1]), lines, all.substring(end + 4)))
                .orElse(new Heard(0, "", all));
    }
}
