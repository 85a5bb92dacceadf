package tintwright.fill;

/**
 * Where in the order of the job a batch belongs.
 *
 * @param kind what is done
 * @param pass which spray pass, from 1; always 1 for a fill
 * @param of   how many passes there are; 1 for a fill
 */
public record Stage(Kind kind, int pass, int of) {
    /** What is done. */
    public enum Kind {
        /** The holes are filled. */
        FIRST_FILL("first fill"),
        /** The low spots are filled. */
        SECOND_FILL("second fill, low spots"),
        /** Gel coat goes on with the gun. */
        SPRAY("spray");

        private final String words;

        Kind(String words) {
            this.words = words;
        }
    }

    /** @return the stage in words: "spray, pass 1 of 2" */
    public String words() {
        return of > 1 ? kind.words + ", pass " + pass + " of " + of : kind.words;
    }
}
