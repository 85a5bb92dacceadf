package tintwright.command.pieces;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import tintwright.shelf.knowledge.Doubt;

/** Doubted chips for machines, the same in every command. */
public final class Doubts {
    private Doubts() {}

    public static Map<String, Object> fields(Doubt doubt) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("chip", doubt.chipId());
        fields.put(
                "part", Optional.of(doubt.partId()).filter(id -> !id.isEmpty()).orElse(null));
        fields.put("factor", Figures.six(doubt.factor()));
        fields.put("misfit", Figures.six(doubt.misfit()));
        fields.put("words", doubt.words());
        return fields;
    }
}
