package tintwright.window.cup;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import tintwright.bench.CupBench;
import tintwright.bench.Weighing;
import tintwright.colour.Ciede2000;
import tintwright.colour.DifferenceWords;
import tintwright.colour.JudgedLight;
import tintwright.colour.Lab;
import tintwright.colour.SmoothReflectance;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;
import tintwright.cup.CupDeeds;
import tintwright.cup.Deed;
import tintwright.match.Recipe;
import tintwright.match.Target;
import tintwright.match.UnderLight;
import tintwright.reading.ColourReading;
import tintwright.reading.Reading;
import tintwright.shelf.Parts;
import tintwright.shelf.knowledge.Knowledge;
import tintwright.shelf.knowledge.Prediction;
import tintwright.units.Grams;
import tintwright.window.picture.DepthState;
import tintwright.window.picture.RoseState;
import tintwright.window.picture.Shade;
import tintwright.window.picture.SwatchState;

/** From what the engine knows to what the three pictures show. */
final class CupPictures {
    /** Two standard deviations: where the cup lies with about 95 %. */
    private static final double BAND = 2;
    /** Share of a mix that stands for a small addition, when asking which way a tint pulls. */
    private static final double SMALL = 0.001;

    private static final int REACH_CORNERS = 3;
    /** Doses that lift the cup by more than this, L*, are a climb. */
    private static final double CLIMBS = 0.3;

    private final Knowledge knowledge;
    private final Target target;
    /** The hull by the best estimate; as read when there is no other. */
    private final Lab hull;
    /** L*, a*, b* by which the cup is other than its weights say, since an eye has seen it. */
    private final double[] seen;

    CupPictures(Knowledge knowledge, Target target) {
        this(knowledge, target, target.colour(), new double[3]);
    }

    private CupPictures(Knowledge knowledge, Target target, Lab hull, double[] seen) {
        this.knowledge = knowledge;
        this.target = target;
        this.hull = hull;
        this.seen = seen;
    }

    /** @return pictures of a cup: the same hull and the same cup as in all that is said of it */
    static CupPictures of(CupBench bench) {
        double[] seen = new double[3];
        bench.state().parts().ifPresent(parts -> {
            Lab best = bench.colour().orElseThrow();
            Lab weighed = bench.knowledge()
                    .colour(
                            parts,
                            bench.target().colour().viewing(),
                            bench.target().geometry());
            seen[0] = best.lightness() - weighed.lightness();
            seen[1] = best.a() - weighed.a();
            seen[2] = best.b() - weighed.b();
        });
        return new CupPictures(bench.knowledge(), bench.target(), bench.hull(), seen);
    }

    /** @param recipe under each of its lights */
    static SwatchState swatch(String mixName, Recipe recipe) {
        return new SwatchState("Hull", mixName, "", "Hull and mix", JudgedLight.each(light -> {
            UnderLight under = recipe.lights().get(light);
            return new SwatchState.UnderLight(
                    Shade.of(under.target()),
                    Shade.of(under.mix()),
                    Optional.empty(),
                    under.deltaE(),
                    DifferenceWords.of(under.mix(), under.target()).phrase(recipe.within90()),
                    under.target().viewing().equals(recipe.prediction().lab().viewing())
                            ? OptionalDouble.of(recipe.within90())
                            : OptionalDouble.empty());
        }));
    }

    /**
     * A cup under the same lights. In the light the hull was read in, the number is that of the cup's outlook: the
     * best estimate from what was weighed and from every chip that was read, against the best estimate of the hull. A
     * chip is shown as it was read, and is not judged a second time.
     *
     * @param mixName  what the cup's field is called
     * @param compared what the number compares
     * @param chip     what was last read of it, when it is cured and nothing has gone in since
     * @param within90 nine times in ten the cup is within this CIEDE2000 of the hull; empty while that is not said
     */
    SwatchState cup(String mixName, String compared, Parts cup, Optional<Reading> chip, OptionalDouble within90) {
        Spectrum mix = foretell(cup).reflectance();
        Spectrum spectrum = target.reflectance().orElseGet(() -> SmoothReflectance.of(target.colour()));
        return new SwatchState("Hull", mixName, "Chip, as read", compared, JudgedLight.each(light -> {
            Viewing viewing = light.viewing(hull.viewing());
            boolean read = viewing.equals(hull.viewing());
            Lab mixed = read ? asSeen(cup) : Lab.of(mix, viewing);
            Lab wanted = read ? hull : Lab.of(spectrum, viewing);
            return new SwatchState.UnderLight(
                    Shade.of(wanted),
                    Shade.of(mixed),
                    chip.<Lab>flatMap(reading -> asRead(reading, light, viewing))
                            .map(Shade::of),
                    Ciede2000.between(mixed, wanted),
                    CupDeeds.difference(DifferenceWords.of(mixed, wanted)),
                    read ? within90 : OptionalDouble.empty());
        }));
    }

