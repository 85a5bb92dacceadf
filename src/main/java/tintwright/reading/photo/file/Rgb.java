package tintwright.reading.photo.file;

/**
 * Red, green and blue of a photo in linear light, on the primaries of sRGB, 1 at the largest code. Below 0 or above
 * 1 for colours that the photo's own, wider primaries hold and sRGB does not.
 */
public record Rgb(double red, double green, double blue) {
    public Rgb {
        if (!Double.isFinite(red + green + blue)) {
            throw new IllegalArgumentException(
                    "red, green and blue must be finite, were " + red + ", " + green + ", " + blue);
        }
    }

    public double at(int channel) {
        return channel == 0 ? red : channel == 1 ? green : blue;
    }

    static Rgb of(double[] channels) {
        return new Rgb(channels[0], channels[1], channels[2]);
    }
}
