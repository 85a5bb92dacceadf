package tintwright.reading.photo;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import java.io.IOException;
import java.nio.file.Path;

/**
 * What the camera noted beside the picture.
 *
 * @param orientation 1 to 8 of EXIF; 1 when nothing is noted
 * @param flash       the flash fired
 */
record PhotoTags(int orientation, boolean flash) {
    static PhotoTags of(Path path) {
        try {
            Metadata tags = ImageMetadataReader.readMetadata(path.toFile());
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
