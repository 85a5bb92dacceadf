package tintwright.fill.repair;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** The kinds of repair and the sizes each is measured by: what a form, a file and a command line ask for. */
public enum RepairKind {
    /** {@link CountersunkHole}; the countersink by its depth or by its angle in degrees. */
    COUNTERSUNK("countersunk", List.of("hole", "top", "depth"), List.of("countersink", "angle", "plug")),
    /** {@link PlainHole}. */
    HOLE("hole", List.of("hole", "depth"), List.of("plug")),
    /** {@link Gouge}. */
    GOUGE("gouge", List.of("length", "width", "depth"), List.of()),
    /** {@link ScratchGroove}. */
    SCRATCH("scratch", List.of("length", "width", "depth"), List.of()),
    /** {@link WornArea}. */
    WORN("worn", List.of("length", "width", "depth"), List.of()),
    /** {@link SprayArea}; without a film it takes the one that hides. */
    SPRAY("spray", List.of("length", "width"), List.of("film"));

    /** The one size that is no length: degrees. */
    public static final String ANGLE = "angle";

    private final String code;
    private final List<String> needed;
    private final List<String> optional;

    RepairKind(String code, List<String> needed, List<String> optional) {
        this.code = code;
        this.needed = needed;
        this.optional = optional;
    }

    /** @return the name in files and on the command line */
    public String code() {
        return code;
    }

    /** @return the sizes that must be given */
    public List<String> needed() {
        return needed;
    }

    /** @return the sizes that may be given */
    public List<String> optional() {
        return optional;
    }

    /** @throws IllegalArgumentException when no kind has this code */
    public static RepairKind ofCode(String code) {
        List<String> known = new ArrayList<>();
        for (RepairKind kind : values()) {
            if (kind.code.equalsIgnoreCase(code.trim())) {
                return kind;
            }
            known.add(kind.code);
        }
        throw new IllegalArgumentException(
                "the kind of repair must be one of " + String.join(", ", known) + ", was \"" + code + "\"");
    }

    /**
     * A repair of this kind.
     *
     * @param sizes        by name; millimetres, the angle in degrees
     * @param hidingFilmMm the film that hides, for an area to spray without a film of its own
     * @throws IllegalArgumentException for a size that is missing, unknown or impossible
     */
    public Repair make(Map<String, Double> sizes, OptionalDouble hidingFilmMm) {
        for (String size : sizes.keySet()) {
            if (!needed.contains(size) && !optional.contains(size)) {
                throw new IllegalArgumentException("\"" + size + "\" is no size of the kind " + code + ", which takes "
                        + String.join(", ", needed)
                        + (optional.isEmpty() ? "" : " and may take " + String.join(", ", optional)));
            }
        }
        double plug = sizes.getOrDefault("plug", 0.0);
        return switch (this) {
            case COUNTERSUNK -> countersunk(sizes, plug);
            case HOLE -> new PlainHole(size(sizes, "hole"), size(sizes, "depth"), plug);
            case GOUGE -> new Gouge(size(sizes, "length"), size(sizes, "width"), size(sizes, "depth"));
            case SCRATCH -> new ScratchGroove(size(sizes, "length"), size(sizes, "width"), size(sizes, "depth"));
            case WORN -> new WornArea(size(sizes, "length"), size(sizes, "width"), size(sizes, "depth"));
            case SPRAY ->
                sizes.containsKey("film")
                        ? new SprayArea(size(sizes, "length"), size(sizes, "width"), size(sizes, "film"))
                        : SprayArea.toHide(
                                size(sizes, "length"),
                                size(sizes, "width"),
                                hidingFilmMm.orElse(Published.LEAST_FILM_MM.low()));
        };
    }

    private Repair countersunk(Map<String, Double> sizes, double plug) {
        if (sizes.containsKey("countersink") == sizes.containsKey(ANGLE)) {
            throw new IllegalArgumentException(
                    "a countersunk hole needs how deep the countersink is or its angle, one " + "of the two");
        }
        return sizes.containsKey(ANGLE)
                ? CountersunkHole.ofAngle(
                        size(sizes, "hole"), size(sizes, "top"), size(sizes, ANGLE), size(sizes, "depth"), plug)
                : new CountersunkHole(
                        size(sizes, "hole"),
                        size(sizes, "top"),
                        size(sizes, "countersink"),
                        size(sizes, "depth"),
                        plug);
    }

    private double size(Map<String, Double> sizes, String name) {
        Double size = sizes.get(name);
        if (size == null) {
            throw new IllegalArgumentException(
                    "the kind " + code + " needs " + String.join(", ", needed) + "; " + name + " is missing");
        }
        return size;
    }

    /** @return the kind of this repair */
    public static RepairKind of(Repair repair) {
        if (repair instanceof CountersunkHole) {
            return COUNTERSUNK;
        }
        if (repair instanceof PlainHole) {
            return HOLE;
        }
        if (repair instanceof Gouge) {
            return GOUGE;
        }
        if (repair instanceof ScratchGroove) {
            return SCRATCH;
        }
        return repair instanceof WornArea ? WORN : SPRAY;
    }

    /** @return the sizes of a repair by name, mm, as {@link #make} takes them */
    public static Map<String, Double> sizes(Repair repair) {
        Map<String, Double> sizes = new LinkedHashMap<>();
        if (repair instanceof CountersunkHole hole) {
            sizes.put("hole", hole.holeMm());
            sizes.put("top", hole.topMm());
            sizes.put("countersink", hole.countersinkMm());
            sizes.put("depth", hole.depthMm());
            sizes.put("plug", hole.plugMm());
        } else if (repair instanceof PlainHole hole) {
            sizes.put("hole", hole.holeMm());
            sizes.put("depth", hole.depthMm());
            sizes.put("plug", hole.plugMm());
        } else {
            sizes.put("length", repair.acrossMm());
            sizes.put("width", repair.widthMm());
            sizes.put(repair instanceof SprayArea ? "film" : "depth", repair.thickestMm());
        }
        return sizes;
    }
}
