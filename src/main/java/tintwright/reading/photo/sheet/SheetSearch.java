package tintwright.reading.photo.sheet;

import java.util.List;

/** What came of looking for a sheet in a photo. */
public sealed interface SheetSearch {
    /**
     * It was found.
     *
     * @param pose    where it lies
     * @param shop    the sign of the shop whose sheet it is
     * @param codes   how many of its four corner codes were read, 3 or 4
     * @param remarks sentences a person should know, such as a second sheet in the picture; mostly none
     */
    record Found(SheetPose pose, String shop, int codes, List<String> remarks) implements SheetSearch {
        public Found {
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * It was not.
     *
     * @param why what stands in the way
     */
    record Missed(Why why) implements SheetSearch {}

    /** Why a sheet cannot be read. */
    enum Why {
        NOT_SEEN(
                "No sheet was found in the picture. Lay the printed sheet on the hull with all four corner codes in the"
                        + " picture, go nearer if it is small there, or place the marks by hand."),
        CUT_OFF(
                "Fewer than three of the sheet's corner codes can be read: it is cut off, covered or out of focus there."
                        + " Take the photo again with all four corners in the picture and nothing on the codes."),
        MIRRORED("The picture is mirrored, as some phones save pictures of the front camera. Take it with the back"
                + " camera, or switch mirroring off."),
        TOO_SMALL("The sheet is too small in the picture to read. Go nearer until it fills a third of the picture, and"
                + " send the photo in its full size."),
        SMALL_COPY(
                "No sheet was found in the picture, which is a small copy, as chats make them, so its codes may be too"
                        + " small in it. Send the photo itself, or a copy of 1300 pixels along its longer side of which the sheet"
                        + " fills a quarter."),
        BLURRED(
                "The picture is blurred, so the sheet's corner codes cannot be read. Hold the phone still, tap the sheet"
                        + " to focus, and take it again."),
        BURNT_OUT("The paper is burnt out to plain white. Take it once more, a little darker: tap the paper, or step"
                + " the exposure down."),
        TOO_DARK("The picture is too dark to find the sheet in. Take it again in brighter shade, or step the exposure"
                + " up.");

        private final String sentence;

        Why(String sentence) {
            this.sentence = sentence;
        }

        /** @return what is wrong and what to do */
        public String sentence() {
            return sentence;
        }
    }
}