    /** @return empty when all that was read of it is its colour in light of another kind */
    private static Optional<Lab> asRead(Reading reading, JudgedLight light, Viewing viewing) {
        return reading instanceof ColourReading stated
                        && JudgedLight.of(stated.lab().viewing().light()) == light
                ? Optional.of(stated.lab())
                : reading.colour(viewing);
    }

    /** @return a part of the shelf alone */
    Shade shade(String part) {
        return Shade.of(colour(Parts.of(Map.of(part, 1.0))));
    }

    private Lab colour(Parts parts) {
        return knowledge.colour(parts, target.colour().viewing(), target.geometry());
    }

    /** The cup, or what becomes of it, by weights, chips and eye. */
    private Lab asSeen(Parts parts) {
        Lab weighed = colour(parts);
        return new Lab(
                Math.max(0, Math.min(100, weighed.lightness() + seen[0])),
                weighed.a() + seen[1],
                weighed.b() + seen[2],
                weighed.viewing());
    }

    Prediction foretell(Parts parts) {
        return knowledge.predict(parts, target.colour().viewing(), target.geometry());
    }

    /** @param order what goes in first, the base before all */
    DepthState recipe(Recipe recipe, List<Weighing> order) {
        List<DepthState.Step> steps = new ArrayList<>();
        Map<String, Double> sofar = new LinkedHashMap<>();
        double white = 0;
        for (Weighing part : order) {
            sofar.put(part.id(), part.grams());
            double lightness = colour(Parts.of(sofar)).lightness();
            if (part.tint()) {
                steps.add(new DepthState.Step(Grams.about(part.grams()) + " " + part.name(), lightness));
            } else {
                white = lightness;
            }
        }
        return depth("Mix", recipe.weighed(), white, white, steps, climb(recipe.weighed()));
    }

    /** The cup as it is, with the doses that are planned; what is poured off changes no colour. */
    DepthState doses(String name, Parts cup, String base, List<Deed> doses) {
        List<DepthState.Step> steps = new ArrayList<>();
        Parts sofar = cup;
        for (Deed dose : doses) {
            if (dose instanceof Deed.LetDown down) {
                double tint = down.grams() / down.oneIn();
                sofar = sofar.plus(Parts.of(Map.of(down.part(), tint, base, down.grams() - tint)));
                steps.add(step(down.grams(), down.part(), ", 1\u00a0in\u00a0" + down.oneIn(), sofar));
            } else if (dose instanceof Deed.Weighed weighed) {
                sofar = sofar.plus(Parts.of(Map.of(weighed.part(), weighed.grams())));
                steps.add(step(weighed.grams(), weighed.part(), "", sofar));
            } else if (dose instanceof Deed.SetAside aside && aside.grams() < sofar.total()) {
                sofar = sofar.times(1 - aside.grams() / sofar.total());
            }
        }
        double white = colour(Parts.of(Map.of(base, 1.0))).lightness();
        double now = asSeen(cup).lightness();
        // White that is already among the doses is their step up; a second arrow would count it twice.
        boolean climbing = steps.stream().anyMatch(step -> step.cup() > now + CLIMBS);
        return depth(name, cup, white, now, steps, climbing ? Optional.empty() : climb(cup));
    }

    /** @return ids of what goes in with these doses */
    static Set<String> parts(List<Deed> doses) {
        return doses.stream()
                .map(dose -> dose instanceof Deed.LetDown down
                        ? down.part()
                        : dose instanceof Deed.Weighed weighed ? weighed.part() : "")
                .collect(Collectors.toSet());
    }

    /** @param grams what the scale shows; of a let-down the whole of it, not the speck of tint inside */
    private DepthState.Step step(double grams, String part, String form, Parts after) {
        return new DepthState.Step(
                Grams.about(grams) + " " + knowledge.shelf().nameOf(part) + form,
                asSeen(after).lightness());
    }

    DepthState depth(
            String name,
            Parts cup,
            double white,
            double stepsFrom,
            List<DepthState.Step> steps,
            Optional<DepthState.Climb> climb) {
        Prediction now = foretell(cup);
        double unsure = BAND * Math.sqrt(now.covariance().ll());
        Lab lab = asSeen(cup);
        return new DepthState(
                white,
                hull.lightness(),
                Shade.of(hull),
                lab.lightness(),
                Shade.of(lab),
                name,
                unsure,
                stepsFrom,
                steps,
                climb);
    }

