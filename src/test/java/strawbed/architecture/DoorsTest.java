package strawbed.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.syntax.elements.ClassesShouldConjunction;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;

/** The rooms and their one-way doors. */
@AnalyzeClasses(packages = "strawbed", importOptions = ImportOption.DoNotIncludeTests.class)
class DoorsTest {
    @ArchTest
    static final ArchRule MEASURE = room("measure").because("quantities know nothing of what is done with them");

    @ArchTest
    static final ArchRule EVENT =
            room("event", "measure").because("facts outlive every screen, report and way of hearing");

    @ArchTest
    static final ArchRule CALF = room("calf", "event", "measure").because("state follows from facts alone");

    @ArchTest
    static final ArchRule CARE =
            room("care", "calf", "event", "measure").because("what is due follows from state and time alone");

    @ArchTest
    static final ArchRule AUDIO = room("audio").because("sound knows nothing of words");

    @ArchTest
    static final ArchRule GRAMMAR =
            room("grammar").because("the reader serves any grammar of the standard, not only ours");

    @ArchTest
    static final ArchRule SPEECH = room("speech", "audio").because("words know nothing of their meaning");

    @ArchTest
    static final ArchRule STATEMENT = room("statement", "grammar", "speech", "event", "measure", "care")
            .because("meaning comes from words and rules, not from the record");

    @ArchTest
    static final ArchRule HEARING = room("hearing", "audio", "speech", "grammar", "statement")
            .because("listening goes on whatever becomes of what was said");

    @ArchTest
    static final ArchRule DIALOG = room("dialog", "statement", "event", "calf", "care", "measure", "grammar")
            .because("the dialog decides and never writes, speaks or shows");

    @ArchTest
    static final ArchRule JOURNAL =
            room("journal", "event", "measure").because("the record keeps facts and judges none");

    @ArchTest
    static final ArchRule REPORT = room("report").because("a page is drawn from words, whoever made them");

    @ArchTest
    static final ArchRule VOICE = room("voice", "audio").because("a voice speaks any text");

    @ArchTest
    static final ArchRule NOTHING_KNOWS_APP = noClasses()
            .that()
            .resideOutsideOfPackage("strawbed.app..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("strawbed.app..")
            .because("the program wires the rooms, and no room the program");

    @ArchTest
    static final ArchRule ONE_ROOM_KNOWS_VOSK =
            only("strawbed.speech.vosk", "org.vosk..", "com.sun.jna..").because("another recogniser may come");

    @ArchTest
    static final ArchRule ONE_ROOM_KNOWS_SQL = only(
                    "strawbed.journal.sqlite", "java.sql..", "org.jdbi..", "org.flywaydb..", "org.sqlite..")
            .because("another database may come");

    @ArchTest
    static final ArchRule ONE_ROOM_KNOWS_PDF = only("strawbed.report.pdf", "org.apache.pdfbox..", "com.google.zxing..")
            .because("paper is only one end");

    @ArchTest
    static final ArchRule ONE_ROOM_KNOWS_THE_VOICE =
            only("strawbed.voice", "com.sun.speech..").because("another voice may come");

    @ArchTest
    static final ArchRule NO_NETWORK = noClasses()
            .should()
            .dependOnClassesThat(new DescribedPredicate<JavaClass>("open a network connection") {
                @Override
                public boolean test(JavaClass type) {
                    return type.getPackageName().startsWith("java.net.http")
                            || type.getPackageName().startsWith("javax.net")
                            || (type.getPackageName().equals("java.net")
                                    && !Set.of("URI", "URL", "URISyntaxException")
                                            .contains(type.getSimpleName()));
                }
            })
            .because("a farm's record stays on the farm");

    @ArchTest
    static final ArchRule TIME_IS_INJECTED = noClasses()
            .that()
            .resideOutsideOfPackage("strawbed.app..")
            .should()
            .callMethodWhere(calls(
                    Set.of(Clock.class, Instant.class, LocalDate.class, LocalDateTime.class),
                    Set.of("now", "systemUTC", "systemDefaultZone", "system")))
            .orShould()
            .callMethodWhere(calls(Set.of(ZoneId.class), Set.of("systemDefault")))
            .orShould()
            .callMethodWhere(calls(Set.of(Locale.class), Set.of("getDefault")))
            .orShould()
            .callMethodWhere(calls(Set.of(System.class), Set.of("getenv", "exit", "currentTimeMillis")))
            .because("tests and replays set the time, the zone and the language");

    @ArchTest
    static final ArchRule STREAMS_ARE_THE_PROGRAMS = noClasses()
            .that()
            .resideOutsideOfPackage("strawbed.app..")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .accessField(System.class, "in")
            .because("a room that prints cannot be tested or shown elsewhere");

    @ArchTest
    static final ArchRule NO_CYCLES =
            slices().matching("strawbed.(*)..").should().beFreeOfCycles().because("the doors open one way");

    @ArchTest
    static final ArchRule NULLS_ARE_MARKED = classes()
            .that()
            .haveSimpleName("package-info")
            .should()
            .beAnnotatedWith(NullMarked.class)
            .because("the build checks for null only where it is told to");

    private static ClassesShouldConjunction room(String name, String... doors) {
        String[] allowed = Stream.concat(Stream.of(name), Arrays.stream(doors))
                .map(room -> "strawbed." + room + "..")
                .toArray(String[]::new);
        return noClasses()
                .that()
                .resideInAPackage("strawbed." + name + "..")
                .should()
                .dependOnClassesThat(JavaClass.Predicates.resideInAPackage("strawbed..")
                        .and(DescribedPredicate.not(JavaClass.Predicates.resideInAnyPackage(allowed))));
    }

    private static ClassesShouldConjunction only(String room, String... libraries) {
        return noClasses()
                .that()
                .resideOutsideOfPackage(room)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(libraries);
    }

    private static DescribedPredicate<JavaAccess<?>> calls(Set<Class<?>> owners, Set<String> methods) {
        return new DescribedPredicate<>("ask the system by " + methods) {
            @Override
            public boolean test(JavaAccess<?> access) {
                return owners.stream().anyMatch(owner -> access.getTargetOwner().isEquivalentTo(owner))
                        && methods.contains(access.getTarget().getName())
                        && !(access.getTarget().getName().equals("now")
                                && access.getTarget().getFullName().contains("Clock)"));
            }
        };
    }
}
