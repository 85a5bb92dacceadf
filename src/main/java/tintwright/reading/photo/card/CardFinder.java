package tintwright.reading.photo.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import tintwright.colour.Lab;
import tintwright.colour.RgbSpace;
import tintwright.reading.photo.file.Preview;

/**
 * Finds a card of known colours in a photo: patch-like blobs in rows and columns, turned and shifted until their
 * colours follow those of the card. What is found is for a person to confirm.
 */
public final class CardFinder {
    /** The longest side of the preview that a card is looked for in; a bound on work, a judgement of ours. */
    public static final int PREVIEW_SIDE = 1200;
    /** Of the scatter of the card's colours, the share that the found patches must explain; a judgement of ours. */
    private static final double LEAST_FIT = 0.72;

    /** A bound on work, a judgement of ours. */
    private static final int MOST_LATTICES = 12;

    private CardFinder() {}

    /**
     * A card found.
     *
     * @param placed the card where it lies, in pixels of the photo
     * @param fit    how well the colours follow the card's, 0 to 1
     */
    public record Found(PlacedCard placed, double fit) {}

    /**
     * Rows and columns are what a card is known by, so one of a single row is not looked for.
     *
     * @return what the person does instead, one sentence; empty for a card that is looked for
     */
    public static Optional<String> byHand(ReferenceCard card) {
        if (card.rows() > 1 && card.columns() > 1) {
            return Optional.empty();
        }
        return Optional.of(
                "The card \"" + card.name() + "\" has a single row of patches, so it cannot be found by itself:"
                        + " drag the four corners of its frame onto the outer corners of its patches.");
    }

    /** @return where the card lies; empty when it is not to be seen, too small, too tilted or of a single row */
    public static Optional<Found> find(Preview preview, ReferenceCard card) {
        if (byHand(card).isPresent()) {
            return Optional.empty();
        }
        List<List<Lattice.Node>> lattices = Lattice.find(FlatBlobs.find(preview));
        Found best = null;
        List<Integer> tried = new ArrayList<>();
        for (List<Lattice.Node> lattice : lattices) {
            int key = key(lattice);
            if (tried.contains(key)) {
                continue;
            }
            tried.add(key);
            if (tried.size() > MOST_LATTICES
                    || lattice.size() * 3 < card.patches().size()) {
                break;
            }
            Found found = place(preview, card, lattice);
            if (found != null && (best == null || found.fit() > best.fit())) {
                best = found;
            }
        }
        return best != null && best.fit() >= LEAST_FIT ? Optional.of(best) : Optional.empty();
    }

    /** The same blobs numbered from another one are not tried again; numbered aslant they are. */
    private static int key(List<Lattice.Node> lattice) {
        int key = 0;
        int columns = 0;
        int rows = 0;
        for (Lattice.Node node : lattice) {
            key += node.blob().hashCode();
            for (Lattice.Node other : lattice) {
                columns = Math.max(columns, node.column() - other.column());
                rows = Math.max(rows, node.row() - other.row());
            }
        }
        return 31 * key + columns + rows;
    }

    private static Found place(Preview preview, ReferenceCard card, List<Lattice.Node> lattice) {
        Found best = null;
        for (int turn = 0; turn < 4; turn++) {
            int[][] seats = new int[lattice.size()][];
            int left = Integer.MAX_VALUE;
            int right = Integer.MIN_VALUE;
            int top = Integer.MAX_VALUE;
            int bottom = Integer.MIN_VALUE;
            for (int i = 0; i < seats.length; i++) {
                seats[i] = turned(lattice.get(i).column(), lattice.get(i).row(), turn);
                left = Math.min(left, seats[i][0]);
                right = Math.max(right, seats[i][0]);
                top = Math.min(top, seats[i][1]);
                bottom = Math.max(bottom, seats[i][1]);
            }
            int spareColumns = card.columns() - (right - left + 1);
            int spareRows = card.rows() - (bottom - top + 1);
            for (int dx = Math.min(0, spareColumns); dx <= Math.max(0, spareColumns); dx++) {
                for (int dy = Math.min(0, spareRows); dy <= Math.max(0, spareRows); dy++) {
                    Found found = tryAt(preview, card, lattice, seats, dx - left, dy - top);
                    if (found != null && (best == null || found.fit() > best.fit())) {
                        best = found;
                    }
                }
            }
        }
        return best;
    }

    private static int[] turned(int column, int row, int turn) {
        return switch (turn) {
            case 0 -> new int[] {column, row};
            case 1 -> new int[] {row, -column};
            case 2 -> new int[] {-column, -row};
            default -> new int[] {-row, column};
        };
    }

