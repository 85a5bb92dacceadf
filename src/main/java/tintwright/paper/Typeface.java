package tintwright.paper;

import java.net.URL;

/**
 * The one typeface of the window, of printed sheets and of pages for a phone: Roboto, in two weights. Its figures are
 * all of one width, so columns of grams stand still while they change; Apache License 2.0, embedding allowed.
 *
 * <p>Source of the files: the library {@code com.formdev:flatlaf-fonts-roboto}, TrueType outlines.
 */
public enum Typeface {
    REGULAR("Roboto-Regular.ttf"),
    BOLD("Roboto-Bold.ttf");

    /** The family's name, as the toolkit and style sheets know it. */
    public static final String FAMILY = "Roboto";

    private static final String FOLDER = "/com/formdev/flatlaf/fonts/roboto/";

    private final String file;

    Typeface(String file) {
        this.file = file;
    }

    /** @return where the font file lies */
    public URL file() {
        URL found = Typeface.class.getResource(FOLDER + file);
        if (found == null) {
            throw new IllegalStateException("the library of typefaces no longer carries " + file);
        }
        return found;
    }
}
