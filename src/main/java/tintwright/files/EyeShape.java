package tintwright.files;

import java.util.Optional;
import tintwright.reading.EyeVerdict;
import tintwright.reading.EyeVerdict.Amount;
import tintwright.reading.EyeVerdict.Depth;
import tintwright.reading.EyeVerdict.Hue;
import tintwright.reading.FilmState;

/** What the eye saw of a dab, as it stands in files. */
final class EyeShape {
    private EyeShape() {}

    static Fields toTree(EyeVerdict verdict) {
        return Fields.none()
                .with("depth", verdict.depth())
                .with("hue", verdict.hue())
                .with("amount", Optional.of(verdict.amount()).filter(amount -> amount != Amount.NOT_SAID))
                .with("film", verdict.film());
    }

    /** @return what was seen; of what dab stands beside it, under "trial" and "farther" */
    static EyeVerdict from(JsonPlace place) throws FileProblem {
        place.only("depth", "hue", "amount", "film", "trial", "farther");
        return place.make(() -> new EyeVerdict(
                place.optional("depth", said -> ReadingShape.choice(said, Depth.values())),
                place.optional("hue", said -> ReadingShape.choice(said, Hue.values())),
                place.optional("amount", said -> ReadingShape.choice(said, Amount.values()))
                        .orElse(Amount.NOT_SAID),
                ReadingShape.choice(place.at("film"), FilmState.values())));
    }
}
