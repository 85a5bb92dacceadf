package tintwright.logbook;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tintwright.reading.Reading;
import tintwright.shelf.Chip;
import tintwright.shelf.Leftover;
import tintwright.shelf.Parts;

/** What one entry of the log says. */
public sealed interface Page {

    /**
     * A boat.
     *
     * @param name   as the person calls it
     * @param type   such as "open boat, 7 m"; may be empty
     * @param year   of building, when known
     * @param notes  may be empty
     * @param photos names of files in the folder {@code photos} of the log; may be none
     */
    record Boat(String name, String type, Optional<Integer> year, String notes, List<String> photos) implements Page {
        public Boat {
            need("a boat needs a name", name);
            photos = List.copyOf(photos);
        }

        /** @return what she is, such as "open boat, 7 m, 1987"; empty when nobody said */
        public String about() {
            return Stream.of(Optional.of(type).filter(words -> !words.isBlank()), year.map(built -> "" + built))
                    .flatMap(Optional::stream)
                    .collect(Collectors.joining(", "));
        }
    }

    /**
     * A spot on a boat.
     *
     * @param name   such as "port bow"
     * @param aged   a word for where and how it has aged, such as "sunny side, chalky"; may be empty
     * @param photos names of files in the folder {@code photos} of the log; may be none
     */
    record Place(String name, String aged, List<String> photos) implements Page {
        public Place {
            need("a place needs a name, such as \"port bow\"", name);
            photos = List.copyOf(photos);
        }
    }

    /**
     * What was read at a place on a day: the hull as it was.
     *
     * @param readings at least one
     * @param note     how it was cleaned, the weather, anything; may be empty
     */
    record Target(UUID place, LocalDate day, List<Reading> readings, String note) implements Page {
        public Target {
            if (readings.isEmpty()) {
                throw new IllegalArgumentException("a target needs at least one reading");
            }
            readings = List.copyOf(readings);
        }
    }

    /**
     * A cup as it was mixed.
     *
     * @param name      what stands on the cup
     * @param place     the place it was mixed for, when it was for one
     * @param parts     what was in it at last, grams by id
     * @param shelf     what those ids were on that day
     * @param weighings everything that went onto the scale, in order; may be none
     * @param readings  what was read from it; may be none
     */
    record Cup(
            String name,
            LocalDate day,
            Optional<UUID> place,
            Parts parts,
            List<Ingredient> shelf,
            List<Weighing> weighings,
            List<Reading> readings,
            String note)
            implements Page {
        public Cup {
            need("a cup needs a name", name);
            shelf = List.copyOf(shelf);
            weighings = List.copyOf(weighings);
            readings = List.copyOf(readings);
            for (String id : parts.grams().keySet()) {
                if (shelf.stream().noneMatch(known -> known.id().equals(id))) {
                    throw new IllegalArgumentException(
                            "the cup \"" + name + "\" holds \"" + id + "\", and what that is was not given");
                }
            }
        }

        /** @return the name that a part had on that day */
        public String nameOf(String id) {
            return shelf.stream()
                    .filter(known -> known.id().equals(id))
                    .findFirst()
                    .map(Ingredient::name)
                    .orElse(id);
        }
    }

    /**
     * One thing that may be in a cup, as it stood on the shelf that day.
     *
     * @param role   {@code base} or {@code tint}
     * @param family the code of the pigment family of a tint; empty for a base
     */
    record Ingredient(String id, String name, String role, String family) {
        public Ingredient {
            need("an ingredient needs an id", id);
            need("an ingredient needs a name", name);
        }
    }

    /**
     * Something weighed into a cup, or taken out of it.
     *
     * @param part  the id of what was weighed
     * @param grams above 0 into the cup, below 0 out of it
     * @param note  such as "as 1:10 letdown"; may be empty
     */
    record Weighing(String part, double grams, String note) {
        public Weighing {
            need("a weighing needs what was weighed", part);
            if (!Double.isFinite(grams)) {
                throw new IllegalArgumentException("a weighing must be a number of grams, was " + grams);
            }
        }
    }

    /**
     * A chip and how it cured.
     *
     * @param chip  as it stands on the shelf
     * @param cured such as "two days at 18 C, tacky at first"; may be empty
     */
    record ChipMade(Optional<UUID> cup, Chip chip, String cured) implements Page {}

    /**
     * Holes that were filled.
     *
     * @param grams how much was mixed for them, when known
     * @param steps what was done, a line each, such as catalyst, paste, wax, grits
     */
    record Filled(
            Optional<UUID> place,
            Optional<UUID> cup,
            LocalDate day,
            OptionalDouble grams,
            List<String> steps,
            String note)
            implements Page {
        public Filled {
            steps = List.copyOf(steps);
        }
    }

    /**
     * A cup that was set aside.
     *
     * @param used true once it is gone
     */
    record LeftOver(Optional<UUID> cup, Leftover leftover, List<Ingredient> shelf, boolean used) implements Page {
        public LeftOver {
            shelf = List.copyOf(shelf);
        }
    }

    /**
     * How it came out.
     *
     * @param of the entry it judges: a cup, a chip or a fill
     */
    record Verdict(UUID of, Outcome outcome, LocalDate day, String note) implements Page {}

    /** A word for how a repair looks. */
    enum Outcome {
        INVISIBLE("invisible"),
        SEEN_FROM_A_METRE("seen from a metre"),
        REDO("redo");

        private final String words;

        Outcome(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        /** @throws IllegalArgumentException for other words */
        public static Outcome of(String words) {
            for (Outcome one : values()) {
                if (one.words.equalsIgnoreCase(words.strip())) {
                    return one;
                }
            }
            throw new IllegalArgumentException(
                    "a verdict is \"invisible\", \"seen from a metre\" or \"redo\", was \"" + words + "\"");
        }
    }

    /** Anything else worth remembering. */
    record Remark(Optional<UUID> of, String text) implements Page {
        public Remark {
            need("a note needs words", text);
        }
    }

    /**
     * An entry of a kind, or in a shape, that this version does not know: carried along, shown as it is.
     *
     * @param kind as the entry calls it
     * @param body its JSON
     */
    record Unknown(String kind, String body) implements Page {}

    private static void need(String what, String text) {
        if (text == null || text.isBlank()) {
            throw new IllegalArgumentException(what);
        }
    }
}
