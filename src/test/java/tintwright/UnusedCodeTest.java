package tintwright;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Nothing stands in the program that the program does not use: no class that nothing names, no method that nothing
 * calls but itself, its tests or other code that nothing calls. What a library calls (an override, an annotated
 * method, a record's parts, main) counts as used.
 */
@AnalyzeClasses(packages = "tintwright", importOptions = DoNotIncludeTests.class)
class UnusedCodeTest {
    /** Tests look at the inside of a thing by these, or make by them what the program itself only reads. */
    private static final Set<String> LOOKED_AT_BY_TESTS = Set.of(
            "Adaptation.responses()",
            "Area.overlaps(Area)",
            "CurvePrior.deviation(int)",
            "Desk.chipPhoto()",
            "Desk.cup()",
            "Desk.hull()",
            "Desk.shelf()",
            "Desk.stations()",
            "Desk.view()",
            "Ledger.all()",
            "RgbProfile.name()",
            "SplitSwatch.chosenLight()");

    /** The way back from a file or a code that the program reads or writes: tests hold both against each other. */
    private static final Set<String> WAYS_BACK = Set.of(
            "CardFile.text(ReferenceCard)",
            "ChipsFile.read(Path)",
            "ChipsFile.text(List)",
            "FillJobFile.text(FillOrder)",
            "SettingsFile.read(Path)",
            "RgbSpace.decode(double, double, double)");

    /** The short form of a longer one, for tests that have nothing to say of the rest. */
    private static final Set<String> SHORT_FORMS = Set.of(
            "CupBench.weigh(Instant, String, double)",
            "CupModel.read(String, String, String, Viewing, FilmState)",
            "FillModel.add(String, RepairKind, Map, Lie, String, UnitSystem)",
            "Knowledge.with(List)");

    /** What the log keeps and brings in and no face shows yet: tests hold that nothing is lost that others wrote. */
    private static final Set<String> THE_LOG_OF_MANY = Set.of(
            "Entry.apart()",
            "LogBook.history(UUID)",
            "LogBook.refresh()",
            "LogFolder.names(Trouble)",
            "LogStore.refresh()");

    private static final Set<String> KEPT = Stream.of(LOOKED_AT_BY_TESTS, WAYS_BACK, SHORT_FORMS, THE_LOG_OF_MANY)
            .flatMap(Set::stream)
            .collect(Collectors.toUnmodifiableSet());

    @ArchTest
    static void nothingStandsThereUnused(JavaClasses classes) {
        Set<String> unused = unused(classes);
        Set<String> keptForNothing = new TreeSet<>(KEPT);
        keptForNothing.removeAll(unused);
        unused.removeAll(KEPT);
        // A description of a room is compiled to a class of its own by some builds.
        unused.remove("package-info");
        assertEquals(Set.of(), unused, "code of main that nothing in main uses");
        assertEquals(Set.of(), keptForNothing, "kept code that is used or gone: its reason goes as well");
    }

    @Test
    void aPlantedFaultIsFound() throws ClassNotFoundException {
        // Nobody's name is spelt, for a literal of its class would be a use.
        JavaClasses planted = new ClassFileImporter()
                .importClasses(
                        UnusedCodeTest.class,
                        Planted.class,
                        Shape.class,
                        Round.class,
                        Class.forName(UnusedCodeTest.class.getName() + "$Nobody"));
        Set<String> found = unused(planted);
        found.removeIf(name -> !name.contains("$"));
        assertEquals(
                Set.of(
                        "UnusedCodeTest$Nobody",
                        "UnusedCodeTest$Planted.calledByItselfOnly(int)",
                        "UnusedCodeTest$Planted.calledByTheDeadOnly()",
                        "UnusedCodeTest$Shape.perimeter()",
                        "UnusedCodeTest$Round.perimeter()"),
                found);
        assertEquals(3, Planted.called(new Round(3)));
    }

    /** @return names of classes nothing names, as {@code Class}, and of methods nothing calls, with their types */
    private static Set<String> unused(JavaClasses classes) {
        Set<String> found = new TreeSet<>();
        Map<JavaMethod, Set<JavaMethod>> families = new HashMap<>();
        for (JavaClass type : classes) {
            if (isBarren(type)) {
                found.add(nameOf(type));
            } else {
                type.getMethods().stream().filter(m -> !isForOthers(m)).forEach(m -> families.put(m, family(m)));
            }
        }
        Map<JavaMethod, Set<JavaCodeUnit>> callers = new HashMap<>();
        families.values().stream().flatMap(Set::stream).distinct().forEach(m -> callers.put(m, callersOf(m)));
        Set<JavaCodeUnit> dead = new HashSet<>();
        boolean more = true;
        while (more) {
            List<JavaMethod> falling = families.entrySet().stream()
                    .filter(e -> e.getValue().stream()
                            .flatMap(m -> callers.get(m).stream())
                            .allMatch(caller -> e.getValue().contains(caller) || dead.contains(caller)))
                    .map(Map.Entry::getKey)
                    .toList();
            dead.addAll(falling);
            falling.forEach(families::remove);
            more = !falling.isEmpty();
        }
        dead.forEach(method -> found.add(nameOf(method.getOwner()) + "." + method.getName() + "("
                + method.getRawParameterTypes().stream()
                        .map(JavaClass::getSimpleName)
                        .collect(Collectors.joining(", "))
                + ")"));
        return found;
    }

    private static Set<JavaCodeUnit> callersOf(JavaMethod method) {
        return method.getAccessesToSelf().stream().map(JavaAccess::getOrigin).collect(Collectors.toSet());
    }

    /** Nothing but the class itself and those inside it names it, and it cannot be started. */
    private static boolean isBarren(JavaClass type) {
        String inside = type.getName() + "$";
        boolean starts = type.getMethods().stream().anyMatch(m -> m.getName().equals("main"));
        return !starts
                && !type.isAnonymousClass()
                && type.getDirectDependenciesToSelf().stream()
                        .map(dependency -> dependency.getOriginClass().getName())
                        .allMatch(name -> name.equals(type.getName()) || name.startsWith(inside));
    }

    /** Called by the language, by a library through an annotation or an override, or part of a record. */
    private static boolean isForOthers(JavaMethod method) {
        JavaClass owner = method.getOwner();
        Set<JavaModifier> modifiers = method.getModifiers();
        return modifiers.contains(JavaModifier.SYNTHETIC)
                || modifiers.contains(JavaModifier.BRIDGE)
                || !method.getAnnotations().isEmpty()
                || method.getName().equals("main")
                || owner.isEnum()
                        && (method.getName().equals("values")
                                || method.getName().equals("valueOf"))
                || owner.isRecord() && owner.tryGetField(method.getName()).isPresent() && arity(method) == 0
                || above(method).stream().anyMatch(m -> !m.getOwner().getName().startsWith("tintwright"));
    }

    /** The method, what it overrides and what overrides it: a call of one may reach or need the other. */
    private static Set<JavaMethod> family(JavaMethod method) {
        Set<JavaMethod> family = new HashSet<>(above(method));
        family.add(method);
        for (JavaClass sub : method.getOwner().getAllSubclasses()) {
            sub.getMethods().stream().filter(m -> isSame(m, method)).forEach(family::add);
        }
        return family;
    }

    private static List<JavaMethod> above(JavaMethod method) {
        List<JavaMethod> above = new ArrayList<>();
        if (!method.getModifiers().contains(JavaModifier.STATIC)) {
            Set<JavaClass> supers = new HashSet<>(method.getOwner().getAllRawSuperclasses());
            supers.addAll(method.getOwner().getAllRawInterfaces());
            for (JavaClass up : supers) {
                up.getMethods().stream().filter(m -> isSame(m, method)).forEach(above::add);
            }
        }
        return above;
    }

    /** By name and number of values: type parameters hide which override is meant. */
    private static boolean isSame(JavaMethod one, JavaMethod other) {
        return one.getName().equals(other.getName()) && arity(one) == arity(other);
    }

    private static int arity(JavaMethod method) {
        return method.getRawParameterTypes().size();
    }

    private static String nameOf(JavaClass type) {
        return type.getName().substring(type.getName().lastIndexOf('.') + 1);
    }

    @SuppressWarnings("UnusedMethod")
    private interface Shape {
        int area();

        int perimeter();
    }

    private record Round(int radius) implements Shape {
        @Override
        public int area() {
            return radius;
        }

        @Override
        public int perimeter() {
            return radius + radius;
        }
    }

    private static final class Nobody {}

    private static final class Planted {
        static int called(Shape shape) {
            return shape.area();
        }

        static int calledByItselfOnly(int depth) {
            return depth == 0 ? calledByTheDeadOnly() : calledByItselfOnly(depth - 1);
        }

        static int calledByTheDeadOnly() {
            return 0;
        }
    }
}
