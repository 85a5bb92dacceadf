package tintwright.window.frame;

/** The stations of one job, in the order they are worked. */
public enum Step {
    BOAT("Boat", "boat and place"),
    HULL("Hull", "its colour now"),
    SHELF("Shelf", "white and tints"),
    FILL("Holes", "how much"),
    CUP("Cup", "weigh, read, correct"),
    LOG("Log", "to make it again");

    private final String title;
    private final String meaning;

    Step(String title, String meaning) {
        this.title = title;
        this.meaning = meaning;
    }

    /** @return the station's name */
    public String title() {
        return title;
    }

    /** @return true where figures are shown in the person's own units, so that the page follows when these change */
    public boolean showsUnits() {
        return this == SHELF || this == FILL;
    }

    /** @return what is done there, in a few words */
    public String meaning() {
        return meaning;
    }
}
