package tintwright.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
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
        Map<String, Object> tree = JsonText.head(KIND, VERSION);
        tree.putAll(toTree(card));
        return JsonText.of(tree);
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
        List<CardPatch> patches = new ArrayList<>();
        for (JsonPlace one : listed) {
            one.only("name", "lab", "spectrum");
            patches.add(patch(one, viewing));
        }
        String name = root.text("name", "card");
        double share = root.number("patchShare", ReferenceCard.USUAL_SHARE);
        double sigma = root.number("sigma", ReferenceCard.USUAL_SIGMA);
        return root.make(() -> new ReferenceCard(name, rows, columns, patches, share, sigma));
    }

    static Optional<Viewing> viewing(JsonPlace place) throws FileProblem {
        if (!place.has("light") && !place.has("observer")) {
            return Optional.empty();
        }
        String light = place.at("light").text();
        int observer = place.at("observer").whole();
        return Optional.of(place.make(() -> Viewing.of(light, observer)));
    }

    /** @param viewing what the card states its colours for; empty allows only spectra */
    static CardPatch patch(JsonPlace one, Optional<Viewing> viewing) throws FileProblem {
        String name = one.at("name").text();
        if (one.has("spectrum")) {
            JsonPlace spectrum = one.at("spectrum");
            spectrum.only("firstNm", "stepNm", "values");
            int first = spectrum.at("firstNm").whole();
            int step = spectrum.at("stepNm").whole();
            double[] values = spectrum.at("values").numbers();
            return CardPatch.of(name, spectrum.make(() -> Spectrum.of(new Grid(first, step, values.length), values)));
        }
        if (!one.has("lab")) {
            throw one.problem(
                    "the patch \"" + name + "\" has no colour; give it \"lab\": [L*, a*, b*] or a " + "\"spectrum\"");
        }
        if (viewing.isEmpty()) {
            throw one.problem("the patch \"" + name + "\" has L*, a*, b*, but nothing says for which light and "
                    + "observer; add \"light\": \"D50\", \"observer\": 2, or what the data sheet says");
        }
        double[] lab = one.at("lab").numbers();
        if (lab.length != 3) {
            throw one.at("lab").problem("must be three numbers [L*, a*, b*], were " + lab.length);
        }
        one.at("lab").make(() -> LabRange.check(lab[0], lab[1], lab[2]));
        return CardPatch.of(name, new Lab(lab[0], lab[1], lab[2], viewing.get()));
    }

    static Map<String, Object> toTree(ReferenceCard card) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("name", card.name());
        tree.put("rows", card.rows());
        tree.put("columns", card.columns());
        tree.put("patchShare", card.patchShare());
        tree.put("sigma", card.sigma());
        card.patches().stream()
                .flatMap(patch -> patch.lab().stream())
                .findFirst()
                .ifPresent(lab -> {
                    tree.put("light", lab.viewing().light().name());
                    tree.put("observer", lab.viewing().observer().degrees());
                });
        List<Object> patches = new ArrayList<>();
        for (CardPatch patch : card.patches()) {
            patches.add(toTree(patch));
        }
        tree.put("patches", patches);
        return tree;
    }

    static Map<String, Object> toTree(CardPatch patch) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("name", patch.name());
        patch.lab().ifPresent(lab -> tree.put("lab", new double[] {lab.lightness(), lab.a(), lab.b()}));
        patch.reflectance().ifPresent(spectrum -> {
            Map<String, Object> values = new LinkedHashMap<>();
            values.put("firstNm", spectrum.grid().firstNm());
            values.put("stepNm", spectrum.grid().stepNm());
            values.put("values", spectrum.toArray());
            tree.put("spectrum", values);
        });
        return tree;
    }
}
