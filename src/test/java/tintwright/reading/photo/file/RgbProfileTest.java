package tintwright.reading.photo.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tintwright.colour.RgbSpace;

/** Profiles that others made, whole and damaged. */
class RgbProfileTest {
    private static final byte[] SRGB =
            ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();

    /** The profile of the Java runtime against IEC 61966-2-1; its curve is a table of 16 bits. */
    @Test
    void theRuntimesOwnProfileIsTheStandard() {
        RgbProfile profile = RgbProfile.parse(SRGB).orElseThrow();
        assertEquals("sRGB primaries, by its profile", profile.name());
        for (int channel = 0; channel < 3; channel++) {
            float[] table = profile.table(channel, 255);
            for (int code = 0; code < 256; code++) {
                assertEquals(RgbSpace.toLinear(code / 255.0), table[code], 2e-4, "code " + code);
            }
        }
    }

    /** Grey has no matrix of three primaries. */
    @Test
    void anotherKindIsNotUnderstood() {
        byte[] grey = ICC_Profile.getInstance(ColorSpace.CS_GRAY).getData();
        assertEquals(Optional.empty(), RgbProfile.parse(grey));
    }

    /** However a profile is cut or spoilt, it is read or it is not; nothing else happens. */
    @Test
    void damageThrowsNothing() {
        Random random = new Random(4);
        int empty = 0;
        for (int i = 0; i < 400; i++) {
            byte[] spoilt = Arrays.copyOf(SRGB, random.nextBoolean() ? SRGB.length : random.nextInt(SRGB.length));
            for (int k = 0; k < 8 && spoilt.length > 0; k++) {
                spoilt[random.nextInt(spoilt.length)] = (byte) random.nextInt(256);
            }
            empty += RgbProfile.parse(spoilt).isEmpty() ? 1 : 0;
        }
        assertTrue(empty > 100, "of 400 only " + empty + " were refused");
    }
}
