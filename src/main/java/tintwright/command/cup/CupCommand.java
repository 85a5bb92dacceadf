package tintwright.command.cup;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import tintwright.bench.ChooseTarget;
import tintwright.bench.CupBench;
import tintwright.colour.DifferenceWords;
import tintwright.colour.Geometry;
import tintwright.command.pieces.Answer;
import tintwright.command.pieces.Command;
import tintwright.command.pieces.Figures;
import tintwright.cup.Deed;
import tintwright.cup.UnknownCup;
import tintwright.files.FileProblem;
import tintwright.files.TargetFile;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.Tint;

/** {@code cup}: what is really in the cup, and what goes in next. */
@CommandLine.Command(
        name = "cup",
        sortOptions = false,
        synopsisSubcommandLabel = "start|add|read|eye|undo|fix|show|plan",
        description = "Works at a cup: small safe doses, readings, taking back. Each word below has its own --help.",
        subcommands = {
            CupCommand.Start.class,
            CupCommand.Add.class,
            CupCommand.Read.class,
            CupEye.class,
            CupCommand.Undo.class,
            CupCommand.Fix.class,
            CupCommand.Show.class,
            CupCommand.WhatNext.class
        },
        footer = {
            "",
            "Examples:",
            "  tintwright cup start --cup bow.json --place bow --grams 100",
            "  tintwright cup add --cup bow.json --planned",
            "  tintwright cup read --cup bow.json --lab 70.2,-2.1,5.5 --light D65 --observer 10"
        })
public final class CupCommand extends Command {
    @Override
    protected Answer answer() {
        throw new IllegalArgumentException(
                "say what to do with the cup: start, add, read, eye, undo, fix, show or plan");
    }

    /** A new cup, or one that nobody wrote down. */
    @CommandLine.Command(
            name = "start",
            sortOptions = false,
            description = "Starts a cup file and says how much white" + " to weigh and to hold back.",
            footer = {
                "",
                "Examples:",
                "  tintwright cup start --cup bow.json --target port-bow.json --grams 100",
                "  tintwright cup start --cup bow.json --hull-like cream --grams 100",
                "  tintwright cup start --cup bow.json --place bow --unknown 80 --lab 70.2,-2.1,5.5 --light D65"
                        + " --observer 10"
            })
    static final class Start extends Command {
        @Mixin
        private CupOptions options;

        @Option(names = "--target", paramLabel = "FILE", description = "The hull, a target file.")
        private Path target;

        @Option(names = "--place", paramLabel = "NAME", description = "A place on the demo boat instead.")
        private String place;

        @Option(
                names = "--hull-like",
                paramLabel = "NAME",
                description = "No reading at all: what the hull looks like, and dabs seen beside it (cup eye) do the"
                        + " rest. ${COMPLETION-CANDIDATES}.",
                completionCandidates = HullNames.class)
        private String hullLike;

        @Option(names = "--grams", paramLabel = "G", description = "How much is wanted; 100 when not said.")
        private double grams = 100;

        @Option(names = "--scale", paramLabel = "G", description = "Smallest step of the scale; 0.01 when not said.")
        private double scale = 0.01;

        @Option(names = "--base", paramLabel = "ID", description = "Which white; the first when not said.")
        private String base;

        @Option(names = "--name", paramLabel = "NAME", description = "What is written on the cup.")
        private String name;

        @Option(
                names = "--unknown",
                paramLabel = "G",
                description = "The cup stands there already with so many grams"
                        + " that nobody wrote down: needs a reading of it.")
        private Double unknown;

        @Mixin
        private TypedReading reading;

        @Override
        protected Answer answer() throws FileProblem {
            if (Files.exists(options.file())) {
                throw new IllegalArgumentException(
                        options.file() + " is there already and was left as it is: name" + " another file");
            }
            String called =
                    name == null ? options.file().getFileName().toString().replaceFirst("\\.json$", "") : name;
            CupBench bench =
                    CupBench.start(options.knowledge(), called, hull(), grams, scale, Optional.ofNullable(base));
            if (unknown == null && reading.isGiven()) {
                throw new IllegalArgumentException("a reading at the start needs --unknown with the grams in the cup");
            }
            if (unknown != null) {
                CupBench.Unknown found = bench.unknown(options.at(), unknown, reading.reading(hulls(bench)));
                CupAnswer answer = new CupAnswer(found.bench()).say("Most likely in this cup:");
                for (UnknownCup.Contents contents :
                        found.likely().subList(0, Math.min(3, found.likely().size()))) {
                    answer.say("  " + DifferenceWords.chance(contents.chance()) + ": " + words(found.bench(), contents)
                            + " (tints give or take " + Math.round(100 * contents.off()) + " %)");
                }
                return options.begin(answer.state().plan());
            }
            return options.begin(new CupAnswer(bench).state().plan());
        }

