package tintwright.logbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import tintwright.files.Fingerprint;
import tintwright.logbook.disk.Disk;
import tintwright.logbook.disk.Entry;
import tintwright.logbook.disk.EntryIds;
import tintwright.logbook.disk.Header;
import tintwright.logbook.disk.Ledger;
import tintwright.logbook.disk.LogFailure;
import tintwright.logbook.disk.LogFile;
import tintwright.logbook.disk.LogStore;
import tintwright.logbook.disk.Pen;

/**
 * One boat to give to another shop: a zip that holds a small log folder of its own, with every word ever written
 * of that boat and its photos. Unpacked by hand it opens like any log.
 *
 * <p>What comes in is not trusted: names inside are taken from a short list of shapes, sizes are counted while
 * unpacking and not believed, and entries may only speak of the boats in the zip.
 */
public final class BoatZip {
    /** Largest zip that is looked at, bytes. */
    public static final long LARGEST_ZIP = 1L << 28;

    static final long LARGEST_LOG = 1L << 26;
    static final long LARGEST_PHOTO = 1L << 26;
    static final long LARGEST_WHOLE = 1L << 28;
    static final int MOST_FILES = 2000;
    /** Far more than a boat gathers in a life; the largest log that was measured held 100,000. */
    static final int MOST_ENTRIES = 200_000;
    /** How far another shop's clock may be ahead. */
    private static final Duration AHEAD = Duration.ofDays(1);

