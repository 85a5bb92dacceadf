package tintwright.command.pieces;

import tintwright.files.Fields;
import tintwright.shelf.knowledge.Doubt;

/** Doubted chips for machines, the same in every command. */
public final class Doubts {
    private Doubts() {}

    public static Fields fields(Doubt doubt) {
        return Fields.of("chip", doubt.chipId())
                .with("part", doubt.partId().isEmpty() ? null : doubt.partId())
                .with("factor", doubt.factor())
                .with("misfit", doubt.misfit())
                .with("words", doubt.words());
    }
}
