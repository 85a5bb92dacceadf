package tintwright.reading.photo;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.FileImageOutputStream;
import tintwright.colour.Grid;
import tintwright.colour.Illuminant;
import tintwright.colour.Spectrum;

/**
 * A phone made up from a seed: its own sensitivities, a daylight of its own, wrong white balance, its maker's colour
 * mix and saturation, a tone curve, shading, noise and JPEG. Shares no code with what corrects.
 */
final class SimulatedPhone {
    private static final Grid GRID = Grid.INSIDE;
    private final Random random;
    private final double[][] sensitivity = new double[3][GRID.count()];
    private final double[] light = new double[GRID.count()];
    private final double[] balance = new double[3];
    private final double[][] mix = new double[3][3];
    private final double contrast;
    private final double shoulder;
    private final double[] gradient = new double[3];
    private final double noise;
    private final float quality;
    private double exposure;

    SimulatedPhone(long seed, List<Spectrum> training) {
        random = new Random(seed);
        double[] peak = {
            598 + 8 * random.nextGaussian(), 535 + 8 * random.nextGaussian(), 457 + 8 * random.nextGaussian()
        };
        double[] width = {33 + 4 * random.nextGaussian(), 40 + 4 * random.nextGaussian(), 28 + 3 * random.nextGaussian()
        };
        for (int k = 0; k < 3; k++) {
            double leak = 0.03 + 0.04 * random.nextDouble();
            for (int i = 0; i < GRID.count(); i++) {
                double off = (GRID.nm(i) - peak[k]) / width[k];
                // A dye lets some of everything through, and the infrared filter cuts the deep red.
                double cut = 1 / (1 + Math.exp((GRID.nm(i) - 665) / 12.0));
                sensitivity[k][i] = (Math.exp(-off * off / 2) + leak) * cut;
            }
        }
        // Open shade to a hazy sun: between two daylights.
        double blue = random.nextDouble() * 1.5;
        for (int i = 0; i < GRID.count(); i++) {
            double warm = Illuminant.D50.power(GRID.nm(i)) / 100;
            double cool = Illuminant.D65.power(GRID.nm(i)) / 100;
            light[i] = Math.max(0.02, warm + blue * (cool - warm));
        }
        for (int k = 0; k < 3; k++) {
            balance[k] = Math.exp(0.06 * random.nextGaussian()) / raw(k, null);
        }
        makersMix(training, 1 + 0.25 * random.nextDouble());
        contrast = 0.25 * random.nextDouble();
        shoulder = 0.5 * random.nextDouble();
        gradient[0] = 0.08 * random.nextGaussian();
        gradient[1] = 0.08 * random.nextGaussian();
        gradient[2] = -0.10 * random.nextDouble();
        noise = 0.004 + 0.008 * random.nextDouble();
        quality = 0.85f + 0.12f * random.nextFloat();
        exposure = 0.70 + 0.25 * random.nextDouble();
    }

    /** Steps the exposure. */
    void expose(double factor) {
        exposure *= factor;
    }

    private double raw(int channel, Spectrum surface) {
        double sum = 0;
        for (int i = 0; i < GRID.count(); i++) {
            sum += sensitivity[channel][i] * light[i] * (surface == null ? 1 : surface.at(i));
        }
        return sum;
    }

