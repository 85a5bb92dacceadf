package tintwright.reading.photo;

import java.util.List;
import java.util.Optional;

/**
 * All that was read in one photo.
 *
 * @param photo       its name; readings of one name share one bias
 * @param spots       one reading for each spot that shows its colour
 * @param flags       what a person should know, the gravest first
 * @param references  how many reference patches were used
 * @param correction  how the camera was corrected, in words
 * @param leaveOneOut mean CIEDE2000 of references predicted from the others; NaN without references
 */
public record PhotoReadings(
        String photo,
        List<SpotReading> spots,
        List<Flag> flags,
        int references,
        String correction,
        double leaveOneOut) {
    public PhotoReadings {
        spots = List.copyOf(spots);
        flags = List.copyOf(flags);
    }

    /** @return the reading of a spot; empty when the spot was clipped or is not marked */
    public Optional<SpotReading> spot(String name) {
        return spots.stream().filter(one -> one.spot().name().equals(name)).findFirst();
    }
}