        private static String words(CupBench bench, UnknownCup.Contents contents) {
            StringBuilder text = new StringBuilder();
            contents.parts()
                    .grams()
                    .forEach((id, mass) -> text.append(text.isEmpty() ? "" : ", ")
                            .append(Figures.fixed(mass, mass < 1 ? 3 : 1))
                            .append(" g ")
                            .append(bench.shelf().nameOf(id)));
            return text.toString();
        }

        private PlaceReadings hull() throws FileProblem {
            if (hullLike != null && target == null) {
                return HullNames.of(hullLike).place("", place == null ? "hull" : place);
            }
            if ((target == null) == (place == null) || hullLike != null) {
                throw new IllegalArgumentException("say what to match: --target FILE, or --place on the demo boat, or"
                        + " --hull-like without either's reading");
            }
            return target != null ? TargetFile.read(target) : ChooseTarget.onDemoBoat(place);
        }
    }

    /** Something goes in, is held back or poured off. */
    @CommandLine.Command(
            name = "add",
            sortOptions = false,
            description = "Writes down what really went into the cup.",
            footer = {
                "",
                "Examples:",
                "  tintwright cup add --cup bow.json --part soot-black --grams 0.31",
                "  tintwright cup add --cup bow.json --part ink-blue --letdown 20 --grams 1.4",
                "  tintwright cup add --cup bow.json --planned"
            })
    static final class Add extends Command {
        @Mixin
        private CupOptions options;

        @Option(names = "--part", paramLabel = "ID", description = "Base, tint or leftover.")
        private String part;

        @Option(names = "--grams", paramLabel = "G", description = "What the scale showed.")
        private Double grams;

        @Option(names = "--letdown", paramLabel = "N", description = "It was a letdown, 1 gram of tint in N.")
        private Integer letdown;

        @Option(names = "--drops", paramLabel = "N", description = "So many drops instead of grams.")
        private Integer drops;

        @Option(names = "--hold", paramLabel = "G", description = "So much white is held back from now on.")
        private Double hold;

        @Option(names = "--set-aside", paramLabel = "G", description = "So much was poured off.")
        private Double aside;

        @Option(names = "--as", paramLabel = "NAME", description = "What is written on what was poured off.")
        private String as;

        @Option(names = "--planned", description = "All that the plan says went in, exactly so.")
        private boolean planned;

        @Option(names = "--again", description = "The same dose really went in twice.")
        private boolean again;

        @Override
        protected Answer answer() throws FileProblem {
            return options.change(bench -> {
                CupBench after = planned ? asPlanned(bench) : added(bench);
                return new CupAnswer(after).state().contents().plan();
            });
        }

        private CupBench asPlanned(CupBench bench) {
            CupBench after = bench.asPlanned(options.at());
            if (after == bench) {
                throw new IllegalArgumentException("nothing is planned to go in now, so nothing was written; what comes"
                        + " next: " + String.join(" ", bench.deeds().lines()));
            }
            return after;
        }

        private CupBench added(CupBench bench) {
            CupBench.Added added = bench.add(options.at(), deed(bench));
            if (added instanceof CupBench.Added.SameAgain same) {
                if (!again) {
                    throw new IllegalArgumentException(
                            same.question() + " Nothing was written: if it did, say --again.");
                }
                return same.ifMeant();
            }
            return ((CupBench.Added.Done) added).bench();
        }

        private Deed deed(CupBench bench) {
            if (hold != null) {
                return new Deed.Held(hold);
            } else if (aside != null) {
                return new Deed.SetAside(aside, as == null ? bench.cup().name() + " rest" : as);
            } else if (part == null || (grams == null) == (drops == null)) {
                throw new IllegalArgumentException(
                        "say what went in: --part with --grams or --drops; or --hold," + " --set-aside or --planned");
            } else if (drops != null) {
                return new Deed.Dropped(
                        part,
                        drops,
                        bench.shelf().tint(part).map(Tint::dropGrams).orElse(Tint.USUAL_DROP_GRAMS));
            }
            double step = bench.cup().scaleStep();
            return letdown != null ? new Deed.LetDown(part, letdown, grams, step) : new Deed.Weighed(part, grams, step);
        }
    }

    /** A chip is read the way the hull was, unless somebody says otherwise. */
    private static Geometry hulls(CupBench bench) {
        return bench.cup().hull().readings().get(0).geometry();
    }

