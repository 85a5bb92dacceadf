package tintwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.module.ModuleDescriptor.Requires;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The app image holds every module of Java that a class of ours names: what is left out fails only where it is used. */
class PackagedModulesTest {
    private static Set<String> packaged() throws Exception {
        Set<String> all = Pattern.compile("requires ([\\w.]+);")
                .matcher(Files.readString(Path.of("src/image/java/module-info.java")))
                .results()
                .map(listed -> listed.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
        all.add("java.base");
        assertTrue(all.size() > 1, "what the program needs stands in the image's module-info.java");
        for (String name : List.copyOf(all)) {
            with(name, all);
        }
        return all;
    }

    private static void with(String name, Set<String> all) {
        ModuleLayer.boot().findModule(name).ifPresent(module -> {
            for (Requires needed : module.getDescriptor().requires()) {
                if (all.add(needed.name())) {
                    with(needed.name(), all);
                }
            }
        });
    }

    @Test
    void everyModuleThatIsNamedIsInTheImage() throws Exception {
        Set<String> packages = new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("tintwright").stream()
                        .flatMap(one -> one.getDirectDependenciesFromSelf().stream())
                        .map(dependency -> dependency.getTargetClass().getBaseComponentType())
                        .map(JavaClass::getPackageName)
                        .collect(Collectors.toSet());
        Set<String> needed = ModuleLayer.boot().modules().stream()
                .filter(module -> module.getPackages().stream().anyMatch(packages::contains))
                .map(Module::getName)
                .collect(Collectors.toCollection(TreeSet::new));
        assertTrue(needed.contains("jdk.httpserver"), "the phone's pages need it: " + needed);
        Set<String> packaged = packaged();
        assertEquals(
                Optional.empty(),
                needed.stream().filter(name -> !packaged.contains(name)).findFirst());
    }
}
