package tintwright.fill.repair;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What is found at a place beside its size. */
public enum Finding {
    /** Fine cracks run from it. */
    CRACKED("cracked"),
    /** The laminate gives under a thumb or sounds dull. */
    SOFT("soft"),
    /** The core shows, or is wet. */
    CORE("core"),
    /** It carries load: transom, keel, under an engine, where a fitting pulls. */
    STRUCTURE("structure"),
    /** The hull around is stained by rust, leaves or water. */
    STAINED("stained"),
    /** It lies in a moulded non-skid pattern. */
    NON_SKID("non-skid");

    private final String code;

    Finding(String code) {
        this.code = code;
    }

    /** @return the name in files and on the command line */
    public String code() {
        return code;
    }

    /** @throws IllegalArgumentException when no finding has this name */
    public static Finding named(String name) {
        String plain = name.trim().toLowerCase(Locale.ROOT).replace('_', '-');
        List<String> known = new ArrayList<>();
        for (Finding one : values()) {
            if (one.code.equals(plain)) {
                return one;
            }
            known.add(one.code);
        }
        throw new IllegalArgumentException(
                "what was found must be one of " + String.join(", ", known) + ", was \"" + name.trim() + "\"");
    }

    static Set<Finding> copy(Set<Finding> found) {
        return found.isEmpty() ? Set.of() : Set.copyOf(EnumSet.copyOf(found));
    }
}