    /** A chip was read. */
    @CommandLine.Command(
            name = "read",
            sortOptions = false,
            description = "Writes down what a chip from the cup read," + " and learns from it.",
            footer = {
                "",
                "Examples:",
                "  tintwright cup read --cup bow.json --lab 70.2,-2.1,5.5 --light D65 --observer 10 --gloss in",
                "  tintwright cup read --cup bow.json --lab 70.2,-2.1,5.5 --hull 62.1,-9.0,3.1 --light D65 --observer 10",
                "  tintwright cup read --cup bow.json --lab 70.2,-2.1,5.5 --hull 62.0,-9.1,3.0 --photo bow-2 --light D65"
                        + " --observer 10"
            })
    static final class Read extends Command {
        @Mixin
        private CupOptions options;

        @Mixin
        private TypedReading reading;

        @Option(names = "--sure", description = "Learn from it even when it seems impossible.")
        private boolean sure;

        @Override
        protected Answer answer() throws FileProblem {
            return options.change(this::learnt);
        }

        private CupAnswer learnt(CupBench bench) throws FileProblem {
            Geometry usual = hulls(bench);
            if (sure) {
                CupBench after = bench.readAnyway(options.at(), reading.reading(usual), reading.hull(usual));
                return new CupAnswer(after).field("counts", true).state().plan();
            }
            CupBench.Learned learned = bench.read(options.at(), reading.reading(usual), reading.hull(usual));
            CupAnswer answer = new CupAnswer(learned.bench());
            answer.field("counts", learned instanceof CupBench.Learned.Done);
            if (learned instanceof CupBench.Learned.NotThisCup no) {
                answer.say(no.why().substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                        + no.why().substring(1) + ".");
            }
            return answer.state().plan();
        }
    }

    /** Takes back. */
    @CommandLine.Command(
            name = "undo",
            sortOptions = false,
            description = "Takes the last entry back, or any, or undoes" + " that.",
            footer = {
                "",
                "Examples:",
                "  tintwright cup undo --cup bow.json",
                "  tintwright cup undo --cup bow.json --redo"
            })
    static final class Undo extends Command {
        @Mixin
        private CupOptions options;

        @Option(names = "--entry", paramLabel = "ID", description = "Which; the last when not said.")
        private String entry;

        @Option(names = "--redo", description = "Take the last taking back back.")
        private boolean redo;

        @Override
        protected Answer answer() throws FileProblem {
            return options.change(
                    bench -> new CupAnswer(after(bench)).state().contents().plan());
        }

        private CupBench after(CupBench bench) {
            if (redo) {
                return bench.redo(options.at())
                        .orElseThrow(() -> new IllegalArgumentException(
                                "there is nothing to redo: nothing was taken back since the last entry"));
            }
            return entry != null
                    ? bench.undo(entry, options.at())
                    : bench.undo(options.at())
                            .orElseThrow(
                                    () -> new IllegalArgumentException("there is nothing to take back in this cup"));
        }
    }

    /** Puts an entry right. */
    @CommandLine.Command(
            name = "fix",
            sortOptions = false,
            description = "Puts the grams of an earlier entry right;" + " everything after it follows.",
            footer = {"", "Example:", "  tintwright cup fix --cup bow.json --entry e4 --grams 0.31"})
    static final class Fix extends Command {
        @Mixin
        private CupOptions options;

        @Option(names = "--entry", paramLabel = "ID", required = true, description = "Which, as \"cup show\" names it.")
        private String entry;

        @Option(names = "--grams", paramLabel = "G", required = true, description = "What it really was.")
        private double grams;

        @Override
        protected Answer answer() throws FileProblem {
            return options.change(bench -> new CupAnswer(bench.correct(entry, grams, options.at()))
                    .state()
                    .contents()
                    .plan());
        }
    }

    /** What is in it. */
    @CommandLine.Command(
            name = "show",
            sortOptions = false,
            description = "Shows what is in the cup and its whole" + " story.",
            footer = {"", "Example:", "  tintwright cup show --cup bow.json"})
    static final class Show extends Command {
        @Mixin
        private CupOptions options;

        @Override
        protected Answer answer() throws FileProblem {
            return new CupAnswer(options.open()).state().contents().story().answer();
        }
    }

    /** What goes in next. */
    @CommandLine.Command(
            name = "plan",
            sortOptions = false,
            description = "Says what to do with the cup next.",
            footer = {"", "Example:", "  tintwright cup plan --cup bow.json"})
    static final class WhatNext extends Command {
        @Mixin
        private CupOptions options;

        @Override
        protected Answer answer() throws FileProblem {
            return new CupAnswer(options.open()).state().plan().answer();
        }
    }
}
