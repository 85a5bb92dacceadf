package tintwright.reading.photo.file;

import javax.imageio.ImageReader;
import javax.imageio.event.IIOReadProgressListener;
import javax.imageio.event.IIOReadWarningListener;

/** Hands the decoder's progress on, ends it on request, and hears when it had to make pixels up. */
final class DecodeWatch implements IIOReadProgressListener, IIOReadWarningListener {
    private final Progress progress;
    private boolean cut;
    private boolean ended;

    DecodeWatch(ImageReader reader, Progress progress) {
        this.progress = progress;
        reader.addIIOReadProgressListener(this);
        reader.addIIOReadWarningListener(this);
    }

    void check(String name) throws PhotoException {
        if (ended || progress.cancelled()) {
            throw new PhotoException("Reading was stopped; nothing was changed.");
        }
        if (cut) {
            throw new PhotoException(
                    name + " is cut short: part of the picture is missing. Copy it from the phone " + "again.");
        }
    }

    @Override
    public void warningOccurred(ImageReader source, String warning) {
        String lower = warning.toLowerCase(java.util.Locale.ROOT);
        cut |= lower.contains("premature")
                || lower.contains("truncated")
                || lower.contains("unexpected end")
                || lower.contains("corrupt");
    }

    @Override
    public void imageProgress(ImageReader source, float percentageDone) {
        progress.at(percentageDone / 100);
        if (progress.cancelled()) {
            ended = true;
            source.abort();
        }
    }

    @Override
    public void imageComplete(ImageReader source) {
        progress.at(1);
    }

    @Override
    public void imageStarted(ImageReader source, int imageIndex) {
        progress.at(0);
    }

    @Override
    public void readAborted(ImageReader source) {
        ended = true;
    }

    @Override
    public void sequenceStarted(ImageReader source, int minIndex) {
        // One picture is read, never a sequence.
    }

    @Override
    public void sequenceComplete(ImageReader source) {
        // One picture is read, never a sequence.
    }

    @Override
    public void thumbnailStarted(ImageReader source, int imageIndex, int thumbnailIndex) {
        // Thumbnails are not asked for.
    }

    @Override
    public void thumbnailProgress(ImageReader source, float percentageDone) {
        // Thumbnails are not asked for.
    }

    @Override
    public void thumbnailComplete(ImageReader source) {
        // Thumbnails are not asked for.
    }
}
