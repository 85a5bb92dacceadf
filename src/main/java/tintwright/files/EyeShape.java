package tintwright.files;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import tintwright.reading.EyeVerdict;
import tintwright.reading.EyeVerdict.Amount;
import tintwright.reading.EyeVerdict.Depth;
import tintwright.reading.EyeVerdict.Hue;
import tintwright.reading.FilmState;

/** What the eye saw of a dab, as it stands in files. */
final class EyeShape {
    private EyeShape() {}

    static Map<String, Object> toTree(EyeVerdict verdict) {
        Map<String, Object> tree = new LinkedHashMap<>();
        verdict.depth().ifPresent(depth -> tree.put("depth", ReadingShape.code(depth)));
        verdict.hue().ifPresent(hue -> tree.put("hue", ReadingShape.code(hue)));
        if (verdict.amount() != Amount.NOT_SAID) {
            tree.put("amount", ReadingShape.code(verdict.amount()));
        }
        tree.put("film", ReadingShape.code(verdict.film()));
        return tree;
    }

    /** @return what was seen; of what dab stands beside it, under "trial" and "farther" */
    static EyeVerdict from(JsonPlace place) throws FileProblem {
        place.only("depth", "hue", "amount", "film", "trial", "farther");
        Optional<Depth> depth = place.has("depth")
                ? Optional.of(ReadingShape.choice(place.at("depth"), Depth.values()))
                : Optional.empty();
        Optional<Hue> hue =
                place.has("hue") ? Optional.of(ReadingShape.choice(place.at("hue"), Hue.values())) : Optional.empty();
        Amount amount =
                place.has("amount") ? ReadingShape.choice(place.at("amount"), Amount.values()) : Amount.NOT_SAID;
        FilmState film = ReadingShape.choice(place.at("film"), FilmState.values());
        return place.make(() -> new EyeVerdict(depth, hue, amount, film));
    }
}
