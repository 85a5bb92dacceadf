package tintwright.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.bench.job.BenchFile;
import tintwright.bench.log.GiveOut;
import tintwright.bench.log.KeepBoat;
import tintwright.bench.log.ShopLog;
import tintwright.bench.log.WriteLog;
import tintwright.bench.top.BenchTop.Act;
import tintwright.bench.top.BenchTop.CupNow;
import tintwright.bench.top.KeptBench;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;
import tintwright.window.Desks;

/** The log on the phone, and the label of a cup that leads back to its recipe when it is photographed at the bench. */
class LabelOnThePhoneTest {
    @TempDir
    Path folder;

    private ShopLog log;
    private KeptBench bench;
    private PhoneServer server;
    private RawPhone phone;

    @BeforeEach
    void open() throws Exception {
        Path file = folder.resolve("bench.json");
        BenchFile.keep(file, Optional.empty(), PhonePagesTest.job());
        log = ShopLog.demo(Clock.systemUTC());
        bench = KeptBench.open(file, Clock.systemUTC(), Desks::learn, Optional.of(log));
        server =
                PhoneServer.open(PhoneRefusalsTest.here(), 0, bench.top(), folder.resolve("photos"), Clock.systemUTC());
        phone = RawPhone.in(server);
    }

    @AfterEach
    void close() throws Exception {
        server.close();
        bench.close();
        log.close();
    }

    private Noted<Page.Cup> cup() {
        return log.cup(log.boat("Tarrowmere"), Optional.empty());
    }

    @Test
    void theLogOfTheBoatInHandLeadsToEachRecipe() throws IOException {
        String page = phone.get("log").body();
        assertTrue(page.contains("\u201c" + cup().page().name() + "\u201d"), page);
        assertTrue(page.contains("recipe?cup=" + cup().id()), page);
        RawPhone.Heard recipe = phone.get("recipe?cup=" + cup().id());
        assertTrue(recipe.words().contains("g in 100 g"), recipe.words());
        assertTrue(recipe.words().contains(cup().page().name()), recipe.words());
        assertTrue(!recipe.body().contains("style="), "no style in the page: the policy would not let it through");
        assertTrue(recipe.body().contains("href=\"label?cup=" + cup().id()), recipe.body());
        RawPhone.Heard label = phone.get("label?cup=" + cup().id());
        assertEquals("application/pdf", label.header("Content-Type"));
        assertTrue(label.body().startsWith("%PDF-"));
    }

    @Test
    void aCupThatIsNotInTheLogIsSaid() throws IOException {
        for (String asked : new String[] {"", "?cup=", "?cup=../../etc/passwd", "?cup=" + new UUID(1, 2), "?cup=%zz"}) {
            int status = phone.get("recipe" + asked).status();
            assertTrue(status == Reply.NOT_FOUND || status == Reply.BAD_REQUEST, asked + ": " + status);
        }
        assertTrue(
                phone.get("recipe?cup=" + new UUID(1, 2)).words().startsWith("The log of this bench has no such cup."));
        assertEquals(Reply.METHOD_NOT_ALLOWED, phone.post("log", "cup=1").status());
    }

    @Test
    void theLabelPhotographedAtTheBenchOpensTheRecipe() throws Exception {
        RawPhone.Heard came = phone.photo(PhoneBenches.photoOf(new GiveOut(log).labelPdf(cup())));
        assertEquals(
                "recipe?cup=" + cup().id(),
                came.header("Location"),
                phone.get("photo").words());
    }

    @Test
    void theLabelOfAnotherShopIsSaid() throws Exception {
        try (ShopLog other = ShopLog.open(folder.resolve("log"), folder.resolve("home"), Clock.systemUTC())) {
            new KeepBoat(other).boat("Tarrowmere");
            CupNow begun = bench.top().sight().cup().orElseThrow();
            bench.top().act(begun.key(), new Act.Weighed("90")).join();
            new WriteLog(other)
                    .inHand(
                            "Tarrowmere",
                            BenchFile.read(folder.resolve("bench.json")).cup().orElseThrow(),
                            PhonePagesTest.job().shelf());
            Noted<Page.Cup> theirs = other.cup(other.boat("Tarrowmere"), Optional.empty());
            assertEquals(
                    "photo",
                    phone.photo(PhoneBenches.photoOf(new GiveOut(other).labelPdf(theirs)))
                            .header("Location"));
            assertTrue(
                    phone.get("photo").words().contains("this bench's log has no such cup"),
                    phone.get("photo").words());
        }
    }

    @Test
    void theCupIsInTheLogAsItIsMixed() throws IOException {
        CupNow begun = bench.top().sight().cup().orElseThrow();
        bench.top().act(begun.key(), new Act.Weighed("90")).join();
        assertTrue(
                phone.get("log").words().contains("\u201cbow\u201d 90.0 g plain white"),
                phone.get("log").words());
    }
}
