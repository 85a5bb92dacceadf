package tintwright.phone;

import static tintwright.phone.Html.safe;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import tintwright.bench.PhotoBench;
import tintwright.bench.top.BenchTop;
import tintwright.reading.photo.file.PhotoException;

/** The page that takes a photo to the bench. */
final class PhotoDoor {
    static final long MOST_PIXELS = 100_000_000;
    /** Photos on their way in at the same time, so that a slow one does not hold the others up. */
    private static final int AT_ONCE = 8;

    private static final long WAIT_SECONDS = 60;
    private static final int NAME_LENGTH = 16;

    private final BenchTop top;
    private final Path folder;
    private final Semaphore coming = new Semaphore(AT_ONCE);
    private final Semaphore decoding = new Semaphore(1, true);

    PhotoDoor(BenchTop top, Path folder) {
        this.top = top;
        this.folder = folder;
    }

    /** @param came what came of the photo just sent */
    Reply show(Optional<BenchTop.Answer> came) {
        BenchTop.Sight sight = top.sight();
        boolean chip = sight.wanted() == BenchTop.Wanted.CHIP;
        String main = Html.said(came)
                + "<section class=\"sheet\">\n<div class=\"hull\" aria-hidden=\"true\"><div class=\"paper\"><div class=\"window"
                + (chip ? " chip" : "") + "\"></div></div></div>\n<p>"
                + (chip
                        ? "Lay a cured dab of the cup itself at the edge of the sheet's window, on the hull, out of the sun. Both in one photo."
                        : "Lay the sheet on the hull, out of the sun. Fill the picture with it.")
                + "</p>\n</section>\n"
                + "<form method=\"post\" action=\"photo\" enctype=\"multipart/form-data\" data-most=\""
                + Upload.MOST_BYTES
                + "\" data-too-large=\"" + safe(Upload.tooLarge().getMessage()) + "\">\n"
                + "<label class=\"main\" for=\"photo\">Take the photo</label>\n"
                + "<input id=\"photo\" name=\"photo\" type=\"file\" accept=\"image/jpeg\" capture=\"environment\" required>\n"
                + "<button class=\"second\">Send it to the bench</button>\n</form>\n"
                + "<p class=\"soft middle\" id=\"sending\" role=\"status\">It goes to the bench and nowhere else.</p>\n";
        return Reply.page(Reply.OK, Html.page(sight.job(), Place.PHOTO, sight.job() + sight.wanted(), main));
    }

    /** @throws Refused when no photo came whole */
    BenchTop.Answer take(HttpExchange exchange) throws Refused, IOException, InterruptedException {
        if (!coming.tryAcquire(WAIT_SECONDS, TimeUnit.SECONDS)) {
            throw new Refused(Reply.BUSY, "Too many photos come in at once. Wait a minute and send it again.");
        }
        Upload.Photo photo;
        try {
            photo = Upload.receive(exchange, folder);
        } finally {
            coming.release();
        }
        BenchTop.Sight sight = top.sight();
        if (!decoding.tryAcquire(WAIT_SECONDS, TimeUnit.SECONDS)) {
            Files.deleteIfExists(photo.file());
            throw new Refused(Reply.BUSY, "Other photos are still being read. Wait a minute and send it again.");
        }
        try {
            Path file = checked(photo);
            return Answers.wait(top.act(sight.job() + sight.wanted() + photo.sign(), new BenchTop.Act.Photo(file)));
        } finally {
            decoding.release();
        }
    }

    /** @return where the photo lies under its last name; one that was sent again lies there once */
    private Path checked(Upload.Photo photo) throws Refused, IOException {
        Path file = photo.file();
        try {
            PhotoBench opened = PhotoBench.open(file);
            if ((long) opened.width() * opened.height() > MOST_PIXELS) {
                throw new PhotoException(
                        "It has more than " + MOST_PIXELS / 1_000_000 + " megapixels. Set the camera to fewer.");
            }
        } catch (PhotoException e) {
            Files.deleteIfExists(file);
            throw new Refused(Reply.UNUSABLE, e.getMessage().replace("The photo " + file.getFileName(), "It"));
        }
        Path kept = folder.resolve("phone-" + photo.sign().substring(0, NAME_LENGTH) + ".jpg");
        return Files.move(file, kept, StandardCopyOption.REPLACE_EXISTING);
    }
}