    static final String PHOTOS = "photos";
    private static final String TOP = "log/";
    private static final Set<String> FOLDERS = Set.of(TOP, TOP + PHOTOS + "/");
    private static final Pattern LOG_NAME = Pattern.compile("log/[A-Za-z0-9][A-Za-z0-9._-]{0,99}\\.jsonl");
    static final Pattern PHOTO_NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9 ._-]{0,99}\\.(?i:jpe?g|png|tiff?)");

    private static final int MARK_DIGITS = 8;
    private static final int LONGEST_PLAIN = 80;

    private BoatZip() {}

    /**
     * What an import did.
     *
     * @param boats    the boats that were in the zip
     * @param added    how many entries were new here
     * @param known    how many were here already
     * @param left     what was left out and why, a sentence each
     * @param waiting  why entries are not in the folder yet; empty when they are on disk
     */
    public record Imported(List<String> boats, int added, int known, List<String> left, Optional<String> waiting) {}

    /**
     * A zip to give away.
     *
     * @param bytes the zip
     * @param left  what was left out and why, a sentence each
     */
    public record Packed(byte[] bytes, List<String> left) {}

    /**
     * @param now       what the zip states as the time of its making
     * @param keepMarks whether photos keep what tells where, by whom and with which camera they were taken
     * @throws IllegalArgumentException when there is no such boat
     * @throws LogFailure when a photo cannot be read
     */
    public static Packed of(LogBook book, UUID boat, Instant now, boolean keepMarks) throws LogFailure {
        List<Entry> entries = book.store().ask(ledger -> ledger.allOf(boat));
        if (entries.isEmpty()) {
            throw new IllegalArgumentException("there is no boat " + boat + " in the log");
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        List<String> left = new ArrayList<>();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            put(zip, TOP + "boat-0001" + Pen.ENDING, lines(entries, now), now);
            for (String photo : photosOf(book, boat)) {
                Path file = book.folder().resolve(PHOTOS).resolve(photo);
                if (PHOTO_NAME.matcher(photo).matches() && Files.isRegularFile(file)) {
                    byte[] whole = Files.readAllBytes(file);
                    Optional<byte[]> given = keepMarks ? Optional.of(whole) : UnmarkedPhoto.of(whole);
                    if (given.isPresent()) {
                        put(zip, TOP + PHOTOS + "/" + photo, given.get(), now);
                    } else {
                        left.add(
                                "The photo " + photo + " was left out: it is no JPEG, PNG or TIFF whose place and owner"
                                        + " can be taken out.");
                    }
                }
            }
        } catch (IOException e) {
            throw new LogFailure(
                    "A photo of the boat could not be read (" + e.getMessage()
                            + "). Nothing was written; check the folder "
                            + book.folder().resolve(PHOTOS) + ".",
                    e);
        }
        return new Packed(bytes.toByteArray(), left);
    }

    private static byte[] lines(List<Entry> entries, Instant now) throws IOException {
        ByteArrayOutputStream log = new ByteArrayOutputStream();
        log.write(new Header(Header.VERSION, "boat", now).line());
        int number = 1;
        for (Entry entry : entries) {
            log.write(entry.line(number++));
        }
        return log.toByteArray();
    }

    private static Set<String> photosOf(LogBook book, UUID boat) {
        Set<String> photos = new HashSet<>();
        book.of(boat, Page.Boat.class).forEach(one -> photos.addAll(one.page().photos()));
        book.of(boat, Page.Place.class).forEach(one -> photos.addAll(one.page().photos()));
        return photos;
    }

    private static void put(ZipOutputStream zip, String name, byte[] bytes, Instant now) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTime(now.toEpochMilli());
        zip.putNextEntry(entry);
        zip.write(bytes);
        zip.closeEntry();
    }

    /**
     * Takes the boats of a zip into a log; what is there already is left as it is, and nothing is written before
     * the whole zip has been checked.
     *
     * @throws LogFailure when the zip cannot be used, saying why; nothing was taken from it then
     */
    public static Imported into(LogBook book, byte[] zip) throws LogFailure {
        Map<String, byte[]> files = unpack(zip);
        List<Entry> entries = new ArrayList<>();
        List<String> left = new ArrayList<>();
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            if (file.getKey().endsWith(Pen.ENDING)) {
                LogFile log = LogFile.of(file.getKey(), file.getValue());
                if (log.header()
                        .filter(header -> header.version() > Header.VERSION)
                        .isPresent()) {
                    throw new LogFailure("The zip was written by a newer Tintwright; import it with that one."
                            + " Nothing was taken from it.");
                }
                log.troubles().forEach(trouble -> left.add(trouble.sentence()));
                entries.addAll(log.entries());
            }
        }
        if (entries.size() > MOST_ENTRIES) {
            throw refused("it holds more than " + MOST_ENTRIES + " entries");
        }
        List<Entry> fit = fitting(book, entries, left);
        if (fit.isEmpty()) {
            throw new LogFailure("The zip holds no boat of a Tintwright log. Nothing was taken from it."
                    + (left.isEmpty() ? "" : " " + left.get(0)));
        }
        fit = withoutClashes(book, fit, left);
        photos(book, files, left);
        LogStore.Adopted adopted = book.store().adopt(fit);
        List<String> names = fit.stream()
                .filter(entry -> entry.kind().equals("boat"))
                .map(PageShape::read)
                .filter(Page.Boat.class::isInstance)
                .map(page -> ((Page.Boat) page).name())
                .distinct()
                .toList();
        return new Imported(names, adopted.added(), fit.size() - adopted.added(), left, adopted.waiting());
    }

    /** Entries of the boats in the zip that correct nothing but entries of the same boat. */
    private static List<Entry> fitting(LogBook book, List<Entry> entries, List<String> left) {
        Set<UUID> boats = new HashSet<>();
        Map<UUID, Entry> byId = new LinkedHashMap<>();
        for (Entry entry : entries) {
            byId.put(entry.id(), entry);
            if (entry.kind().equals("boat")
                    && entry.boat().filter(Ledger.rootOf(entry)::equals).isPresent()) {
                boats.add(entry.boat().get());
            }
        }
        List<Entry> fit = new ArrayList<>();
        for (Entry entry : entries) {
            boolean ofABoat = entry.boat().filter(boats::contains).isPresent();
            Optional<Entry> here = entry.replaces()
                    .flatMap(root -> book.store().ask(ledger -> ledger.find(root)))
                    .or(() -> entry.replaces().map(byId::get));
            boolean sameBoat =
                    here.map(earlier -> earlier.boat().equals(entry.boat())).orElse(true);
            if (EntryIds.millis(entry.id()) > book.store().now().plus(AHEAD).toEpochMilli()) {
                left.add("The entry " + entry.id() + " (" + entry.kind() + ") carries a name of the future, which would"
                        + " outdo every correction, and was left out.");
            } else if (here.flatMap(Entry::replaces).isPresent()) {
                left.add("The entry " + entry.id() + " (" + entry.kind() + ") corrects a correction, as none of ours"
                        + " does, and was left out.");
            } else if (ofABoat && sameBoat) {
                fit.add(entry);
            } else {
                left.add("The entry " + entry.id() + " (" + entry.kind() + ") speaks of something outside its boat"
                        + " and was left out.");
            }
        }
        return fit;
    }

    /** What this log says counts; what the zip says under the same name is kept beside the log and named. */
    private static List<Entry> withoutClashes(LogBook book, List<Entry> entries, List<String> left) throws LogFailure {
        List<Entry> others = new ArrayList<>();
        for (Entry entry : entries) {
            if (book.store()
                    .ask(ledger -> ledger.find(entry.id()))
                    .filter(known -> !known.saysTheSameAs(entry))
                    .isEmpty()) {
                others.add(entry);
                continue;
            }
            try {
                byte[] line = entry.line(1);
                Path aside = Files.createDirectories(book.folder().resolve(Pen.SET_ASIDE))
                        .resolve("from-a-zip-" + Fingerprint.of(line) + ".txt");
                Disk.REAL.place(aside, line);
                left.add("The " + entry.kind() + " written at " + entry.at() + " (" + entry.id()
                        + ") says something else" + " here: what stands here counts, what the zip says was kept as "
                        + aside + ".");
            } catch (IOException e) {
                throw LogFailure.notWritten(book.folder(), e);
            }
        }
        return others;
    }

    private static void photos(LogBook book, Map<String, byte[]> files, List<String> left) throws LogFailure {
        Path folder = book.folder().resolve(PHOTOS);
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            if (file.getKey().endsWith(Pen.ENDING)) {
                continue;
            }
            String name = file.getKey().substring(TOP.length() + PHOTOS.length() + 1);
            Path photo = folder.resolve(name);
            try {
                if (Files.exists(photo) && !Arrays.equals(Files.readAllBytes(photo), file.getValue())) {
                    photo = folder.resolve(nameByContent(name, file.getValue()));
                    left.add("There is another photo called " + name
                            + " here already; both were kept, the one in the zip" + " as " + photo.getFileName() + ".");
                }
                if (!Files.exists(photo)) {
                    Files.createDirectories(folder);
                    Disk.REAL.place(photo, file.getValue());
                }
            } catch (IOException e) {
                throw LogFailure.notWritten(book.folder(), e);
            }
        }
    }

    /** A name that no other photo has, on any bench: "bow.jpg" becomes "bow-1f3870be.jpg". */
    static String nameByContent(String name, byte[] bytes) {
        int dot = name.lastIndexOf('.');
        String mark = "-" + Fingerprint.of(bytes).substring(0, MARK_DIGITS);
        String plain = name.substring(0, Math.min(dot, LONGEST_PLAIN));
        return plain.endsWith(mark) ? name : plain + mark + name.substring(dot);
    }

    private static Map<String, byte[]> unpack(byte[] zip) throws LogFailure {
        Map<String, byte[]> files = new LinkedHashMap<>();
        long whole = 0;
        int count = 0;
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip), StandardCharsets.UTF_8)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                count++;
                if (count > MOST_FILES) {
                    throw refused("it holds more than " + MOST_FILES + " files");
                }
                if (entry.isDirectory() && FOLDERS.contains(entry.getName())) {
                    continue;
                }
                boolean log = LOG_NAME.matcher(entry.getName()).matches();
                if (!log && !isPhoto(entry.getName())) {
                    throw refused("it holds a file that no boat has: " + shown(entry.getName()));
                }
                byte[] bytes = readAtMost(in, log ? LARGEST_LOG : LARGEST_PHOTO, entry.getName());
                whole += bytes.length;
                if (whole > LARGEST_WHOLE) {
                    throw refused("it unpacks to more than " + LARGEST_WHOLE / (1 << 20) + " MiB");
                }
                if (files.put(entry.getName(), bytes) != null) {
                    throw refused("it holds two files called " + shown(entry.getName()));
                }
            }
        } catch (IOException | IllegalArgumentException e) {
            throw refused("it is damaged or is no zip (" + e.getMessage() + ")");
        }
        if (count == 0) {
            throw refused("it is empty or is no zip");
        }
        return files;
    }

    private static boolean isPhoto(String name) {
        String folder = TOP + PHOTOS + "/";
        return name.startsWith(folder)
                && PHOTO_NAME.matcher(name.substring(folder.length())).matches();
    }

    private static byte[] readAtMost(InputStream in, long most, String name) throws IOException, LogFailure {
        byte[] bytes = in.readNBytes((int) most);
        if (in.read() >= 0) {
            throw refused(shown(name) + " unpacks to more than " + most / (1 << 20) + " MiB");
        }
        return bytes;
    }

    private static LogFailure refused(String why) {
        return new LogFailure("The zip was refused: " + why + ". Nothing was taken from it.");
    }

    private static String shown(String name) {
        String plain = name.replaceAll("\\p{Cntrl}", "?");
        return "\"" + (plain.length() > 60 ? plain.substring(0, 60) + "..." : plain) + "\"";
    }
}
