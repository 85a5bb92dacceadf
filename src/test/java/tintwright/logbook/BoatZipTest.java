package tintwright.logbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tintwright.logbook.disk.Entry;
import tintwright.logbook.disk.EntryIds;
import tintwright.logbook.disk.Folders;
import tintwright.logbook.disk.Header;
import tintwright.logbook.disk.LogFailure;
import tintwright.logbook.disk.Pen;

class BoatZipTest {
    @TempDir
    Path tmp;

    private LogBook ours;
    private LogBook theirs;
    private UUID boat;

    @BeforeEach
    void twoShops() {
        ours = LogBook.open(tmp.resolve("ours"), Folders.bench(tmp, "anna"), Folders.NOON, new SplittableRandom(1));
        theirs = LogBook.open(tmp.resolve("theirs"), Folders.bench(tmp, "bert"), Folders.NOON, new SplittableRandom(2));
        boat = ours.begin(Samples.boat()).entry().id();
        Samples.every().stream().skip(1).forEach(page -> ours.write(Optional.of(boat), page));
        ours.begin(new Page.Boat("Another", "", Optional.empty(), "", List.of()));
    }

    @AfterEach
    void close() {
        ours.close();
        theirs.close();
    }

    @Test
    void aBoatGoesToAnotherShopWithEveryWordAndItsPhotos() throws Exception {
        Path photo = tmp.resolve("ours/photos/tarrowmere-bow.jpg");
        Files.createDirectories(photo.getParent());
        byte[] picture = UnmarkedPhotoTest.picture("jpg");
        Files.write(photo, picture);
        UUID note = ours.write(Optional.of(boat), new Page.Remark(Optional.empty(), "first"))
                .entry()
                .id();
        ours.correct(note, new Page.Remark(Optional.empty(), "second"));
        byte[] zip = BoatZip.of(ours, boat, Folders.NOON.instant(), false).bytes();

        BoatZip.Imported imported = BoatZip.into(theirs, zip);
        assertEquals(List.of("Tarrowmere"), imported.boats());
        assertEquals(Samples.every().size() + 2, imported.added());
        assertEquals(List.of(), imported.left());
        assertEquals(Optional.empty(), imported.waiting());
        assertEquals(ours.of(boat).toString(), theirs.of(boat).toString());
        assertEquals(2, theirs.history(note).size());
        assertEquals(1, theirs.boats().size());
        assertArrayEquals(picture, Files.readAllBytes(tmp.resolve("theirs/photos/tarrowmere-bow.jpg")));

        BoatZip.Imported again = BoatZip.into(theirs, zip);
        assertEquals(0, again.added());
        assertEquals(Samples.every().size() + 2, again.known());
    }

