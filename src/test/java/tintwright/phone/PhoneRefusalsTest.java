package tintwright.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tintwright.bench.top.BenchTop;

/** Every way to ask for what is not given: the answer is one sentence, and the bench goes on. */
class PhoneRefusalsTest {
    private static final BenchTop.Sight HULL = new BenchTop.Sight(
            "Tarrowmere", "Tarrowmere, port bow", BenchTop.Wanted.HULL, Optional.empty(), Optional.empty());

    @TempDir
    Path folder;

    private final List<Path> photos = new ArrayList<>();
    private PhoneServer server;
    private RawPhone phone;

    @BeforeEach
    void open() throws Exception {
        BenchTop top = new BenchTop(HULL, (key, act) -> {
            photos.add(((BenchTop.Act.Photo) act).file());
            return CompletableFuture.completedFuture(new BenchTop.Answer(true, "The hull is a warm grey."));
        });
        server = PhoneServer.open(here(), 0, top, folder.resolve("photos"), Clock.systemUTC());
        phone = RawPhone.in(server);
    }

    @AfterEach
    void close() {
        server.close();
    }

    static LocalNetwork here() {
        return new LocalNetwork("lo", InetAddress.getLoopbackAddress());
    }

    static byte[] jpeg(int width, int height) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), "jpg", out);
        return out.toByteArray();
    }

    private void goesOn() throws IOException {
        assertEquals(Reply.OK, phone.get("photo").status());
        assertEquals(Reply.SEE_OTHER, phone.photo(jpeg(60, 40)).status());
        assertTrue(phone.get("photo").words().contains("The hull is a warm grey."));
    }

    private long onDisk() throws IOException {
        if (!Files.exists(folder.resolve("photos"))) {
            return 0;
        }
        try (Stream<Path> files = Files.list(folder.resolve("photos"))) {
            return files.count();
        }
    }

    @Test
    void thereIsNothingForOneWithoutASecret() throws IOException {
        String wrong = "0".repeat(32);
        List<String> paths = List.of(
                "/", "/photo", "/" + wrong + "/", "/" + wrong + "/photo", "/" + wrong + "/bench.css", "/favicon.ico");
        for (String path : paths) {
            RawPhone.Heard heard = phone.ask("GET", path, phone.usual(), new byte[0]);
            assertEquals(Reply.NOT_FOUND, heard.status(), path);
            assertEquals(Gate.NOTHING_HERE, heard.words());
        }
    }

    @Test
    void theInvitationLetsOnePhoneInOnce() throws IOException {
        String first = server.invitation();
        RawPhone guest = new RawPhone(first);
        assertTrue(guest.get("").words().contains("Use this phone at the bench"));
        assertEquals(first, server.invitation(), "looking does not use the code up");
        assertEquals(Reply.NOT_FOUND, guest.get("photo").status(), "an invitation is no pass");
        assertEquals(Reply.SEE_OTHER, guest.post("in", "").status());
        assertNotEquals(first, server.invitation());
        assertEquals(Reply.NOT_FOUND, guest.post("in", "").status());
        assertEquals(2, server.phones());
    }

    @Test
    void secretsAreOneHundredAndTwentyEightBitsAndNoTwoAlike() throws IOException {
        RawPhone other = RawPhone.in(server);
        assertTrue(phone.secret().matches("[0-9a-f]{32}"));
        assertNotEquals(phone.secret(), other.secret());
    }

    @Test
    void renewingEndsEveryPhone() throws IOException {
        server.renew();
        assertEquals(Reply.NOT_FOUND, phone.get("photo").status());
        phone = RawPhone.in(server);
        goesOn();
    }

    @ParameterizedTest
    @ValueSource(strings = {"bench.example", "127.0.0.1", "localhost:1", ""})
    void aHostThatIsNotThisAddressIsNotAnswered(String host) throws IOException {
        Map<String, String> headers = phone.usual();
        headers.put("Host", host);
        assertEquals(
                Reply.NOT_FOUND,
                phone.ask("GET", "/" + phone.secret() + "/photo", headers, new byte[0])
                        .status());
        goesOn();
    }

    @ParameterizedTest
    @ValueSource(strings = {"http://elsewhere.example", "null", ""})
    void aFormFromElsewhereDoesNothing(String origin) throws IOException {
        Map<String, String> headers = phone.usual();
        headers.put("Origin", origin);
        headers.put("Content-Type", "multipart/form-data; boundary=edge");
        byte[] form = RawPhone.form("photo", jpeg(60, 40));
        headers.put("Content-Length", Integer.toString(form.length));
        RawPhone.Heard heard = phone.ask("POST", "/" + phone.secret() + "/photo", headers, form);
        assertEquals(Reply.FORBIDDEN, heard.status());
        assertTrue(heard.words().startsWith("That form did not come from a page of this bench"), heard.words());
        assertEquals(List.of(), photos);
    }

    @ParameterizedTest
    @ValueSource(strings = {"PUT", "DELETE", "HEAD", "OPTIONS"})
    void onlyPagesAndFormsAreServed(String method) throws IOException {
        RawPhone.Heard heard = phone.ask(method, "/" + phone.secret() + "/photo", phone.usual(), new byte[0]);
        assertEquals(Reply.METHOD_NOT_ALLOWED, heard.status());
        goesOn();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"../../../etc/passwd", "%2e%2e%2fetc%2fpasswd", "photos/phone-1.jpg", "bench.css/../x", "live2"})
    void noPathReachesTheDisk(String path) throws IOException {
        assertEquals(Reply.NOT_FOUND, phone.get(path).status());
    }

    @Test
    void everythingComesFromTheBenchAlone() throws IOException {
        RawPhone.Heard page = phone.get("photo");
        assertEquals(Requests.POLICY, page.header("Content-Security-Policy"));
        assertEquals("nosniff", page.header("X-Content-Type-Options"));
        assertEquals("same-origin", page.header("Referrer-Policy"));
        assertEquals("no-store", page.header("Cache-Control"));
        assertFalse(page.body().matches("(?s).*(https?:|//|<style|style=|<script>|onclick).*"), page.body());
        for (String part : List.of("bench.css", "bench.js", "regular.ttf", "bold.ttf")) {
            assertEquals(Reply.OK, phone.get(part).status(), part);
        }
    }

    @Test
    void aPhotoIsKeptUnderANameOfTheBench() throws IOException {
        goesOn();
        assertEquals(folder.resolve("photos"), photos.get(0).getParent());
        assertTrue(photos.get(0).getFileName().toString().matches("phone-[0-9a-f]{16}\\.jpg"));
        assertEquals(1, onDisk());
    }

    @Test
    void thePhotoSentTwiceIsOnePhoto() throws IOException {
        goesOn();
        goesOn();
        assertEquals(1, photos.size());
        assertEquals(1, onDisk());
    }

    @Test
    void twoHundredMegabytesAreRefusedInASentence() throws IOException {
        RawPhone.Heard heard = phone.photo(new byte[200_000_000]);
        assertEquals(Reply.TOO_LARGE, heard.status());
        assertTrue(heard.words().startsWith("That is larger than 40 MB"), heard.words());
        assertEquals(0, onDisk());
        goesOn();
    }

    @Test
    void whatDoesNotSayHowLargeItIsIsMeasuredOnTheWay() throws IOException {
        Map<String, String> headers = phone.usual();
        headers.put("Origin", "http://" + headers.get("Host"));
        headers.put("Content-Type", "multipart/form-data; boundary=edge");
        headers.put("Transfer-Encoding", "chunked");
        byte[] form = RawPhone.form("photo", new byte[41_000_000]);
        ByteArrayOutputStream chunked = new ByteArrayOutputStream();
        chunked.write((Integer.toHexString(form.length) + "\r\n").getBytes(StandardCharsets.UTF_8));
        chunked.write(form);
        chunked.write("\r\n0\r\n\r\n".getBytes(StandardCharsets.UTF_8));
        RawPhone.Heard heard = phone.ask("POST", "/" + phone.secret() + "/photo", headers, chunked.toByteArray());
        assertEquals(Reply.TOO_LARGE, heard.status(), heard.words());
        assertEquals(0, onDisk());
        goesOn();
    }

    @Test
    void halfAnUploadLeavesNothingBehind() throws Exception {
        byte[] form = RawPhone.form("photo", new byte[500_000]);
        Map<String, String> headers = phone.usual();
        headers.put("Origin", "http://" + headers.get("Host"));
        headers.put("Content-Type", "multipart/form-data; boundary=edge");
        headers.put("Content-Length", Integer.toString(form.length));
        try (Socket socket = phone.socket()) {
            socket.getOutputStream().write(RawPhone.head("POST", "/" + phone.secret() + "/photo", headers));
            socket.getOutputStream().write(Arrays.copyOf(form, 250_000));
        }
        goesOn();
        for (int i = 0; i < 200 && onDisk() > 1; i++) {
            Thread.sleep(50);
        }
        assertEquals(1, onDisk(), "the half that came is gone again");
    }

    @Test
    void anEndThatIsMissingIsSaid() throws IOException {
        byte[] form = RawPhone.form("photo", jpeg(60, 40));
        RawPhone.Heard heard =
                phone.post("photo", "multipart/form-data; boundary=edge", Arrays.copyOf(form, form.length - 30));
        assertEquals(Reply.BAD_REQUEST, heard.status());
        assertEquals("The photo came in only in part. Stay near the Wi-Fi and send it again. Go on", heard.words());
        assertEquals(0, onDisk());
    }

    @Test
    void aFormWithoutAPhotoIsSaid() throws IOException {
        assertEquals(Reply.UNUSABLE, phone.photo(new byte[0]).status());
        assertEquals(
                Reply.UNUSABLE,
                phone.post("photo", "multipart/form-data; boundary=edge", RawPhone.form("film", jpeg(60, 40)))
                        .status());
        assertEquals(
                Reply.BAD_REQUEST,
                phone.post("photo", "text/plain", new byte[10]).status());
        assertEquals(0, onDisk());
    }

    @Test
    void aVideoIsRefusedInASentence() throws IOException {
        byte[] film = new byte[2000];
        System.arraycopy("\0\0\0\u0018ftypmp42".getBytes(StandardCharsets.ISO_8859_1), 0, film, 0, 12);
        RawPhone.Heard heard = phone.photo(film);
        assertEquals(Reply.UNUSABLE, heard.status());
        assertEquals("It is a film, not a photo. Take a photo. Go on", heard.words());
        assertEquals(0, onDisk());
        goesOn();
    }

    @Test
    void whatIsHeldInTooManyPixelsIsNotDecoded() throws IOException {
        byte[] photo = jpeg(60, 40);
        // The frame header of a JPEG (ISO/IEC 10918-1, B.2.2): height and width follow its marker, length and depth.
        for (int i = 0; i < photo.length - 9; i++) {
            if ((photo[i] & 0xff) == 0xff && (photo[i + 1] & 0xff) == 0xc0) {
                photo[i + 5] = 0x28;
                photo[i + 6] = 0;
                photo[i + 7] = 0x2c;
                photo[i + 8] = 0;
            }
        }
        RawPhone.Heard heard = phone.photo(photo);
        assertEquals(Reply.UNUSABLE, heard.status(), "10,240 by 11,264 pixels");
        assertTrue(heard.words().contains("more than 100 megapixels"), heard.words());
        assertEquals(0, onDisk());
    }

    @Test
    void aThousandRequestsASecondAreSlowedDownAndTheBenchGoesOn() throws Exception {
        int refused = 0;
        for (int i = 0; i < 1000; i++) {
            refused += phone.get("bench.css").status() == Reply.TOO_MANY ? 1 : 0;
        }
        Flow flow = new Flow(200, 400, () -> 0);
        for (int i = 0; i < 400; i++) {
            assertTrue(flow.pass());
        }
        assertFalse(flow.pass(), "the four hundred and first at the same instant");
        if (refused > 0) {
            Thread.sleep(1000);
        }
        goesOn();
    }

    @Test
    void aStrangersFloodFindsNothingAndSlowsNoPhoneDown() throws Exception {
        for (int i = 0; i < 1000; i++) {
            assertEquals(
                    Reply.NOT_FOUND,
                    phone.ask("GET", "/" + "0".repeat(32) + "/photo", phone.usual(), new byte[0])
                            .status());
        }
        goesOn();
    }

    /** Each holds a thread of the server until it says the rest, or for two minutes. */
    @Test
    void strangersWhoSayHalfARequestAndWaitHoldNoPhoneUp() throws Exception {
        List<Socket> waiting = new ArrayList<>();
        try {
            for (int i = 0; i < 300; i++) {
                Socket half = phone.socket();
                waiting.add(half);
                half.getOutputStream().write("GET /dose HT".getBytes(StandardCharsets.US_ASCII));
                half.getOutputStream().flush();
            }
            Thread.sleep(500);
            goesOn();
        } finally {
            for (Socket half : waiting) {
                half.close();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"mailto:bench", "*", "//", "http://elsewhere.example/", "/%", "/a/b/c/d"})
    void whatIsNoAddressOfAPageFindsNothing(String target) throws Exception {
        int status = phone.ask("GET", target, phone.usual(), new byte[0]).status();
        // The server itself hangs up on what is no address at all.
        assertTrue(List.of(0, Reply.NOT_FOUND, Reply.BAD_REQUEST).contains(status), target + ": " + status);
        goesOn();
    }

    @Test
    void phonesThatFellAsleepHoldNobodyUpAndOneThatWakesHearsTheNews() throws Exception {
        List<Socket> asleep = new ArrayList<>();
        for (int i = 0; i < Passes.MOST_PHONES + 8; i++) {
            Socket socket = phone.socket();
            socket.getOutputStream().write(RawPhone.head("GET", "/" + phone.secret() + "/live", phone.usual()));
            asleep.add(socket);
        }
        // One fell asleep over half a request.
        Socket half = phone.socket();
        half.getOutputStream().write("POST /".getBytes(StandardCharsets.UTF_8));
        asleep.add(half);
        goesOn();
        try (Socket awake = phone.socket()) {
            awake.getOutputStream().write(RawPhone.head("GET", "/" + phone.secret() + "/live", phone.usual()));
            BufferedReader news =
                    new BufferedReader(new InputStreamReader(awake.getInputStream(), StandardCharsets.UTF_8));
            String line = news.readLine();
            while (line != null && !line.startsWith("data: ")) {
                line = news.readLine();
            }
            assertTrue(line != null, "the stream of the one that woke is served, an older one ended");
        }
        for (Socket socket : asleep) {
            socket.close();
        }
        goesOn();
    }

    @Test
    void aTakenPortIsSaid() {
        int port = Integer.parseInt(server.invitation().replaceAll(".*:(\\d+)/.*", "$1"));
        PhoneFailure failure = assertThrows(
                PhoneFailure.class,
                () -> PhoneServer.open(here(), port, new BenchTop(HULL, null), folder, Clock.systemUTC()));
        assertEquals(
                "Port " + port
                        + " of lo (127.0.0.1) is taken by another program, perhaps by another window of this one."
                        + " Choose another port.",
                failure.getMessage());
    }

    @Test
    void closingEndsIt() throws IOException {
        server.close();
        assertThrows(IOException.class, () -> phone.get("photo"));
    }

    @Test
    void noNetworkSeveralNetworksAndAStrangeOneAreSaid() throws Exception {
        LocalNetwork home = new LocalNetwork("wlan0", InetAddress.getByName("192.168.7.20"));
        LocalNetwork shop = new LocalNetwork("eth0", InetAddress.getByName("10.0.0.4"));
        LocalNetwork spare = new LocalNetwork("eth1", InetAddress.getByName("169.254.3.4"));
        assertEquals(home, LocalNetwork.choose(List.of(home), Optional.empty()));
        assertEquals(home, LocalNetwork.choose(List.of(home, spare), Optional.empty()));
        assertEquals(shop, LocalNetwork.choose(List.of(home, shop), Optional.of("eth0")));
        assertEquals(shop, LocalNetwork.choose(List.of(home, shop), Optional.of("10.0.0.4")));
        assertEquals(
                "This machine is on no local network. Join it to the same Wi-Fi as the phone, or open a hotspot on the"
                        + " phone and join that.",
                assertThrows(PhoneFailure.class, () -> LocalNetwork.choose(List.of(), Optional.empty()))
                        .getMessage());
        assertEquals(
                "This machine is on several networks: wlan0 (192.168.7.20), eth0 (10.0.0.4). Choose the one that the"
                        + " phone is on.",
                assertThrows(PhoneFailure.class, () -> LocalNetwork.choose(List.of(home, shop), Optional.empty()))
                        .getMessage());
        assertEquals(
                "This machine is not on the network \"wlan9\". It is on wlan0 (192.168.7.20).",
                assertThrows(PhoneFailure.class, () -> LocalNetwork.choose(List.of(home), Optional.of("wlan9")))
                        .getMessage());
    }

    /** The long and the short forms of RFC 5952, sections 4.2.2 and 4.2.3. */
    @ParameterizedTest
    @CsvSource({
        "fd00:0:0:0:0:0:0:2, [fd00::2]",
        "fd12:3456:0:0:1:0:0:9, [fd12:3456::1:0:0:9]",
        "fd12:0:3456:1:1:1:1:9, [fd12:0:3456:1:1:1:1:9]",
        "fd12:0:0:1:0:0:0:9, [fd12:0:0:1::9]",
        "192.168.1.20, 192.168.1.20"
    })
    void anAddressIsWrittenAsBrowsersWriteIt(String address, String host) throws Exception {
        Gate gate = new Gate(new InetSocketAddress(InetAddress.getByName(address), 8417), new Passes());
        assertEquals("http://" + host + ":8417", gate.origin());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.0.0.0", "::", "8.8.8.8", "192.0.2.1", "2001:db8::1"})
    void itIsNeverServedToTheWholeWorld(String address) throws Exception {
        InetAddress there = InetAddress.getByName(address);
        assertThrows(IllegalArgumentException.class, () -> new LocalNetwork("any", there));
    }
}
