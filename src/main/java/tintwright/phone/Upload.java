package tintwright.phone;

import com.sun.net.httpserver.HttpExchange;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.apache.commons.fileupload.FileItemIterator;
import org.apache.commons.fileupload.FileItemStream;
import org.apache.commons.fileupload.FileUpload;
import org.apache.commons.fileupload.FileUploadException;
import org.apache.commons.fileupload.RequestContext;

/** A photo out of a phone's form, onto the disk under a name of our own; the name that it had is never looked at. */
final class Upload {
    /** A phone's photo of 50 megapixels is about 20 MB as JPEG (common practice, no source); twice that. */
    static final long MOST_BYTES = 40_000_000;
    /** What is around the photo in the form: a key and a few lines of heading. */
    private static final long MOST_AROUND = 16_384;
    /** So much of what is too large is taken and thrown away, so that the phone hears the sentence to its end. */
    private static final long MOST_THROWN_AWAY = 300_000_000;

    private static final int PIECE = 65_536;

    private Upload() {}

    /**
     * @param sign what tells this photo from every other: the same when it is sent again
     * @param file where the photo lies now
     */
    record Photo(String sign, Path file) {}

    /**
     * @param folder where the photo is put
     * @throws Refused     when it is too large, cut short or no form with a photo; nothing of it stays on the disk
     * @throws IOException when the disk or the line fails
     */
    static Photo receive(HttpExchange exchange, Path folder) throws Refused, IOException {
        Form form = new Form(exchange);
        if (form.contentLength() > MOST_BYTES + MOST_AROUND) {
            throwAway(exchange.getRequestBody());
            throw tooLarge();
        }
        FileUpload parser = new FileUpload();
        parser.setSizeMax(MOST_BYTES + MOST_AROUND);
        parser.setFileCountMax(2);
        Files.createDirectories(folder);
        Path file = Files.createTempFile(folder, "phone-", ".part");
        boolean whole = false;
        try {
            MessageDigest digest = sha256();
            FileItemIterator parts = parser.getItemIterator(form);
            while (parts.hasNext()) {
                FileItemStream part = parts.next();
                if (!part.isFormField() && "photo".equals(part.getFieldName()) && !whole) {
                    try (InputStream in = part.openStream();
                            OutputStream out = new DigestOutputStream(Files.newOutputStream(file), digest)) {
                        in.transferTo(out);
                    }
                    whole = true;
                }
            }
            if (!whole || Files.size(file) == 0) {
                whole = false;
                throw new Refused(Reply.UNUSABLE, "There was no photo in it. Press \u201cTake the photo\u201d first.");
            }
            return new Photo(HexFormat.of().formatHex(digest.digest()), file);
        } catch (FileUploadException | IOException e) {
            whole = false;
            throw of(e, exchange.getRequestBody());
        } finally {
            if (!whole) {
                Files.deleteIfExists(file);
            }
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static Refused of(Exception e, InputStream rest) throws IOException {
        Throwable cause = e.getCause() instanceof FileUploadException ? e.getCause() : e;
        if (cause instanceof org.apache.commons.fileupload.FileUploadBase.SizeLimitExceededException) {
            throwAway(rest);
            return tooLarge();
        }
        if (e instanceof FileUploadException) {
            return new Refused(
                    Reply.BAD_REQUEST, "The photo came in only in part. Stay near the Wi-Fi and send it again.");
        }
        return cut((IOException) e);
    }

    private static Refused cut(IOException e) {
        String said = String.valueOf(e.getMessage());
        return said.contains("space")
                ? new Refused(Reply.FAILED, "The disk of the bench is full. Make room on it and send the photo again.")
                : new Refused(
                        Reply.BAD_REQUEST, "The photo came in only in part. Stay near the Wi-Fi and send it again.");
    }

    static Refused tooLarge() {
        return new Refused(
                Reply.TOO_LARGE,
                "That is larger than " + MOST_BYTES / 1_000_000
                        + " MB, so it is no single photo, or an unpacked one. Take" + " a photo as JPEG.");
    }

    private static void throwAway(InputStream in) throws IOException {
        byte[] piece = new byte[PIECE];
        long left = MOST_THROWN_AWAY;
        for (int read = in.read(piece); read >= 0 && left > 0; read = in.read(piece)) {
            left -= read;
        }
    }

    /** The request as the library wants to see it. */
    private record Form(HttpExchange exchange) implements RequestContext {
        @Override
        public String getCharacterEncoding() {
            return StandardCharsets.UTF_8.name();
        }

        @Override
        public String getContentType() {
            return exchange.getRequestHeaders().getFirst("Content-Type");
        }

        @Override
        @Deprecated
        public int getContentLength() {
            return (int) Math.min(Integer.MAX_VALUE, contentLength());
        }

        long contentLength() {
            String said = exchange.getRequestHeaders().getFirst("Content-Length");
            try {
                return said == null ? -1 : Long.parseLong(said.strip());
            } catch (NumberFormatException e) {
                return -1;
            }
        }

        @Override
        public InputStream getInputStream() {
            // The library closes what it reads from; closing the body early would cut the line before the answer.
            return new FilterInputStream(exchange.getRequestBody()) {
                @Override
                public void close() {}
            };
        }
    }
}
