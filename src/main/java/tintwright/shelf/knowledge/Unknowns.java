package tintwright.shelf.knowledge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tintwright.colour.Grid;
import tintwright.shelf.Base;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.Shelf;
import tintwright.shelf.Tint;

/**
 * Everything that is not known exactly, as one list of numbers that are independent unit normals before any chip:
 * the curves of every part, how a tint's strength goes with its dose, the shared strength of the shop's pastes, the shift from wet to cured, and one bias
 * for each photo.
 */
final class Unknowns {
    static final int WAVELENGTHS = Grid.INSIDE.count();
    /** How much lighter wet gel coat is taken to look before a pair was read, L*; common practice, no source. */
    private static final double WET_IS_LIGHTER = 1.5;
    /** Standard deviations of the shift from cured to wet in L*, a*, b*; common practice, no source. */
    private static final double[] WET_SHIFT = {1.5, 1.0, 1.5};

    private final List<String> ids = new ArrayList<>();
    private final List<PartPrior> priors = new ArrayList<>();
    private final Map<String, Integer> index = new LinkedHashMap<>();
    private final int[] start;
    private final int sharedStrength;
    private final int wetShift;
    private final Map<String, Place> photoStart = new LinkedHashMap<>();
    private final int theory;
    private final int count;

    /**
     * @param photos one for each that shares an error, by the name it has here
     * @param loose  ids of tints that may be any pigment, whatever their tub says
     * @param cup    true when chips of one cup are among those seen: what the theory misses of it is then unknown too
     */
    Unknowns(Shelf shelf, Iterable<SharedError> photos, Set<String> loose, boolean cup) {
        for (Base base : shelf.bases()) {
            add(base.id(), PartPrior.base(ids.isEmpty()));
        }
        for (Tint tint : shelf.tints()) {
            add(tint.id(), PartPrior.tint(loose.contains(tint.id()) ? PigmentFamily.UNKNOWN : tint.family()));
        }
        start = new int[ids.size()];
        int next = 0;
        for (int i = 0; i < start.length; i++) {
            start[i] = next;
            next += priors.get(i).absorption().rank()
                    + priors.get(i).scattering().rank();
            next += priors.get(i).paste() ? 1 : 0;
        }
        sharedStrength = next++;
        wetShift = next;
        next += 3;
        for (SharedError photo : photos) {
            photoStart.put(photo.name(), new Place(next, photo.size()));
            next += photo.size();
        }
        theory = cup ? next : -1;
        next += cup ? TheoryError.directions()[0].length : 0;
        count = next;
    }

    private void add(String id, PartPrior prior) {
        index.put(id, ids.size());
        ids.add(id);
        priors.add(prior);
    }

    int count() {
        return count;
    }

    List<String> ids() {
        return ids;
    }

    int indexOf(String id) {
        return index.get(id);
    }

    PartPrior prior(int part) {
        return priors.get(part);
    }

    /** @return for each unknown its place when what is a tint's comes first, tint by tint, and then all the rest */
    int[] sharedLast() {
        int[] place = new int[count];
        int next = 0;
        for (boolean ofTint : new boolean[] {true, false}) {
            for (int part = 0; part < start.length; part++) {
                for (int i = start(part); i < end(part) && priors.get(part).paste() == ofTint; i++) {
                    place[i] = next++;
                }
            }
        }
        for (int i = sharedStrength; i < count; i++) {
            place[i] = next++;
        }
        return place;
    }

    int sharedStrength() {
        return sharedStrength;
    }

    int wetShift() {
        return wetShift;
    }

    /** @return for each part whether it is a tint */
    boolean[] tints() {
        boolean[] tint = new boolean[ids.size()];
        for (int part = 0; part < tint.length; part++) {
            tint[part] = priors.get(part).paste();
        }
        return tint;
    }

    /** @return share of all tints together; shares by mass of every part, together 1 */
    double tintShare(double[] shares) {
        double sum = 0;
        for (int part = 0; part < shares.length; part++) {
            sum += priors.get(part).paste() ? shares[part] : 0;
        }
        return sum;
    }

    /** @return the standard deviation of axis 0 (L*), 1 (a*) or 2 (b*) of the shift from wet to cured */
    static double wetShiftDeviation(int axis) {
        return WET_SHIFT[axis];
    }

    /** @return how much a wet film reads above a cured one on an axis, for these numbers */
    double wetShift(int axis, double[] z) {
        return (axis == 0 ? WET_IS_LIGHTER : 0) + WET_SHIFT[axis] * z[wetShift + axis];
    }

    /** @return first unknown of what the theory misses of the cup; -1 when no cup was read */
    int theory() {
        return theory;
    }

