package tintwright.reading.photo;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tintwright.Reference;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.reading.photo.card.CardPatch;
import tintwright.reading.photo.card.PixelPoint;
import tintwright.reading.photo.card.ReferenceCard;

/** The real photos of the published figures, their patch centres, and the colours of the 24-patch chart. */
public final class RealPhotos {
    static final int PATCHES = 24;

    private RealPhotos() {}

    public static Path file(String name) {
        return Reference.file("photos/" + name);
    }

    /** Patch centres in the order of the chart. */
    public static List<PixelPoint> centres(String name) {
        List<PixelPoint> out = new ArrayList<>();
        for (JsonNode patch : photo(name).get("patches")) {
            out.add(new PixelPoint(patch.get("x").asDouble(), patch.get("y").asDouble()));
        }
        return out;
    }

    /** Centres of the first, sixth, last and nineteenth patch: the corners in order. */
    static List<PixelPoint> corners(String name) {
        List<PixelPoint> all = centres(name);
        return List.of(all.get(0), all.get(5), all.get(23), all.get(18));
    }

    private static JsonNode photo(String name) {
        try {
            return new ObjectMapper()
                    .readTree(Reference.file("photos/photos.json").toFile())
                    .get(name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Published averages of the chart's colours; {@code printing} is "a" or "b". */
    public static ReferenceCard chart(String printing) {
        List<CardPatch> patches = new ArrayList<>();
        for (String[] row : Reference.rows("charts/chart24-lab-d50-printing-" + printing + ".csv")) {
            patches.add(CardPatch.of(
                    row[3],
                    new Lab(
                            Double.parseDouble(row[4]),
                            Double.parseDouble(row[5]),
                            Double.parseDouble(row[6]),
                            Viewing.D50_2)));
        }
        return new ReferenceCard("24-patch chart", 4, 6, patches, 0.85, 0.5);
    }
}
