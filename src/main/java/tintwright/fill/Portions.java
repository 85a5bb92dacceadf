package tintwright.fill;

import java.util.ArrayList;
import java.util.List;

/**
 * Divides work into as few portions as time and cup allow, and then makes the portions alike, so that the last cup is
 * not a thimbleful.
 */
final class Portions {
    /** Less than this part of a piece is not worth starting from the rest of a cup; a judgement of ours. */
    private static final double LEAST_PART = 0.1;

    /** One thing to do: {@code line} says whose, {@code ml} what it takes, {@code minutes} how long. */
    record Piece(int line, double ml, double minutes, boolean divisible) {}

    /** A part of a piece in a portion. */
    record Share(Piece piece, double part) {}

    private Portions() {}

    /** @return portions in the order of the pieces; a piece that cannot be divided and does not fit stands alone */
    static List<List<Share>> of(List<Piece> pieces, double mostMinutes, double mostMl) {
        List<List<Share>> full = packed(pieces, mostMinutes, mostMl);
        if (full.size() == 1) {
            return full;
        }
        double low = 0;
        double high = 1;
        List<List<Share>> best = full;
        for (int i = 0; i < 20; i++) {
            double middle = (low + high) / 2;
            List<List<Share>> tried = packed(pieces, mostMinutes * middle, mostMl * middle);
            if (tried.size() <= full.size()
                    && overlong(tried, mostMinutes, mostMl) <= overlong(full, mostMinutes, mostMl)) {
                best = tried;
                high = middle;
            } else {
                low = middle;
            }
        }
        return best;
    }

    private static long overlong(List<List<Share>> portions, double mostMinutes, double mostMl) {
        return portions.stream()
                .filter(p -> minutes(p) > mostMinutes * 1.000001 || ml(p) > mostMl * 1.000001)
                .count();
    }

    private static List<List<Share>> packed(List<Piece> pieces, double mostMinutes, double mostMl) {
        List<List<Share>> portions = new ArrayList<>();
        List<Share> portion = new ArrayList<>();
        double minutes = 0;
        double ml = 0;
        for (Piece piece : pieces) {
            double left = 1;
            while (left > 1e-9) {
                double fits = Math.min((mostMinutes - minutes) / piece.minutes(), (mostMl - ml) / piece.ml());
                if (fits >= left - 1e-9 || portion.isEmpty() && (!piece.divisible() || fits < 1e-3)) {
                    portion.add(new Share(piece, left));
                    minutes += left * piece.minutes();
                    ml += left * piece.ml();
                    left = 0;
                } else {
                    if (piece.divisible() && fits >= LEAST_PART || portion.isEmpty()) {
                        portion.add(new Share(piece, fits));
                        left -= fits;
                    }
                    portions.add(portion);
                    portion = new ArrayList<>();
                    minutes = 0;
                    ml = 0;
                }
            }
        }
        portions.add(portion);
        return portions;
    }

    static double minutes(List<Share> portion) {
        return portion.stream()
                .mapToDouble(share -> share.part() * share.piece().minutes())
                .sum();
    }

    static double ml(List<Share> portion) {
        return portion.stream()
                .mapToDouble(share -> share.part() * share.piece().ml())
                .sum();
    }
}
