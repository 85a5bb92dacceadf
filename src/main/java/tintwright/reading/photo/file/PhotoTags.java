package tintwright.reading.photo.file;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.imaging.jpeg.JpegMetadataReader;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifReader;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/**
 * What the camera noted beside the picture.
 *
 * @param orientation 1 to 8 of EXIF; 1 when nothing is noted
 * @param flash       the flash fired
 */
record PhotoTags(int orientation, boolean flash) {
    static PhotoTags of(PhotoKind kind, Path path) {
        try {
            // Of a JPEG only EXIF is looked at: its other notes cost more than the rest of opening it.
            Metadata tags = kind == PhotoKind.JPEG
                    ? JpegMetadataReader.readMetadata(path.toFile(), List.of(new ExifReader()))
                    : ImageMetadataReader.readMetadata(path.toFile());
            int orientation = 1;
            for (ExifIFD0Directory main : tags.getDirectoriesOfType(ExifIFD0Directory.class)) {
                Integer noted = main.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
                if (noted != null) {
                    orientation = noted;
                    break;
                }
            }
            ExifSubIFDDirectory shot = tags.getFirstDirectoryOfType(ExifSubIFDDirectory.class);
            Integer flash = shot == null ? null : shot.getInteger(ExifSubIFDDirectory.TAG_FLASH);
            return new PhotoTags(orientation, flash != null && (flash & 1) == 1);
        } catch (IOException | ImageProcessingException | RuntimeException e) {
            // Damaged notes do not spoil the pixels; the decoder says whether those are sound.
            return new PhotoTags(1, false);
        }
    }
}
