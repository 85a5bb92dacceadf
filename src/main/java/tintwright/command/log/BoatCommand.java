package tintwright.command.log;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import tintwright.bench.log.BoatStory;
import tintwright.bench.log.KeepBoat;
import tintwright.bench.log.ShopLog;
import tintwright.command.pieces.Answer;
import tintwright.command.pieces.Command;
import tintwright.files.Fields;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;
import tintwright.logbook.disk.LogFailure;

/** {@code boat}: the boats of the log, their places, and how they have moved over the years. */
@CommandLine.Command(
        name = "boat",
        sortOptions = false,
        description = {
            "Lists and finds the boats of the log, shows one with its places and how they have moved,",
            "adds a boat or a place."
        },
        footer = {
            "",
            "Examples:",
            "  tintwright boat --demo --name Tarrowmere",
            "  tintwright boat --find chalky",
            "  tintwright boat --add Sallowquay --type dinghy --year 1990",
            "  tintwright boat --name Sallowquay --add-place transom --aged yellowed"
        })
public final class BoatCommand extends Command {
    /** More boats than this are not for reading on a terminal. */
    private static final int MOST = 200;

    @Option(names = "--find", paramLabel = "WORDS", description = "Boats with these words anywhere in their log.")
    private String find;

    @Option(names = "--name", paramLabel = "BOAT", description = "This boat.")
    private String name;

    @Option(names = "--add", paramLabel = "BOAT", description = "A new boat of this name.")
    private String add;

    @Option(names = "--rename", paramLabel = "BOAT", description = "With --name: its new name.")
    private String rename;

    @Option(names = "--type", paramLabel = "TEXT", description = "With --add or --name: what it is.")
    private String type;

    @Option(names = "--year", paramLabel = "YEAR", description = "With --add or --name: when it was built.")
    private Integer year;

    @Option(names = "--notes", paramLabel = "TEXT", description = "With --add or --name: anything else.")
    private String notes;

    @Option(names = "--add-place", paramLabel = "PLACE", description = "With --name: a place on it.")
    private String addPlace;

    @Option(names = "--aged", paramLabel = "TEXT", description = "With --add-place: where and how it has aged.")
    private String aged;

    @Option(
            names = "--photo",
            paramLabel = "FILE",
            description = "With --name: a photo to keep with the boat, or with" + " its --place.")
    private Path photo;

    @Option(names = "--place", paramLabel = "PLACE", description = "With --photo: the place it shows.")
    private String place;

    @Mixin
    private LogOptions options;

    @Override
    protected Answer answer() throws LogFailure {
        try (ShopLog log = options.open()) {
            if (add != null) {
                Page.Boat boat =
                        new Page.Boat(add.strip(), text(type), Optional.ofNullable(year), text(notes), List.of());
                return LogOptions.done(
                        log, LogOptions.sentence(new KeepBoat(log).add(boat), "Added the boat " + boat.name()));
            }
            if (name == null) {
                return list(log);
            }
            Noted<Page.Boat> boat = log.boat(name);
            if (addPlace != null) {
                return LogOptions.done(
                        log,
                        LogOptions.sentence(
                                new KeepBoat(log).addPlace(boat, addPlace, text(aged)),
                                "Added the place " + addPlace + " on the "
                                        + boat.page().name()));
            }
            if (photo != null) {
                Optional<Noted<Page.Place>> shown =
                        place == null ? Optional.empty() : Optional.of(log.place(boat, place));
                return LogOptions.done(
                        log,
                        LogOptions.sentence(
                                new KeepBoat(log).addPhoto(boat, shown, photo),
                                "Kept the photo " + photo.getFileName()));
            }
            if (rename != null || type != null || year != null || notes != null) {
                return LogOptions.done(
                        log,
                        LogOptions.sentence(
                                new KeepBoat(log)
                                        .change(
                                                boat,
                                                LogOptions.text(rename),
                                                Optional.ofNullable(type),
                                                Optional.ofNullable(year),
                                                Optional.ofNullable(notes)),
                                "Changed what is said of the " + boat.page().name()));
            }
            return story(log, BoatStory.of(log, boat));
        }
    }

    private static String text(String option) {
        return option == null ? "" : option.strip();
    }

    private Answer list(ShopLog log) {
        List<Noted<Page.Boat>> boats =
                find == null ? log.book().boats() : log.book().search(find, MOST);
        List<String> lines = new ArrayList<>();
        int width = boats.stream()
                .limit(MOST)
                .mapToInt(boat -> boat.page().name().length())
                .max()
                .orElse(0);
        for (Noted<Page.Boat> boat : boats.subList(0, Math.min(MOST, boats.size()))) {
            lines.add(
                    (boat.page().name() + " ".repeat(width - boat.page().name().length()) + "  "
                                    + boat.page().about())
                            .stripTrailing());
        }
        if (boats.isEmpty()) {
            lines.add(
                    find == null
                            ? "There is no boat in the log " + log.book().folder()
                                    + " yet: add one with --add, or look at the invented one with --demo."
                            : "Nothing in the log has the words \"" + find + "\".");
        } else if (boats.size() > MOST) {
            lines.add("... and " + (boats.size() - MOST) + " more: use --find.");
        }
        return LogOptions.answer(log, lines, Fields.none().each("boats", boats, BoatCommand::fields));
    }

    private static Fields fields(Noted<Page.Boat> boat) {
        return Fields.of("id", boat.id())
                .with("name", boat.page().name())
                .with("type", boat.page().type())
                .orNull("year", boat.page().year())
                .with("notes", boat.page().notes())
                .with("photos", boat.page().photos());
    }

    private Answer story(ShopLog log, BoatStory story) {
        Page.Boat boat = story.boat().page();
        List<String> lines = new ArrayList<>();
        lines.add(boat.name() + (boat.about().isEmpty() ? "" : ": " + boat.about()));
        if (!boat.notes().isBlank()) {
            lines.add(boat.notes());
        }
        if (!boat.photos().isEmpty()) {
            lines.add("Photos: " + String.join(", ", boat.photos()));
        }
        for (BoatStory.PlaceStory place : story.places()) {
            lines.add("");
            lines.add(place.place().page().name()
                    + (place.place().page().aged().isBlank()
                            ? ""
                            : " (" + place.place().page().aged() + ")")
                    + (place.place().page().photos().isEmpty()
                            ? ""
                            : "; photos: "
                                    + String.join(", ", place.place().page().photos())));
            place.seen().forEach(seen -> lines.add("  " + LogWords.seen(seen)));
            place.moved().ifPresent(moved -> lines.add("  " + LogWords.moved(moved)));
        }
        lines.add("");
        lines.addAll(LogWords.entries(story));
        return LogOptions.answer(
                log,
                lines,
                Fields.of("boat", fields(story.boat()))
                        .each("places", story.places(), LogWords::fields)
                        .with("entries", LogWords.entryFields(story)));
    }
}
