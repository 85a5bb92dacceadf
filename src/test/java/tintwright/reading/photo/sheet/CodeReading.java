package tintwright.reading.photo.sheet;

import boofcv.abst.fiducial.QrCodeDetector;
import boofcv.factory.fiducial.FactoryFiducial;
import boofcv.struct.image.GrayU8;
import java.awt.image.BufferedImage;
import java.util.Optional;

/** Reads a QR code as a phone's camera does: whatever the library that wrote it finds in a picture. */
public final class CodeReading {
    private CodeReading() {}

    /** @return the text of the one code in the picture; empty when there is none or more than one */
    public static Optional<String> of(BufferedImage picture) {
        QrCodeDetector<GrayU8> detector = FactoryFiducial.qrcode(null, GrayU8.class);
        GrayU8 grey = new GrayU8(picture.getWidth(), picture.getHeight());
        for (int y = 0; y < grey.height; y++) {
            for (int x = 0; x < grey.width; x++) {
                grey.set(x, y, picture.getRGB(x, y) & 0xff);
            }
        }
        detector.process(grey);
        return detector.getDetections().size() == 1
                ? Optional.of(detector.getDetections().get(0).message)
                : Optional.empty();
    }
}
