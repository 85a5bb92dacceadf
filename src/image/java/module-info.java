/**
 * The program and its libraries as the one module that is linked into the app image; compiled by the image profile of
 * pom.xml alone. Everywhere else the program runs on the class path.
 *
 * <p>Open, because the libraries look into the program's classes and fetch their own files by name. What the libraries
 * offer to the JDK's image reading stands here, as in a module their service files do not count.
 */
open module tintwright {
    requires java.desktop;
    requires java.logging;
    requires java.naming;
    requires java.xml;
    requires javafx.controls;
    requires jdk.httpserver;
    requires jdk.unsupported;
    requires jdk.zipfs;

    uses org.apache.commons.logging.LogFactory;

    provides javax.imageio.spi.ImageInputStreamSpi with
            com.twelvemonkeys.imageio.stream.BufferedFileImageInputStreamSpi,
            com.twelvemonkeys.imageio.stream.BufferedRAFImageInputStreamSpi,
            com.twelvemonkeys.imageio.stream.BufferedInputStreamImageInputStreamSpi,
            com.twelvemonkeys.imageio.color.ProfileDeferralActivator.Spi;
    provides javax.imageio.spi.ImageReaderSpi with
            com.twelvemonkeys.imageio.plugins.jpeg.JPEGImageReaderSpi,
            com.twelvemonkeys.imageio.plugins.tiff.TIFFImageReaderSpi,
            com.twelvemonkeys.imageio.plugins.tiff.BigTIFFImageReaderSpi;
    provides javax.imageio.spi.ImageWriterSpi with
            com.twelvemonkeys.imageio.plugins.jpeg.JPEGImageWriterSpi,
            com.twelvemonkeys.imageio.plugins.tiff.TIFFImageWriterSpi,
            com.twelvemonkeys.imageio.plugins.tiff.BigTIFFImageWriterSpi;
}
