package org.capwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.capwright.units.UnitSystem;
import org.junit.jupiter.api.Test;

class InputsTest {
    @Test
    void everyDeclaredConstantIsListed() throws IllegalAccessException {
        List<Input<?>> declared = declared();

        assertThat(declared).hasSizeGreaterThan(50);
        assertThat(Inputs.all()).containsExactlyInAnyOrderElementsOf(declared);
    }

    @Test
    void pathsAreUniqueAndFound() {
        assertThat(Inputs.all()).extracting(Input::path).doesNotHaveDuplicates();
        assertThat(Inputs.GROUPS.stream().mapToInt(group -> group.inputs().size()).sum()).isEqualTo(Inputs.all().size());
        for (Input<?> input : Inputs.all()) {
            assertThat(Inputs.at(input.path().replace("[]", "[7]"))).map(Input::label).contains(input.label());
        }
    }

    @Test
    void everyDefaultAndBothEndsOfEveryRangeAreInRange() {
        Inputs.all().forEach(InputsTest::checkTexts);
    }

    @Test
    void everyInputHasLabelAndHelp() {
        assertThat(Inputs.all()).allSatisfy(input -> {
            assertThat(input.label()).isNotBlank();
            assertThat(input.help()).as(input.path()).endsWith(".").hasSizeGreaterThan(50);
        });
    }

    private static <T> void checkTexts(Input<T> input) {
        for (Optional<String> text : List.of(input.least(), input.most(), input.fallback())) {
            text.filter(typed -> !(input.mayBeAuto() && typed.equals(Input.AUTO))).ifPresent(typed ->
                    assertThat(Ranges.contains(input, input.read(typed, UnitSystem.INCH))).as(input.path() + " " + typed).isTrue());
        }
    }

    private static List<Input<?>> declared() throws IllegalAccessException {
        List<Input<?>> declared = new ArrayList<>();
        for (JavaClass type : new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("org.capwright.job")) {
            if (type.getSimpleName().endsWith("Inputs")) {
                addConstants(type.reflect(), declared);
            }
        }
        return declared;
    }

    private static void addConstants(Class<?> type, List<Input<?>> declared) throws IllegalAccessException {
        for (Field field : type.getDeclaredFields()) {
            if (Modifier.isStatic(field.getModifiers()) && Modifier.isPublic(field.getModifiers())) {
                Object constant = field.get(null);
                if (constant instanceof Input<?> input) {
                    declared.add(input);
                } else if (constant instanceof InputSet set) {
                    declared.addAll(set.inputs());
                }
            }
        }
    }
}
