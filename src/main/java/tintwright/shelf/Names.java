package tintwright.shelf;

/** One rule for the identities on a shelf. */
final class Names {
    private Names() {}

    static void check(String what, String id, String name) {
        if (id == null || id.isBlank()) {
            throw new IllegalArgumentException("a " + what + " needs an id");
        }
        if (name == null || name.isBlank()) {
            throw new IllegalArgumentException(what + " \"" + id + "\" needs a name");
        }
    }
}