    /** What white does: the climb back when the cup is too dark, else what one step of lightness would cost. */
    Optional<DepthState.Climb> climb(Parts cup) {
        double from = asSeen(cup).lightness();
        double wanted = hull.lightness();
        if (from < wanted - 0.3) {
            return whiteFor(cup, wanted)
                    .map(grams -> new DepthState.Climb(from, wanted, Grams.about(grams) + " white\nlifts it back"));
        }
        return whiteFor(cup, from + 1)
                .map(grams -> new DepthState.Climb(from, from + 1, Grams.about(grams) + " white\nlifts it by 1"));
    }

    /** @return grams of the first base in the cup, or on the shelf, that lift it to a lightness; empty if none do */
    Optional<Double> whiteFor(Parts cup, double lightness) {
        String base = cup.grams().keySet().stream()
                .filter(id -> knowledge.shelf().base(id).isPresent())
                .findFirst()
                .orElse(knowledge.shelf().bases().get(0).id());
        double low = 0;
        double high = cup.total() / 4;
        while (lifted(cup, base, high) < lightness) {
            high *= 2;
            if (high > 200 * cup.total()) {
                return Optional.empty();
            }
        }
        for (int i = 0; i < 30; i++) {
            double middle = (low + high) / 2;
            if (lifted(cup, base, middle) < lightness) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Optional.of(high);
    }

    private double lifted(Parts cup, String base, double grams) {
        return asSeen(cup.plus(Parts.of(Map.of(base, grams)))).lightness();
    }

    /**
     * @param tints   ids of the tints that may be used today
     * @param planned ids of those the plan uses
     */
    RoseState rose(String name, Parts cup, Collection<String> tints, Set<String> planned) {
        Prediction now = foretell(cup);
        Lab lab = asSeen(cup);
        List<RoseState.Pull> pulls = new ArrayList<>();
        List<RoseState.Point> tips = new ArrayList<>();
        for (String tint : tints) {
            Lab there = asSeen(cup.plus(Parts.of(Map.of(tint, SMALL * cup.total()))));
            pulls.add(new RoseState.Pull(
                    knowledge.shelf().nameOf(tint), there.a() - lab.a(), there.b() - lab.b(), planned.contains(tint)));
            level(tint).ifPresent(tips::add);
        }
        double unsure = BAND
                * Math.sqrt(Math.max(now.covariance().aa(), now.covariance().bb()));
        return new RoseState(
                new RoseState.Point(hull.a(), hull.b()),
                Shade.of(hull),
                new RoseState.Point(lab.a(), lab.b()),
                Shade.of(lab),
                name,
                unsure,
                pulls,
                tips.size() < REACH_CORNERS ? List.of() : around(tips));
    }

    /** Where one tint alone in white stands when it is as dark as the hull, within its loading. */
    private Optional<RoseState.Point> level(String tint) {
        String base = knowledge.shelf().bases().get(0).id();
        double limit = knowledge.shelf().tint(tint).orElseThrow().loadingLimit();
        double low = 0;
        double high = limit;
        for (int i = 0; i < 24; i++) {
            double middle = (low + high) / 2;
            if (alone(base, tint, middle).lightness() > hull.lightness()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        Lab there = alone(base, tint, high);
        return Optional.of(new RoseState.Point(there.a(), there.b()));
    }

    private Lab alone(String base, String tint, double share) {
        return colour(Parts.of(Map.of(base, 1 - share, tint, share)));
    }

    /** The outline around points, anticlockwise: nothing that mixes them lies far outside it. */
    static List<RoseState.Point> around(List<RoseState.Point> points) {
        List<RoseState.Point> sorted = new ArrayList<>(points);
        sorted.sort((p, q) -> p.a() == q.a() ? Double.compare(p.b(), q.b()) : Double.compare(p.a(), q.a()));
        List<RoseState.Point> outline = new ArrayList<>();
        for (int pass = 0; pass < 2; pass++) {
            int start = outline.size();
            for (RoseState.Point point : sorted) {
                while (outline.size() >= start + 2
                        && turn(outline.get(outline.size() - 2), outline.get(outline.size() - 1), point) <= 0) {
                    outline.remove(outline.size() - 1);
                }
                outline.add(point);
            }
            outline.remove(outline.size() - 1);
            java.util.Collections.reverse(sorted);
        }
        return outline;
    }

    private static double turn(RoseState.Point from, RoseState.Point over, RoseState.Point to) {
        return (over.a() - from.a()) * (to.b() - from.b()) - (over.b() - from.b()) * (to.a() - from.a());
    }
}
