package tintwright.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.bench.job.BenchFile;
import tintwright.bench.job.FillDraft;
import tintwright.bench.job.Job;
import tintwright.bench.top.KeptBench;
import tintwright.colour.Lab;
import tintwright.cup.Cup;
import tintwright.cup.Deed;
import tintwright.demo.MeteredShop;
import tintwright.files.Demo;
import tintwright.reading.ColourReading;
import tintwright.reading.EyeVerdict;
import tintwright.reading.FilmState;
import tintwright.window.Desks;

/** The pages over a job that is kept on disk: one deed is one deed, and every phone sees it. */
class PhonePagesTest {
    @TempDir
    Path folder;

    private KeptBench bench;
    private PhoneServer server;
    private RawPhone phone;
    private RawPhone other;

    /** The demo's boat with an empty cup for its first place. */
    static Job job() {
        var places = MeteredShop.places();
        String white = MeteredShop.shelf().bases().get(0).id();
        return new Job(
                places.get(0).boat(),
                places,
                0,
                MeteredShop.shelf(),
                150,
                0.01,
                Set.of(),
                FillDraft.of(Demo.fillOrder().job(), OptionalDouble.empty()),
                Optional.of(Cup.empty("bow", places.get(0), 150, 0.01, white)),
                List.of());
    }

    private Path file() {
        return folder.resolve("bench.json");
    }

    @BeforeEach
    void open() throws Exception {
        BenchFile.keep(file(), Optional.empty(), job());
        open(Clock.fixed(Instant.parse("2026-03-02T09:00:00Z"), ZoneOffset.UTC));
    }

    private void open(Clock clock) throws Exception {
        bench = KeptBench.open(file(), clock, Desks::learn, Optional.empty());
        server = PhoneServer.open(PhoneRefusalsTest.here(), 0, bench.top(), folder.resolve("photos"), clock);
        phone = RawPhone.in(server);
        other = RawPhone.in(server);
    }

    @AfterEach
    void close() {
        server.close();
        bench.close();
    }

    private static String field(String page, String name) {
        Matcher value =
                Pattern.compile("name=\"" + name + "\"[^>]*value=\"([^\"]*)\"").matcher(page);
        assertTrue(value.find(), name);
        return value.group(1);
    }

    private static String form(String... pairs) {
        StringBuilder form = new StringBuilder();
        for (int i = 0; i < pairs.length; i += 2) {
            form.append(i == 0 ? "" : "&")
                    .append(pairs[i])
                    .append('=')
                    .append(URLEncoder.encode(pairs[i + 1], StandardCharsets.UTF_8));
        }
        return form.toString();
    }

    private List<Deed> onDisk() throws Exception {
        return BenchFile.read(file()).cup().orElseThrow().standing().stream()
                .map(entry -> entry.deed())
                .toList();
    }

    @Test
    void theFirstPageOfACupIsItsDose() throws Exception {
        assertEquals("dose", phone.get("").header("Location"));
    }

    @Test
    void whatIsInIsWrittenToDiskWithTheWhiteHeldBack() throws Exception {
        String page = phone.get("dose").body();
        String grams = field(page, "grams");
        assertEquals(
                Reply.SEE_OTHER,
                phone.post("dose", form("key", field(page, "key"), "grams", grams))
                        .status());
        assertEquals(2, onDisk().size());
        assertEquals(Double.parseDouble(grams), ((Deed.Weighed) onDisk().get(0)).grams(), 0.005);
        assertTrue(onDisk().get(1) instanceof Deed.Held);
        assertTrue(
                phone.get("dose").words().contains("It is in: "),
                phone.get("dose").words());
        assertFalse(other.get("dose").words().contains("It is in: "), "said to the phone that did it");
        assertTrue(other.get("dose").words().contains("In the cup"));
    }

    @Test
    void aCupIsBegunFromThePhoneAndNotTwice() throws Exception {
        server.close();
        bench.close();
        Job all = job();
        BenchFile.keep(file(), Optional.of(all), all.mixing(Optional.empty()));
        open(Clock.systemUTC());
        assertTrue(phone.get("dose").words().contains("Begin a cup"));
        phone.post("dose", "begin=true");
        assertTrue(
                phone.get("dose").words().contains("Weigh in"),
                phone.get("dose").words());
        other.post("dose", "begin=true");
        assertTrue(other.get("dose").words().contains("The bench has gone on meanwhile."));
        assertEquals(
                all.places().get(0).place() + " 1",
                BenchFile.read(file()).cup().orElseThrow().name());
    }

