package tintwright.fill;

import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.EvaluationResult;
import tintwright.fill.catalyst.CatalystDose;
import tintwright.fill.catalyst.CatalystShare;

/**
 * Nothing but the engine itself and the room that writes files may take a catalyst's bare number: whoever shows one
 * must show the words, which carry basis, limit and caution. The file carries all of them side by side.
 */
@AnalyzeClasses(packages = "tintwright", importOptions = DoNotIncludeTests.class)
class CatalystIsNeverBareTest {
    @ArchTest
    static void onlyTheWordsOfADoseAreShown(JavaClasses classes) {
        EvaluationResult result = noClasses()
                .that()
                .resideOutsideOfPackages("tintwright.fill..", "tintwright.files")
                .should()
                .callMethodWhere(
                        target(owner(type(CatalystDose.class))).and(target(nameMatching("grams|ml|drops|share"))))
                .orShould()
                .callMethodWhere(target(owner(type(CatalystShare.class))).and(target(nameMatching("percent"))))
                .evaluate(classes);
        assertEquals("", String.join("\n", result.getFailureReport().getDetails()));
    }
}