    @Test
    void unpackedByHandItOpensLikeAnyLog() throws Exception {
        byte[] zip = BoatZip.of(ours, boat, Folders.NOON.instant(), false).bytes();
        Path log = Files.createDirectories(tmp.resolve("unpacked/log"));
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                Files.write(tmp.resolve("unpacked").resolve(entry.getName()), in.readAllBytes());
            }
        }
        try (LogBook book = LogBook.open(log, Folders.bench(tmp, "carl"), Folders.NOON, new SplittableRandom(3))) {
            assertEquals(List.of(), book.troubles());
            assertEquals(ours.of(boat).toString(), book.of(boat).toString());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../evil.jsonl",
                "log/../../evil.jsonl",
                "/etc/evil.jsonl",
                "log/photos/../../x.jpg",
                "log\\..\\evil.jsonl",
                "C:/evil.jsonl",
                "log/photos/.hidden.jpg",
                "log/photos/run.sh",
                "log/sub/evil.jsonl",
                "log/photos/a/b.jpg",
                "log/photos/x.jpg\u0000.sh",
                "readme.txt"
            })
    void aNameThatNoBoatHasIsRefused(String name) throws IOException {
        LogFailure refused = assertThrows(LogFailure.class, () -> BoatZip.into(theirs, zipOf(name, new byte[3])));
        assertTrue(refused.getMessage().contains("Nothing was taken"), refused.getMessage());
        assertFalse(Files.exists(tmp.resolve("theirs")), "nothing was written");
    }

    @Test
    void aZipThatUnpacksWithoutEndIsRefused() {
        byte[] zeros = new byte[(int) BoatZip.LARGEST_PHOTO + 1];
        LogFailure refused =
                assertThrows(LogFailure.class, () -> BoatZip.into(theirs, zipOf("log/photos/big.jpg", zeros)));
        assertTrue(refused.getMessage().contains("64 MiB"), refused.getMessage());
    }

    @Test
    void tooManyFilesAreRefused() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (int i = 0; i <= BoatZip.MOST_FILES; i++) {
                zip.putNextEntry(new ZipEntry("log/photos/" + i + ".jpg"));
            }
        }
        assertThrows(LogFailure.class, () -> BoatZip.into(theirs, bytes.toByteArray()));
    }

    @Test
    void noiseAndEveryCutOffZipIsRefusedOrNamedAndNeverACrash() throws Exception {
        harm(300);
    }

    /** {@code mvn test -Dwanted.groups=study -Dtest=BoatZipTest}. */
    @Test
    @Tag("study")
    void noiseAndEveryCutOffZipIsRefusedOrNamed5000Times() throws Exception {
        harm(5000);
    }

    private void harm(int rounds) throws Exception {
        SplittableRandom random = new SplittableRandom(9);
        byte[] zip = BoatZip.of(ours, boat, Folders.NOON.instant(), false).bytes();
        for (int round = 0; round < rounds; round++) {
            byte[] harmed = round % 2 == 0 ? Arrays.copyOf(zip, random.nextInt(zip.length)) : zip.clone();
            for (int hit = 0; round % 2 == 1 && hit < 3; hit++) {
                harmed[random.nextInt(harmed.length)] ^= (byte) (1 << random.nextInt(8));
            }
            try (LogBook fresh = LogBook.open(
                    tmp.resolve("fresh-" + round),
                    Folders.bench(tmp, "dora"),
                    Folders.NOON,
                    new SplittableRandom(round))) {
                BoatZip.Imported imported = BoatZip.into(fresh, harmed);
                assertTrue(
                        imported.added() == Samples.every().size()
                                || !imported.left().isEmpty(),
                        "round " + round);
            } catch (LogFailure refused) {
                assertTrue(
                        refused.getMessage().endsWith(".")
                                || refused.getMessage().contains("Nothing was taken"),
                        refused.getMessage());
                assertEquals(1, refused.getMessage().lines().count(), refused.getMessage());
                assertTrue(refused.isAboutInput(), refused.getMessage());
                assertFalse(Files.exists(tmp.resolve("fresh-" + round)), "nothing is written");
            }
        }
    }

    /** A zip may not rewrite what the shop knows of its own boats. */
    @Test
    void entriesThatSpeakOfOtherBoatsAreLeftOut() throws Exception {
        UUID own = theirs.begin(new Page.Boat("Own boat", "", Optional.empty(), "", List.of()))
                .entry()
                .id();
        String evilNote = "{\"text\":\"gone\"}";
        Entry itself = Entry.of(
                UUID.fromString("019de000-0000-7000-8000-00000000000a"),
                Folders.NOON.instant(),
                "boat",
                UUID.fromString("019de000-0000-7000-8000-00000000000a"),
                null,
                "{\"name\":\"Trojan\"}");
        Entry takesBack = Entry.of(
                UUID.fromString("ffffffff-0000-7000-8000-00000000000b"),
                Folders.NOON.instant(),
                Entry.WITHDRAWN,
                itself.id(),
                own,
                evilNote);
        Entry foreign = Entry.of(
                UUID.fromString("ffffffff-0000-7000-8000-00000000000c"),
                Folders.NOON.instant(),
                "note",
                own,
                null,
                evilNote);
        ByteArrayOutputStream log = new ByteArrayOutputStream();
        log.write(new Header(1, "evil", Folders.NOON.instant()).line());
        log.write(itself.line(1));
        log.write(takesBack.line(2));
        log.write(foreign.line(3));
        BoatZip.Imported imported = BoatZip.into(theirs, zipOf("log/evil-0001.jsonl", log.toByteArray()));
        assertEquals(1, imported.added());
        assertEquals(2, imported.left().size());
        assertTrue(theirs.find(own).isPresent());
        assertEquals(1, theirs.of(own).size());
    }

    @Test
    void aNewerZipIsRefused() {
        byte[] newer = new Header(2, "tomorrow", Folders.NOON.instant()).line();
        LogFailure refused =
                assertThrows(LogFailure.class, () -> BoatZip.into(theirs, zipOf("log/boat-0001.jsonl", newer)));
        assertTrue(refused.getMessage().contains("newer Tintwright"));
    }

    @Test
    void whatStandsHereIsNotOverriddenByAZip() throws Exception {
        BoatZip.into(
                theirs, BoatZip.of(ours, boat, Folders.NOON.instant(), false).bytes());
        String before = theirs.of(boat).toString();
        Entry known = theirs.store().ask(ledger -> ledger.find(boat)).orElseThrow();
        // Whichever of the two sorts first: each bench that met both in a shared folder would take that one.
        for (String name : List.of("A", "zzzz")) {
            Entry other = Entry.of(boat, known.at(), "boat", boat, null, "{\"name\":\"" + name + "\"}");
            BoatZip.Imported imported = BoatZip.into(theirs, zipOf("log/evil-0001.jsonl", log(other)));
            assertEquals(before, theirs.of(boat).toString());
            assertEquals(0, imported.added());
            assertTrue(
                    imported.left().get(0).contains("what stands here counts"),
                    imported.left().toString());
        }
        try (Stream<Path> kept = Files.list(tmp.resolve("theirs").resolve(Pen.SET_ASIDE))) {
            assertEquals(2, kept.count(), "both are kept");
        }
    }

    @Test
    void aNameOfTheFutureIsLeftOutAndFreezesNothing() throws Exception {
        UUID last = new UUID(-1, -1);
        Entry itself = Entry.of(boat, Folders.NOON.instant(), "boat", boat, null, "{\"name\":\"Trojan\"}");
        Entry ever = Entry.of(last, Folders.NOON.instant(), "note", boat, null, Folders.note("for ever"));
        BoatZip.Imported imported = BoatZip.into(theirs, zipOf("log/evil-0001.jsonl", log(itself, ever)));
        assertEquals(1, imported.added());
        assertTrue(
                imported.left().get(0).contains("a name of the future"),
                imported.left().toString());

        // In a folder that is shared it can be met all the same.
        theirs.store().adopt(List.of(ever));
        assertThrows(
                IllegalArgumentException.class, () -> theirs.correct(last, new Page.Remark(Optional.empty(), "right")));
        UUID next = theirs.write(Optional.of(boat), new Page.Remark(Optional.empty(), "later"))
                .entry()
                .id();
        assertTrue(Math.abs(EntryIds.millis(next) - Folders.NOON.millis()) < 1000, "" + next);
    }

    @Test
    void whatCorrectsACorrectionIsLeftOut() throws Exception {
        UUID one = UUID.fromString("019de000-0000-7000-8000-0000000000a1");
        UUID two = UUID.fromString("019de000-0000-7000-8000-0000000000a2");
        Entry itself = Entry.of(boat, Folders.NOON.instant(), "boat", boat, null, "{\"name\":\"Trojan\"}");
        Entry first = Entry.of(one, Folders.NOON.instant(), "note", boat, two, Folders.note("round"));
        Entry second = Entry.of(two, Folders.NOON.instant(), "note", boat, one, Folders.note("and round"));
        BoatZip.Imported imported = BoatZip.into(theirs, zipOf("log/evil-0001.jsonl", log(itself, first, second)));
        assertEquals(1, imported.added());
        assertEquals(2, imported.left().size());
    }

    @Test
    void aZipOfTooManyEntriesIsRefused() throws Exception {
        ByteArrayOutputStream log = new ByteArrayOutputStream();
        log.write(new Header(1, "evil", Folders.NOON.instant()).line());
        for (int i = 0; i <= BoatZip.MOST_ENTRIES; i++) {
            UUID id = new UUID(0x019de00000007000L, 0x8000000000000000L | i);
            log.write(Entry.of(id, Folders.NOON.instant(), "note", boat, null, "{}")
                    .line(i + 1));
        }
        LogFailure refused = assertThrows(
                LogFailure.class, () -> BoatZip.into(theirs, zipOf("log/evil-0001.jsonl", log.toByteArray())));
        assertTrue(refused.getMessage().contains("more than 200000 entries"), refused.getMessage());
    }

    @Test
    void twoBenchesKeepTwoPhotosOfOneName() throws Exception {
        byte[] left = UnmarkedPhotoTest.picture("jpg");
        byte[] right = UnmarkedPhotoTest.picture("png");
        String one = ours.keepPhoto("bow.jpg", left);
        String other = theirs.keepPhoto("bow.jpg", right);
        assertFalse(one.equals(other), "a shared folder holds both");
        assertEquals(one, ours.keepPhoto("bow.jpg", left), "the same again is the same photo");
        assertArrayEquals(left, Files.readAllBytes(tmp.resolve("ours/photos").resolve(one)));
        assertArrayEquals(right, Files.readAllBytes(tmp.resolve("theirs/photos").resolve(other)));
    }

    @Test
    void aPhotoOfAnotherBoatIsNotReplacedByOneInAZip() throws Exception {
        byte[] own = UnmarkedPhotoTest.picture("png");
        Path photo = Files.createDirectories(tmp.resolve("theirs/photos")).resolve("bow.jpg");
        Files.write(photo, own);
        byte[] came = UnmarkedPhotoTest.picture("jpg");
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            zip.putNextEntry(new ZipEntry("log/boat-0001.jsonl"));
            zip.write(log(Entry.of(boat, Folders.NOON.instant(), "boat", boat, null, "{\"name\":\"Tarrowmere\"}")));
            zip.putNextEntry(new ZipEntry("log/photos/bow.jpg"));
            zip.write(came);
        }
        BoatZip.Imported imported = BoatZip.into(theirs, bytes.toByteArray());
        assertTrue(
                imported.left().get(0).contains("another photo called bow.jpg"),
                imported.left().toString());
        assertArrayEquals(own, Files.readAllBytes(photo));
        assertArrayEquals(came, Files.readAllBytes(photo.resolveSibling(BoatZip.nameByContent("bow.jpg", came))));
    }

    private static byte[] log(Entry... entries) throws IOException {
        ByteArrayOutputStream log = new ByteArrayOutputStream();
        log.write(new Header(1, "evil", Folders.NOON.instant()).line());
        int number = 1;
        for (Entry entry : entries) {
            log.write(entry.line(number++));
        }
        return log.toByteArray();
    }

    private static byte[] zipOf(String name, byte[] content) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            zip.putNextEntry(new ZipEntry(name));
            zip.write(content);
        }
        return bytes.toByteArray();
    }
}
