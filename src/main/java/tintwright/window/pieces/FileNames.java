package tintwright.window.pieces;

/** Names for files that every system takes. */
public final class FileNames {
    private FileNames() {}

    /** @return the words with nothing but letters, digits, hyphens and single spaces left of them */
    public static String safe(String words) {
        String plain = words.replaceAll("[^\\p{L}\\p{N}-]+", " ").strip();
        return plain.isEmpty() ? "tintwright" : plain;
    }
}