    /** The maker's 3 by 3: nearest to the codes of a screen over a set of surfaces, then more saturated. */
    private void makersMix(List<Spectrum> training, double saturation) {
        double[][] ww = new double[3][3];
        double[][] sw = new double[3][3];
        double[] white = new double[3];
        for (Spectrum surface : training) {
            double[] camera = new double[3];
            for (int k = 0; k < 3; k++) {
                camera[k] = raw(k, surface) / raw(k, null);
            }
            double[] screen = screen(surface);
            for (int i = 0; i < 3; i++) {
                white[i] += 1;
                for (int j = 0; j < 3; j++) {
                    ww[i][j] += camera[i] * camera[j];
                    sw[i][j] += screen[i] * camera[j];
                }
            }
        }
        double[][] inverse = invert(ww);
        for (int i = 0; i < 3; i++) {
            double row = 0;
            for (int j = 0; j < 3; j++) {
                for (int k = 0; k < 3; k++) {
                    mix[i][j] += sw[i][k] * inverse[k][j];
                }
            }
            for (int j = 0; j < 3; j++) {
                row += mix[i][j];
            }
            for (int j = 0; j < 3; j++) {
                mix[i][j] /= row;
            }
        }
        double[] luma = {0.2126, 0.7152, 0.0722};
        double[][] saturated = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                double grey = 0;
                for (int k = 0; k < 3; k++) {
                    grey += luma[k] * mix[k][j];
                }
                saturated[i][j] = grey + saturation * (mix[i][j] - grey);
            }
        }
        for (int i = 0; i < 3; i++) {
            mix[i] = saturated[i];
        }
    }

    /** Linear sRGB of a surface in daylight, by three broad bands fitted by eye to the screen's primaries: a maker
     * trains on such targets. */
    private static double[] screen(Spectrum surface) {
        double[] xyz = new double[3];
        double[] all = new double[3];
        for (int i = 0; i < GRID.count(); i++) {
            double nm = GRID.nm(i);
            // The multi-lobe fit of Wyman, Sloan and Shirley (2013), J. Comput. Graph. Tech. 2(2), single lobes.
            double[] bar = {
                1.065 * lobe(nm, 595.8, 33.33) + 0.366 * lobe(nm, 446.8, 19.44),
                1.014 * Math.exp(-0.5 * Math.pow((Math.log(nm) - Math.log(556.3)) / 0.075, 2)),
                1.839 * Math.exp(-0.5 * Math.pow((Math.log(nm) - Math.log(449.8)) / 0.051, 2))
            };
            double power = Illuminant.D65.power(nm);
            for (int k = 0; k < 3; k++) {
                xyz[k] += bar[k] * power * surface.at(i);
                all[k] += bar[k] * power;
            }
        }
        double x = xyz[0] / all[0] * 0.9505;
        double y = xyz[1] / all[1];
        double z = xyz[2] / all[2] * 1.089;
        return new double[] {
            3.2406 * x - 1.5372 * y - 0.4986 * z,
            -0.9689 * x + 1.8758 * y + 0.0415 * z,
            0.0557 * x - 0.2040 * y + 1.0570 * z
        };
    }

    private static double lobe(double nm, double peak, double width) {
        double off = (nm - peak) / width;
        return Math.exp(-off * off / 2);
    }

    private static double[][] invert(double[][] m) {
        double[][] a = new double[3][6];
        for (int i = 0; i < 3; i++) {
            System.arraycopy(m[i], 0, a[i], 0, 3);
            a[i][3 + i] = 1;
        }
        for (int i = 0; i < 3; i++) {
            double pivot = a[i][i];
            for (int j = 0; j < 6; j++) {
                a[i][j] /= pivot;
            }
            for (int r = 0; r < 3; r++) {
                double factor = r == i ? 0 : a[r][i];
                for (int j = 0; j < 6; j++) {
                    a[r][j] -= factor * a[i][j];
                }
            }
        }
        return new double[][] {{a[0][3], a[0][4], a[0][5]}, {a[1][3], a[1][4], a[1][5]}, {a[2][3], a[2][4], a[2][5]}};
    }

    /** Surfaces of a scene by a number for each place; numbers count from 0. */
    interface Scene {
        int surface(int x, int y);
    }

    /** The codes of the photo, 0 to 1 before rounding, three for each pixel. */
    double[] shoot(int width, int height, List<Spectrum> surfaces, Scene scene) {
        return shoot(width, height, surfaces, scene, (x, y) -> 1);
    }

    /** How much light falls on what a pixel sees, beside the usual unevenness; asked after the surface. */
    interface Light {
        double at(int x, int y);
    }

    double[] shoot(int width, int height, List<Spectrum> surfaces, Scene scene, Light light) {
        double[][] balanced = new double[surfaces.size()][3];
        for (int n = 0; n < balanced.length; n++) {
            for (int k = 0; k < 3; k++) {
                balanced[n][k] = raw(k, surfaces.get(n)) * balance[k] * exposure;
            }
        }
        double[] codes = new double[3 * width * height];
        double[] sensed = new double[3];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double u = 2.0 * x / width - 1;
                double v = 2.0 * y / height - 1;
                double shade = 1 + gradient[0] * u + gradient[1] * v + gradient[2] * (u * u + v * v) / 2;
                double[] surface = balanced[scene.surface(x, y)];
                shade *= light.at(x, y);
                for (int k = 0; k < 3; k++) {
                    double signal = surface[k] * shade;
                    sensed[k] = signal + noise * Math.sqrt(Math.max(signal, 0) + 0.02) * random.nextGaussian();
                }
                for (int k = 0; k < 3; k++) {
                    double mixed = mix[k][0] * sensed[0] + mix[k][1] * sensed[1] + mix[k][2] * sensed[2];
                    codes[3 * (y * width + x) + k] = toned(Math.max(0, Math.min(1, mixed)));
                }
            }
        }
        return codes;
    }

    private double toned(double light) {
        double bright = light * (1 + shoulder) / (1 + shoulder * light);
        double code = bright <= 0.0031308 ? 12.92 * bright : 1.055 * Math.pow(bright, 1 / 2.4) - 0.055;
        return code + contrast * code * (1 - code) * (2 * code - 1);
    }

    /** Saves codes as a JPEG of this phone's quality. */
    void save(double[] codes, int width, int height, Path file) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < width * height; i++) {
            int rgb = 0;
            for (int k = 0; k < 3; k++) {
                rgb = rgb << 8 | (int) Math.round(255 * Math.max(0, Math.min(1, codes[3 * i + k])));
            }
            image.setRGB(i % width, i / width, rgb);
        }
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ImageWriteParam how = writer.getDefaultWriteParam();
        how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        how.setCompressionQuality(quality);
        try (FileImageOutputStream out = new FileImageOutputStream(file.toFile())) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), how);
        } finally {
            writer.dispose();
        }
    }
}