    @Test
    void theSameDosePressedOnTwoPhonesIsOneDose() throws Exception {
        String one = phone.get("dose").body();
        String two = other.get("dose").body();
        assertEquals(field(one, "key"), field(two, "key"));
        String form = form("key", field(one, "key"), "grams", field(one, "grams"));
        CompletableFuture<Integer> first = CompletableFuture.supplyAsync(() -> status(phone, form));
        CompletableFuture<Integer> second = CompletableFuture.supplyAsync(() -> status(other, form));
        assertEquals(Reply.SEE_OTHER, first.join());
        assertEquals(Reply.SEE_OTHER, second.join());
        assertEquals(2, onDisk().size(), "white and what is held back, once");
        assertTrue(other.get("dose").words().contains("It is in: "), "both hear what came of it");
        other.post("dose", form("key", "bow/0/7", "grams", "5"));
        assertTrue(other.get("dose").words().contains("The bench has gone on meanwhile."));
        assertEquals(2, onDisk().size());
    }

    private static int status(RawPhone phone, String form) {
        try {
            return phone.post("dose", form).status();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void whatIsNoMassIsRefusedInASentenceAndMayBeSentAgain() throws Exception {
        String page = phone.get("dose").body();
        for (String typed : List.of("", "a lot", "-3", "1e9")) {
            phone.post("dose", form("key", field(page, "key"), "grams", typed));
            assertTrue(phone.get("dose").body().contains("<p class=\"wrong\""), typed);
            assertEquals(List.of(), onDisk(), typed);
        }
        phone.post("dose", form("key", field(page, "key"), "grams", "90,5"));
        assertEquals(90.5, ((Deed.Weighed) onDisk().get(0)).grams(), 1e-9);
    }

    @Test
    void aNameWithMarkUpInItStaysWords() throws Exception {
        phone.post("dose", form("key", field(phone.get("dose").body(), "key"), "grams", "<script>alert(1)</script>"));
        assertFalse(phone.get("dose").body().contains("<script>alert"));
        assertTrue(phone.get("dose").body().contains("&lt;script&gt;alert"));
    }

    @Test
    void theDayIsTickedOffOnEveryPhone() throws Exception {
        String page = phone.get("day").body();
        String step = field(page, "step").replace("&quot;", "\"").replace("&amp;", "&");
        phone.post("day", form("deed", "tick", "step", step, "done", "true"));
        other.post("day", form("deed", "tick", "step", step, "done", "true"));
        assertEquals(1, bench.top().sight().day().orElseThrow().ticked().size());
        assertTrue(other.get("day").body().contains("class=\"tick done\" aria-pressed=\"true\""));
        phone.post("day", form("deed", "tick", "step", "9999 no such step", "done", "true"));
        assertEquals(1, bench.top().sight().day().orElseThrow().ticked().size());
        assertTrue(phone.get("day").words().contains("The bench has gone on meanwhile."));
        phone.post("day", form("deed", "tick", "step", step, "done", "false"));
        assertEquals(Set.of(), bench.top().sight().day().orElseThrow().ticked());
    }

    @Test
    void ticksAndClocksAreStillThereWhenTheBenchIsOpenedAgain() throws Exception {
        String step =
                field(phone.get("day").body(), "step").replace("&quot;", "\"").replace("&amp;", "&");
        phone.post("day", form("deed", "tick", "step", step, "done", "true"));
        phone.post("day", form("deed", "catalysed", "batch", "1"));
        try (KeptBench again = KeptBench.open(file(), Clock.systemUTC(), Desks::learn, Optional.empty())) {
            assertEquals(Set.of(step), again.top().sight().day().orElseThrow().ticked());
            assertEquals(
                    Set.of(1), again.top().sight().day().orElseThrow().running().keySet());
        }
    }

    @Test
    void theCatalystStartsOneClockHoweverOftenItIsPressed() throws Exception {
        phone.post("day", form("deed", "catalysed", "batch", "1"));
        other.post("day", form("deed", "catalysed", "batch", "1"));
        String page = other.get("day").body();
        assertTrue(page.contains("<h2>Batch 1</h2>"), page);
        assertTrue(page.contains("data-left=\""));
        phone.post("day", form("deed", "seen", "batch", "1", "cue", "tape off"));
        assertFalse(phone.get("day").body().contains("Done: tape off"));
    }

    @Test
    void tooDarkAsksForWhatTheBenchMustSeeFirst() throws Exception {
        String words = phone.get("dark").words();
        assertTrue(words.contains("Put nothing more in."), words);
        assertTrue(words.contains("say what you see, or take a photo of both"), words);
    }

    @Test
    void whatTheEyeSeesGoesIntoTheCupAndLeadsToTheWaysBack() throws Exception {
        String page = phone.get("dose").body();
        assertFalse(page.contains("href=\"eye\""), "nothing to look at yet");
        phone.post("dose", form("key", field(page, "key"), "grams", field(page, "grams")));
        page = phone.get("dose").body();
        phone.post("dose", form("key", field(page, "key"), "grams", "2"));
        assertTrue(phone.get("dose").body().contains("href=\"eye\""));
        for (int look = 1; look <= 2; look++) {
            page = phone.get("eye").body();
            assertTrue(page.contains("data:image/svg+xml,"), page);
            assertEquals(
                    "dose",
                    phone.post(
                                    "eye",
                                    form(
                                            "key",
                                            field(page, "key"),
                                            "depth",
                                            "MUCH_TOO_DARK",
                                            "hue",
                                            "TOO_RED",
                                            "amount",
                                            "LITTLE"))
                            .header("Location"));
            assertTrue(phone.get("dose").words().contains("Written down: much too dark and a little too red."));
        }
        assertTrue(
                phone.get("dose").words().contains("See the ways back"),
                phone.get("dose").words());
        String ways = phone.get("dark").body();
        assertTrue(ways.contains("Go this way"), ways);
        phone.post("dark", form("key", field(ways, "key"), "way", "0"));
        assertTrue(
                phone.get("dose").words().contains("It is poured off"),
                phone.get("dose").words());
        assertEquals(2, onDisk().stream().filter(Deed.Seen.class::isInstance).count());
    }

    @Test
    void thePhotoOfTheDabBesideTheHullIsReadIntoTheCup() throws Exception {
        String page = phone.get("dose").body();
        phone.post("dose", form("key", field(page, "key"), "grams", field(page, "grams")));
        assertTrue(phone.get("photo")
                .words()
                .contains("Lay a cured dab of the cup itself at the edge of the sheet's window"));
        byte[] photo = PhoneBenches.photoOf(job().shelf(), new Color(138, 150, 140), new Color(196, 200, 196), 1500);
        assertEquals("photo", phone.photo(photo).header("Location"));
        String words = phone.get("photo").words();
        assertTrue(words.contains("The hull is read, ") && words.contains("The dab beside it too, "), words);
        Deed.Read read = (Deed.Read) onDisk().get(2);
        Lab chip = ((ColourReading) read.reading()).lab();
        Lab hull = read.hull().orElseThrow().lab();
        // sRGB 196, 200, 196 is L* 80, and 138, 150, 140 is 60.7 (IEC 61966-2-1).
        assertEquals(80 - 60.7, chip.lightness() - hull.lightness(), 6);
    }

    @Test
    void anEyeThatCannotTellIsHeardAndHalfAnAnswerIsNot() throws Exception {
        String page = phone.get("dose").body();
        phone.post("dose", form("key", field(page, "key"), "grams", field(page, "grams")));
        String key = field(phone.get("eye").body(), "key");
        assertEquals("eye", phone.post("eye", form("key", key, "hue", "NONE")).header("Location"));
        assertTrue(phone.get("eye").words().contains("Choose one of each row"));
        assertEquals(
                Reply.BAD_REQUEST,
                phone.post("eye", form("key", key, "depth", "DEEP", "hue", "NONE"))
                        .status());
        phone.post("eye", form("key", key, "untold", "true", "wet", "true"));
        assertEquals(new Deed.Seen(EyeVerdict.cannotTell(FilmState.WET)), onDisk().get(2));
    }

    @Test
    void aDeedIsSeenOnTheOtherPhoneAtOnce() throws Exception {
        try (Socket socket = other.socket()) {
            Map<String, String> headers = other.usual();
            headers.put("Accept", "text/event-stream");
            socket.getOutputStream().write(RawPhone.head("GET", "/" + other.secret() + "/live", headers));
            BufferedReader in =
                    new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
            String before = data(in);
            String page = phone.get("dose").body();
            phone.post("dose", form("key", field(page, "key"), "grams", "90"));
            assertFalse(before.equals(data(in)));
            assertTrue(other.get("dose").words().contains("90 g"));
        }
    }

    private static String data(BufferedReader in) throws Exception {
        String line = in.readLine();
        while (line != null && !line.startsWith("data: ")) {
            line = in.readLine();
        }
        return line;
    }

    @Test
    void aFormThatNoPageHoldsIsRefused() throws Exception {
        assertEquals(Reply.BAD_REQUEST, phone.post("day", form("deed", "eat")).status());
        assertEquals(
                Reply.BAD_REQUEST,
                phone.post("day", form("deed", "catalysed", "batch", "x")).status());
        assertEquals(Reply.BAD_REQUEST, phone.post("dark", "way=%zz").status());
        assertEquals(
                Reply.WRONG_TYPE, phone.post("dose", "text/plain", new byte[3]).status());
        assertEquals(
                Reply.TOO_LARGE, phone.post("dose", "grams=" + "1".repeat(9000)).status());
    }
}
