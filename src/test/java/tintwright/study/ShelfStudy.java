package tintwright.study;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.match.MatchAnswer;
import tintwright.match.Matcher;
import tintwright.match.Recipe;
import tintwright.match.Target;
import tintwright.match.Wish;
import tintwright.shelf.Chip;
import tintwright.shelf.Knowledge;
import tintwright.shelf.Parts;
import tintwright.shelf.Tint;

/** Random shops played from first recipe to second correction; fills a table of docs/accuracy.md. */
class ShelfStudy {
    private static final int SHOPS = Integer.getInteger("shops", 60);

    @Test
    @Tag("study")
    void playsRandomShops() {
        double[][] stages = new double[4][SHOPS];
        int[] held = new int[2];
        int[] stated = new int[2];
        for (int i = 0; i < SHOPS; i++) {
            HiddenShop shop = new HiddenShop(1000 + i);
            Lab truth = shop.hull();
            Target target = Target.of("hull", shop.read(truth));
            double limit = limit(shop, truth);
            List<Chip> chips = new ArrayList<>();
            chips.add(shop.chip("base", Parts.of(Map.of("white", 20.0))));
            Knowledge none = Knowledge.of(shop.shelf(chips));
            Recipe first = best(none, target);
            stages[0][i] = Ciede2000.between(shop.colour(shop.weigh(first.weighed())), truth) - limit;
            count(first, truth, shop, held, stated, 0);
            for (Tint tint : shop.tints()) {
                chips.add(shop.chip("one-" + tint.id(), Parts.of(Map.of("white", 20.0, tint.id(), 0.2))));
            }
            Knowledge one = Knowledge.of(shop.shelf(chips));
            for (int stage = 1; stage < 4; stage++) {
                Recipe recipe = best(one, target);
                Parts real = shop.weigh(recipe.weighed());
                stages[stage][i] = Ciede2000.between(shop.colour(real), truth) - limit;
                count(recipe, truth, shop, held, stated, 1);
                chips.add(new Chip("cup-" + stage, recipe.weighed(), List.of(shop.read(shop.colour(real))),
                        java.util.Optional.empty(), ""));
                one = Knowledge.of(shop.shelf(chips));
            }
        }
        String[] names = {"no tint chip", "one chip per tint", "first cup read", "second cup read"};
        for (int s = 0; s < 4; s++) {
            Arrays.sort(stages[s]);
            System.out.printf(Locale.ROOT, "%-20s median %.2f p90 %.2f%n", names[s], stages[s][SHOPS / 2],
                    stages[s][SHOPS * 9 / 10]);
        }
        System.out.printf(Locale.ROOT, "within90 held: none %.1f %%, chips %.1f %%%n", 100.0 * held[0] / stated[0],
                100.0 * held[1] / stated[1]);
        assertTrue(stages[1][SHOPS / 2] < 1.5);
    }

    private static void count(Recipe recipe, Lab truth, HiddenShop shop, int[] held, int[] stated, int which) {
        stated[which]++;
        double real = Ciede2000.between(shop.colour(recipe.weighed()), truth);
        held[which] += real <= recipe.within90() ? 1 : 0;
    }

    private static Recipe best(Knowledge knowledge, Target target) {
        MatchAnswer answer = new Matcher(knowledge).match(Wish.of(target, 100, 0.01));
        return answer.best();
    }

    /** How near these tints come when everything about them is known. */
    static double limit(HiddenShop shop, Lab truth) {
        return HiddenBest.distance(shop, truth);
    }

}