    /** @return what the mixes of the cup share of the theory's error, for a size of 1; zeros when no cup was read */
    double[] theoryOfCup(double[] z) {
        int from = Math.max(0, theory);
        int to = theory < 0 ? 0 : theory + TheoryError.directions()[0].length;
        return TheoryError.curve(java.util.Arrays.copyOfRange(z, from, to), TheoryError.shared());
    }

    /** Where the unknowns of a photo begin, and how many there are. */
    private record Place(int from, int size) {}

    int photo(SharedError photo) {
        return photoStart.get(photo.name()).from();
    }

    /** @return true when chips of that photo have taught something of its error */
    boolean knows(SharedError photo) {
        Place place = photoStart.get(photo.name());
        return place != null && place.size() >= photo.size();
    }

    /** @return for every photo its unknowns in each of these drawings */
    Map<String, double[][]> photos(double[][] drawn) {
        Map<String, double[][]> out = new LinkedHashMap<>();
        photoStart.forEach((name, place) -> {
            double[][] rows = new double[drawn.length][];
            for (int version = 0; version < drawn.length; version++) {
                rows[version] = java.util.Arrays.copyOfRange(drawn[version], place.from(), place.from() + place.size());
            }
            out.put(name, rows);
        });
        return out;
    }

    /** First unknown of a part: its ln K directions, then its ln S directions, a tint's last one its {@link DosePower}. */
    int start(int part) {
        return start[part];
    }

    int startOfScattering(int part) {
        return start[part] + priors.get(part).absorption().rank();
    }

    int end(int part) {
        return startOfScattering(part)
                + priors.get(part).scattering().rank()
                + (priors.get(part).paste() ? 1 : 0);
    }

    /** @return for each part by which power of its share its strength changes; 0 for a base */
    double[] powers(double[] z) {
        double[] power = new double[start.length];
        for (int part = 0; part < power.length; part++) {
            power[part] = priors.get(part).paste() ? DosePower.DEVIATION * z[end(part) - 1] : 0;
        }
        return power;
    }

    /** @return what these and other unknowns have in common, as the others stand; the middle of the prior for the rest */
    double[] carried(Unknowns others, double[] z) {
        double[] out = new double[count];
        for (int part = 0; part < start.length; part++) {
            Integer there = others.index.get(ids.get(part));
            if (there != null && others.priors.get(there) == priors.get(part)) {
                System.arraycopy(z, others.start(there), out, start(part), end(part) - start(part));
            }
        }
        System.arraycopy(z, others.sharedStrength, out, sharedStrength, 4);
        return out;
    }

    /** K and S of every part for these numbers. */
    Curves curves(double[] z) {
        double[][] logs = logs(z, true);
        double[][] k = new double[ids.size()][WAVELENGTHS];
        double[][] s = new double[ids.size()][WAVELENGTHS];
        for (int part = 0; part < k.length; part++) {
            for (int w = 0; w < WAVELENGTHS; w++) {
                k[part][w] = Math.exp(logs[2 * part][w]);
                s[part][w] = Math.exp(logs[2 * part + 1][w]);
            }
        }
        return new Curves(k, s, powers(z));
    }

    /**
     * @param withMiddle false for what the numbers add to the middle of the prior
     * @return ln K of the first part, its ln S, ln K of the second, and so on: 31 values each
     */
    double[][] logs(double[] z, boolean withMiddle) {
        double[][] logs = new double[2 * ids.size()][WAVELENGTHS];
        for (int part = 0; part < ids.size(); part++) {
            PartPrior prior = priors.get(part);
            double shared = prior.paste() ? PartPrior.SHARED_STRENGTH * z[sharedStrength] : 0;
            for (int w = 0; w < WAVELENGTHS; w++) {
                logs[2 * part][w] = shared + value(prior.absorption(), w, z, start(part), withMiddle);
                logs[2 * part + 1][w] = shared + value(prior.scattering(), w, z, startOfScattering(part), withMiddle);
            }
        }
        return logs;
    }

    private static double value(CurvePrior prior, int wavelength, double[] z, int from, boolean withMiddle) {
        double[] basis = prior.basis(wavelength);
        double sum = withMiddle ? prior.middle(wavelength) : 0;
        for (int i = 0; i < basis.length; i++) {
            sum += basis[i] * z[from + i];
        }
        return sum;
    }

    /**
     * K and S of every part, rows in the order of the shelf, 31 columns.
     *
     * @param k absorption per mass, the first base's scattering being about 1
     * @param s scattering per mass
     * @param power of its share by which a part's strength changes, see {@link DosePower}
     */
    record Curves(double[][] k, double[][] s, double[] power) {
        /** @return what this share of a part counts for: itself, as strong as it is at that share */
        double counts(int part, double share) {
            return share * DosePower.times(power[part], share);
        }
    }
}
