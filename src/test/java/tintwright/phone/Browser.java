package tintwright.phone;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Map;

/** A real Chromium the size of a phone, spoken to as W3C WebDriver says (W3C, WebDriver, 2018). */
public final class Browser implements AutoCloseable {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final HttpClient http = HttpClient.newHttpClient();
    private final Process driver;
    private final String session;

    Browser() throws IOException, InterruptedException {
        this("--headless=new");
    }

    /** @param how further words to Chromium, such as where its window stands */
    public Browser(String... how) throws IOException, InterruptedException {
        List<String> arguments = new ArrayList<>(List.of("--no-sandbox", "--disable-gpu"));
        arguments.addAll(List.of(how));
        int port;
        try (ServerSocket free = new ServerSocket(0)) {
            port = free.getLocalPort();
        }
        driver = new ProcessBuilder("chromedriver", "--port=" + port)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        String base = "http://127.0.0.1:" + port + "/session";
        Map<String, Object> asked = Map.of(
                "capabilities",
                Map.of(
                        "alwaysMatch",
                        Map.of(
                                "browserName",
                                "chrome",
                                "goog:chromeOptions",
                                Map.of(
                                        "args",
                                        arguments,
                                        "mobileEmulation",
                                        Map.of(
                                                "deviceMetrics",
                                                Map.of("width", 360, "height", 740, "pixelRatio", 1.0))))));
        String opened = "";
        for (int i = 0; i < 100 && opened.isEmpty(); i++) {
            try {
                opened = post(base, asked).path("sessionId").asText();
            } catch (IOException notYet) {
                Thread.sleep(100);
            }
        }
        session = base + "/" + opened;
    }

    /** @return whether the driver of a Chromium is installed */
    static boolean installed() {
        return Arrays.stream(System.getenv().getOrDefault("PATH", "").split(":"))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, "chromedriver")));
    }

    /**
     * From now on the browser cannot fetch the pages' one script, and their content-security policy lets no other run:
     * the same to a page as a browser that runs none (DevTools protocol, Network).
     */
    void withoutScripts() throws IOException, InterruptedException {
        devTools("Network.enable", Map.of());
        devTools("Network.setBlockedURLs", Map.of("urls", List.of("*.js")));
    }

    /** As a browser that has been nowhere yet, and runs scripts: a start costs seconds. */
    void anew() throws IOException, InterruptedException {
        devTools("Network.enable", Map.of());
        devTools("Network.clearBrowserCookies", Map.of());
        devTools("Network.setBlockedURLs", Map.of("urls", List.of()));
    }

    private void devTools(String command, Map<String, Object> parameters) throws IOException, InterruptedException {
        post(session + "/goog/cdp/execute", Map.of("cmd", command, "params", parameters));
    }

    private JsonNode post(String to, Object body) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(to))
                .POST(HttpRequest.BodyPublishers.ofString(JSON.writeValueAsString(body)))
                .build();
        JsonNode value = JSON.readTree(
                        http.send(request, HttpResponse.BodyHandlers.ofString()).body())
                .path("value");
        if (value.has("error")) {
            throw new IOException(value.toString());
        }
        return value;
    }

    public void open(String page) throws IOException, InterruptedException {
        post(session + "/url", Map.of("url", page));
    }

    /** @return what the page answers to a script */
    public String ask(String script) throws IOException, InterruptedException {
        return post(session + "/execute/sync", Map.of("script", "return " + script, "args", List.of()))
                .asText();
    }

    /** Presses what the selector finds first. */
    public void press(String selector) throws IOException, InterruptedException {
        // Not behind the keys at the foot, which lie over the page.
        ask("document.querySelector('" + selector.replace("'", "\\'") + "').scrollIntoView({block: 'center'})");
        post(session + "/element/" + element(selector) + "/click", Map.of());
    }

    /** Types into a field, or gives a file to it. */
    public void type(String selector, String text) throws IOException, InterruptedException {
        post(session + "/element/" + element(selector) + "/value", Map.of("text", text));
    }

    private String element(String selector) throws IOException, InterruptedException {
        return post(session + "/element", Map.of("using", "css selector", "value", selector))
                .elements()
                .next()
                .asText();
    }

    /** @return whether the page comes to say this within ten seconds */
    public boolean says(String words) throws IOException, InterruptedException {
        for (int i = 0; i < 100; i++) {
            if (ask("document.querySelector('main').innerText").contains(words)) {
                return true;
            }
            Thread.sleep(100);
        }
        return false;
    }

    /** Takes a picture of what is in sight. */
    void picture(Path file) throws IOException, InterruptedException {
        HttpRequest request =
                HttpRequest.newBuilder(URI.create(session + "/screenshot")).build();
        String shot = JSON.readTree(
                        http.send(request, HttpResponse.BodyHandlers.ofString()).body())
                .path("value")
                .asText();
        Files.write(file, Base64.getDecoder().decode(shot));
    }

    @Override
    public void close() throws IOException, InterruptedException {
        HttpRequest end = HttpRequest.newBuilder(URI.create(session)).DELETE().build();
        http.send(end, HttpResponse.BodyHandlers.discarding());
        driver.destroy();
    }
}