    private static Found tryAt(
            Preview preview, ReferenceCard card, List<Lattice.Node> lattice, int[][] seats, int addColumn, int addRow) {
        List<double[]> from = new ArrayList<>();
        List<PixelPoint> to = new ArrayList<>();
        for (int i = 0; i < seats.length; i++) {
            int column = seats[i][0] + addColumn;
            int row = seats[i][1] + addRow;
            if (column >= 0 && row >= 0 && column < card.columns() && row < card.rows()) {
                from.add(new double[] {column, row});
                // A pixel's middle lies half a pixel inside it.
                to.add(new PixelPoint(
                        (lattice.get(i).blob().x() + 0.5) / preview.scale(),
                        (lattice.get(i).blob().y() + 0.5) / preview.scale()));
            }
        }
        if (from.size() * 3 < card.patches().size() || from.size() < 4) {
            return null;
        }
        Optional<Homography> grid = Homography.nearest(from, to);
        if (grid.isEmpty()) {
            return null;
        }
        double half = card.patchShare() / 2;
        double right = card.columns() - 1 + half;
        double bottom = card.rows() - 1 + half;
        List<PixelPoint> corners = List.of(
                grid.get().at(-half, -half),
                grid.get().at(right, -half),
                grid.get().at(right, bottom),
                grid.get().at(-half, bottom));
        try {
            PlacedCard placed = new PlacedCard(card, corners);
            double fit = fit(preview, placed);
            return Double.isNaN(fit) ? null : new Found(placed, fit);
        } catch (IllegalArgumentException e) {
            // Such corners cannot be a card seen from the front.
            return null;
        }
    }

    /** Share of the scatter of the card's codes that a straight mix of the photo's codes explains. */
    private static double fit(Preview preview, PlacedCard placed) {
        ReferenceCard card = placed.card();
        int n = card.patches().size();
        DMatrixRMaj seen = new DMatrixRMaj(n, 4);
        DMatrixRMaj known = new DMatrixRMaj(n, 3);
        for (int i = 0; i < n; i++) {
            PixelPoint at = placed.centre(i / card.columns(), i % card.columns());
            int x = (int) (at.x() * preview.scale());
            int y = (int) (at.y() * preview.scale());
            if (x < 1 || y < 1 || x >= preview.width() - 1 || y >= preview.height() - 1) {
                return Double.NaN;
            }
            for (int k = 0; k < 3; k++) {
                int sum = 0;
                for (int j = 0; j < 9; j++) {
                    sum += preview.at(x + j % 3 - 1, y + j / 3 - 1) >> 16 - 8 * k & 255;
                }
                // A root makes linear codes about as even as the eye's.
                seen.set(i, k, Math.sqrt(sum / (9 * 255.0)));
            }
            seen.set(i, 3, 1);
            double[] code = codes(card.patches().get(i));
            for (int k = 0; k < 3; k++) {
                known.set(i, k, code[k]);
            }
        }
        return explained(seen, known, n);
    }

    private static double[] codes(CardPatch patch) {
        Lab lab = patch.lab().orElseGet(() -> patch.colour(tintwright.colour.Viewing.D65_2));
        RgbSpace.Code code = RgbSpace.SRGB.encode(lab);
        return new double[] {code.red(), code.green(), code.blue()};
    }

    private static double explained(DMatrixRMaj seen, DMatrixRMaj known, int n) {
        DMatrixRMaj normal = new DMatrixRMaj(4, 4);
        CommonOps_DDRM.multTransA(seen, seen, normal);
        for (int k = 0; k < 3; k++) {
            // Holds the mix back where a card of few patches could explain anything.
            normal.add(k, k, 0.02);
        }
        DMatrixRMaj right = new DMatrixRMaj(4, 3);
        CommonOps_DDRM.multTransA(seen, known, right);
        DMatrixRMaj mix = new DMatrixRMaj(4, 3);
        if (!CommonOps_DDRM.solve(normal, right, mix)) {
            return Double.NaN;
        }
        DMatrixRMaj made = new DMatrixRMaj(n, 3);
        CommonOps_DDRM.mult(seen, mix, made);
        double off = 0;
        double all = 0;
        for (int k = 0; k < 3; k++) {
            double mean = 0;
            for (int i = 0; i < n; i++) {
                mean += known.get(i, k) / n;
            }
            for (int i = 0; i < n; i++) {
                off += Math.pow(known.get(i, k) - made.get(i, k), 2);
                all += Math.pow(known.get(i, k) - mean, 2);
            }
        }
        return 1 - off / Math.max(1e-9, all);
    }
}
