package tintwright.reading.photo;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;

/** Photos made for tests: codes come in, files of every kind go out. */
final class TestPhotos {
    private TestPhotos() {}

    /** Codes of a scene, 0 to 1, upright. */
    interface Scene {
        double[] code(int x, int y);
    }

    /** 8 or 16 bits; {@code stored} turns an upright place into a stored one when the photo is saved turned. */
    static BufferedImage image(int width, int height, int bits, Scene scene) {
        if (bits == 8) {
            BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
            for (int y = 0; y < height; y++) {
                for (int x = 0; x < width; x++) {
                    double[] code = scene.code(x, y);
                    int rgb = 0;
                    for (int k = 0; k < 3; k++) {
                        rgb = rgb << 8 | (int) Math.round(255 * Math.max(0, Math.min(1, code[k])));
                    }
                    image.setRGB(x, y, rgb);
                }
            }
            return image;
        }
        ComponentColorModel model = new ComponentColorModel(
                ColorSpace.getInstance(ColorSpace.CS_sRGB), false, false, BufferedImage.OPAQUE, DataBuffer.TYPE_USHORT);
        WritableRaster raster = Raster.createInterleavedRaster(DataBuffer.TYPE_USHORT, width, height, 3, null);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double[] code = scene.code(x, y);
                for (int k = 0; k < 3; k++) {
                    raster.setSample(x, y, k, (int) Math.round(65535 * Math.max(0, Math.min(1, code[k]))));
                }
            }
        }
        return new BufferedImage(model, raster, false, null);
    }

    static byte[] jpeg(BufferedImage image) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ImageWriteParam how = writer.getDefaultWriteParam();
        how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        how.setCompressionQuality(0.97f);
        try (var stream = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(stream);
            writer.write(null, new IIOImage(image, null, null), how);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }

    /** A JPEG of four channels, marked as printing inks by the Adobe segment (ITU-T T.872, transform 0). */
    static byte[] fourInks(int width, int height) throws IOException {
        WritableRaster raster = Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, width, height, 4, null);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                raster.setPixel(x, y, new int[] {x % 256, y % 256, 90, 20});
            }
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (var all = ImageIO.getImageWritersByFormatName("jpeg"); all.hasNext(); ) {
            ImageWriter writer = all.next();
            // The one that comes with Java takes four bare channels.
            if (writer.getClass().getName().startsWith("com.sun")) {
                try (var stream = ImageIO.createImageOutputStream(out)) {
                    writer.setOutput(stream);
                    writer.write(null, new IIOImage(raster, null, null), null);
                } finally {
                    writer.dispose();
                }
            }
        }
        byte[] adobe = "Adobe\0d\0\0\0\0\0".getBytes(StandardCharsets.ISO_8859_1);
        return withSegment(out.toByteArray(), 0xEE, adobe);
    }

    static Path save(Path folder, String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    static Path save(Path folder, String name, BufferedImage image) throws IOException {
        Path file = folder.resolve(name);
        ImageWriter own = null;
        for (var all = ImageIO.getImageWritersByFormatName(name.substring(name.lastIndexOf('.') + 1));
                all.hasNext(); ) {
            ImageWriter writer = all.next();
            // The one that comes with Java knows 16 bits in every kind.
            own = own == null || writer.getClass().getName().startsWith("com.sun") ? writer : own;
        }
        try (var stream = ImageIO.createImageOutputStream(file.toFile())) {
            own.setOutput(stream);
            own.write(image);
        } finally {
            own.dispose();
        }
        return file;
    }

    /** Puts a segment right behind the start of a JPEG. */
    static byte[] withSegment(byte[] jpeg, int marker, byte[] body) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        DataOutputStream data = new DataOutputStream(out);
        data.write(jpeg, 0, 2);
        data.writeByte(0xFF);
        data.writeByte(marker);
        data.writeShort(body.length + 2);
        data.write(body);
        data.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    /** The EXIF segment of a camera held some way; TIFF 6.0 layout with the orientation alone. */
    static byte[] exif(int orientation) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        DataOutputStream data = new DataOutputStream(out);
        data.write("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        data.write("MM".getBytes(StandardCharsets.US_ASCII));
        data.writeShort(42);
        data.writeInt(8);
        data.writeShort(1);
        data.writeShort(0x0112);
        data.writeShort(3);
        data.writeInt(1);
        data.writeShort(orientation);
        data.writeShort(0);
        data.writeInt(0);
        return out.toByteArray();
    }

    /** The segment that carries a profile. */
    static byte[] profileSegment(byte[] profile) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write("ICC_PROFILE\0".getBytes(StandardCharsets.US_ASCII));
        out.write(1);
        out.write(1);
        out.write(profile);
        return out.toByteArray();
    }

    /**
     * A matrix profile with the sRGB curve as a parametric one, as phones embed it. Layout: ICC.1:2022.
     *
     * @param toConnection from linear red, green, blue to X, Y, Z for D50
     */
    static byte[] profile(double[][] toConnection) throws IOException {
        String[] names = {"rXYZ", "gXYZ", "bXYZ", "rTRC", "gTRC", "bTRC"};
        int table = 128 + 4 + 12 * names.length;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        DataOutputStream data = new DataOutputStream(out);
        int size = table + 3 * 20 + 32;
        data.writeInt(size);
        data.writeInt(0);
        data.writeInt(0x04000000);
        data.writeBytes("mntrRGB XYZ ");
        data.write(new byte[12]);
        data.writeBytes("acsp");
        data.write(new byte[28]);
        data.writeInt(0x0000F6D6);
        data.writeInt(0x00010000);
        data.writeInt(0x0000D32D);
        data.write(new byte[48]);
        data.writeInt(names.length);
        for (int i = 0; i < names.length; i++) {
            data.writeBytes(names[i]);
            data.writeInt(i < 3 ? table + 20 * i : table + 60);
            data.writeInt(i < 3 ? 20 : 32);
        }
        for (int k = 0; k < 3; k++) {
            data.writeBytes("XYZ ");
            data.writeInt(0);
            for (int axis = 0; axis < 3; axis++) {
                data.writeInt((int) Math.round(65536 * toConnection[axis][k]));
            }
        }
        data.writeBytes("para");
        data.writeInt(0);
        data.writeShort(3);
        data.writeShort(0);
        for (double p : new double[] {2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045}) {
            data.writeInt((int) Math.round(65536 * p));
        }
        return out.toByteArray();
    }
}
