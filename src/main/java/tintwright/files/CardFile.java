package tintwright.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.reading.photo.card.CardPatch;
import tintwright.reading.photo.card.ReferenceCard;

/** A card of known colours on disk. The shape is written down in docs/formats.md. */
public final class CardFile {
    /** The invented cards that travel inside the program, to print, measure and fill in. */
    public static final List<String> SHIPPED = List.of("five-by-five", "grey-six", "white-and-grey");

    private static final String KIND = "card";
    private static final int VERSION = 1;

    private CardFile() {}

    /** @throws FileProblem when it is missing, malformed, of a newer version, or a patch has no colour */
    public static ReferenceCard read(Path file) throws FileProblem {
        return from(JsonPlace.read(file));
    }

    /** @return the card as it stands in a file */
    static String text(ReferenceCard card) {
        return JsonText.of(JsonText.head(KIND, VERSION).and(toTree(card)));
    }

    /** @param name one of {@link #SHIPPED} */
    public static ReferenceCard shipped(String name) {
        String resource = "/swatches/cards/" + name + ".json";
        try (InputStream in = SHIPPED.contains(name) ? CardFile.class.getResourceAsStream(resource) : null) {
            if (in == null) {
                throw new IllegalArgumentException(
                        "no card \"" + name + "\" travels with the program; there are " + String.join(", ", SHIPPED));
            }
            return from(JsonPlace.parse(resource, new String(in.readAllBytes(), StandardCharsets.UTF_8)));
        } catch (FileProblem | IOException e) {
            throw new IllegalStateException("the program is damaged: " + e.getMessage(), e);
        }
    }

    static ReferenceCard from(JsonPlace root) throws FileProblem {
        root.head(KIND, VERSION, "name", "rows", "columns", "patchShare", "sigma", "light", "observer", "patches");
        return cardOf(root);
    }

    /** A card without its version and kind: as it stands inside a marks file. */
    static ReferenceCard cardOf(JsonPlace root) throws FileProblem {
        int rows = root.at("rows").whole();
        int columns = root.at("columns").whole();
        List<JsonPlace> listed = root.at("patches").list();
        if (listed.size() != rows * columns) {
            throw root.at("patches")
                    .problem("a card of " + rows + " rows and " + columns + " columns needs " + rows * columns
                            + " colours, row by row; there are " + listed.size());
        }
        Optional<Viewing> viewing = viewing(root);
        List<CardPatch> patches = root.each("patches", one -> {
            one.only("name", "lab", "spectrum");
            return patch(one, viewing);
        });
        return root.make(() -> new ReferenceCard(
                root.text("name", "card"),
                rows,
                columns,
                patches,
                root.number("patchShare", ReferenceCard.USUAL_SHARE),
                root.number("sigma", ReferenceCard.USUAL_SIGMA)));
    }

    static Optional<Viewing> viewing(JsonPlace place) throws FileProblem {
        return place.has("light") || place.has("observer")
                ? Optional.of(ReadingShape.viewing(place))
                : Optional.empty();
    }

    /** @param viewing what the card states its colours for; empty allows only spectra */
    static CardPatch patch(JsonPlace one, Optional<Viewing> viewing) throws FileProblem {
        String name = one.at("name").text();
        if (one.has("spectrum")) {
            return CardPatch.of(name, ReadingShape.spectrum(one.at("spectrum")));
        }
        if (!one.has("lab")) {
            throw one.problem(
                    "the patch \"" + name + "\" has no colour; give it \"lab\": [L*, a*, b*] or a " + "\"spectrum\"");
        }
        if (viewing.isEmpty()) {
            throw one.problem("the patch \"" + name + "\" has L*, a*, b*, but nothing says for which light and "
                    + "observer; add \"light\": \"D50\", \"observer\": 2, or what the data sheet says");
        }
        return CardPatch.of(name, ReadingShape.lab(one.at("lab"), viewing.get()));
    }

    static Fields toTree(ReferenceCard card) {
        Optional<Viewing> viewing = card.patches().stream()
                .flatMap(patch -> patch.lab().stream())
                .map(Lab::viewing)
                .findFirst();
        return Fields.of("name", card.name())
                .with("rows", card.rows())
                .with("columns", card.columns())
                .with("patchShare", card.patchShare())
                .with("sigma", card.sigma())
                .with("light", viewing.map(seen -> seen.light().name()))
                .with("observer", viewing.map(seen -> seen.observer().degrees()))
                .each("patches", card.patches(), CardFile::toTree);
    }

    static Fields toTree(CardPatch patch) {
        return Fields.of("name", patch.name())
                .with("lab", patch.lab().map(Lab::axes))
                .with("spectrum", patch.reflectance().map(ReadingShape::toTree));
    }
}
