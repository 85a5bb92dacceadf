package tintwright.reading.photo.sheet;

import boofcv.abst.fiducial.QrCodeDetector;
import boofcv.alg.fiducial.qrcode.QrCode;
import boofcv.concurrency.BoofConcurrency;
import boofcv.factory.fiducial.ConfigQrCode;
import boofcv.factory.fiducial.FactoryFiducial;
import boofcv.struct.image.GrayU8;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tintwright.reading.photo.file.Pixels;

/**
 * The code on the label of a cup: which page of the log it is. It holds no address and no secret, so a label says the
 * same in ten years and to nobody else anything.
 */
public final class CupLabel {
    /** Capitals and digits take the least room in a code (ISO/IEC 18004, alphanumeric mode). */
    private static final String BEGINS = "TINTWRIGHT CUP ";

    private static final Pattern WHOLE =
            Pattern.compile(BEGINS + "([0-9A-F]{8})([0-9A-F]{4})([0-9A-F]{4})([0-9A-F]{4})([0-9A-F]{12})");
    /** A label that fills a tenth of the picture's side still has two pixels a square then; a judgement of ours. */
    private static final int FIRST_LOOK = 2400;
    /** 47 letters at level M are version 3 (ISO/IEC 18004, table 7, from memory); one more for room. */
    private static final int LARGEST = 4;

    static {
        // A photo is read on the thread that asked; the library would start threads of its own.
        BoofConcurrency.USE_CONCURRENT = false;
    }

    private CupLabel() {}

    /** @return what the code on the label of this cup holds */
    public static String text(UUID cup) {
        return BEGINS + cup.toString().replace("-", "").toUpperCase(Locale.ROOT);
    }

    /** @return the cup whose label is in the photo; empty when no code of one can be read */
    public static Optional<UUID> find(Pixels photo) {
        int every = 1;
        while (Math.max(photo.greyWidth(every), photo.greyHeight(every)) > FIRST_LOOK) {
            every *= 2;
        }
        Optional<UUID> coarse = find(GreyPicture.of(photo, every));
        return coarse.isPresent() || every == 1 ? coarse : find(GreyPicture.of(photo, 1));
    }

    private static Optional<UUID> find(GreyPicture picture) {
        ConfigQrCode how = new ConfigQrCode();
        how.versionMaximum = LARGEST;
        QrCodeDetector<GrayU8> detector = FactoryFiducial.qrcode(how, GrayU8.class);
        detector.process(picture.image());
        for (QrCode code : detector.getDetections()) {
            Matcher held = WHOLE.matcher(code.message);
            if (held.matches()) {
                return Optional.of(UUID.fromString(held.replaceFirst("$1-$2-$3-$4-$5")));
            }
        }
        return Optional.empty();
    }
}
