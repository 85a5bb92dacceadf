package tintwright.command.cup;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import tintwright.reading.HullFamily;

/** The names that {@code --hull-like} takes. */
public final class HullNames extends ArrayList<String> {
    private static final long serialVersionUID = 1L;

    HullNames() {
        super(all());
    }

    private static List<String> all() {
        return Arrays.stream(HullFamily.values()).map(HullFamily::words).toList();
    }

    static HullFamily of(String name) {
        String plain = name.strip().toLowerCase(Locale.ROOT).replace('-', ' ');
        return Arrays.stream(HullFamily.values())
                .filter(family -> family.words().equals(plain))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "there is no kind of hull \"" + name + "\": say one of " + String.join(", ", all())));
    }
}
