package strawbed.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleNameContaining;
import static com.tngtech.archunit.lang.conditions.ArchPredicates.are;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaAccess.Predicates;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.net.URL;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Date;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;

/** Which room may know which, which library lives where, and what only the program itself may touch. */
@AnalyzeClasses(packages = "strawbed", importOptions = ImportOption.DoNotIncludeTests.class)
class DoorsTest {
    @ArchTest
    static final ArchRule measure_knows_no_other_room = door("measure").because("an amount means the same everywhere");

    @ArchTest
    static final ArchRule event_knows_amounts_only =
            door("event", "measure").because("facts stay when the ways to say and to show them change");

    @ArchTest
    static final ArchRule calf_is_folded_from_events =
            door("calf", "event", "measure").because("a calf is what its events say");

    @ArchTest
    static final ArchRule the_protocol_is_a_fact_like_others =
            door("protocol", "event", "measure").because("what a farm set is in its record, not in the air");

    @ArchTest
    static final ArchRule the_protocol_does_not_know_its_file = noClasses()
            .that()
            .resideInAPackage("strawbed.protocol")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("strawbed.protocol.file..")
            .because("what a farm set holds wherever it was written");

    @ArchTest
    static final ArchRule the_protocols_file_is_read_by_the_program = noClasses()
            .that()
            .resideOutsideOfPackages("strawbed.protocol.file..", "strawbed.app..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("strawbed.protocol.file..")
            .because("care goes by what is in the record, and a file is only what the farm wants next");

    @ArchTest
    static final ArchRule care_looks_at_calves = door("care", "calf", "protocol", "event", "measure")
            .because("the trade's rules are about calves, not about speech");

    @ArchTest
    static final ArchRule audio_knows_no_other_room = door("audio").because("sound has no meaning yet");

    @ArchTest
    static final ArchRule grammar_knows_no_other_room =
            door("grammar").because("a grammar can be of anything, and is swapped with the farm");

    @ArchTest
    static final ArchRule what_sounds_alike_is_told_of_any_grammar =
            door("alike", "grammar").because("how words sound is given to it, and it does not matter by whom");

    @ArchTest
    static final ArchRule speech_knows_sound_only =
            door("speech", "audio").because("words come from sound, and mean nothing yet");

    @ArchTest
    static final ArchRule voice_knows_sound_only = door("voice", "audio").because("it reads out any text");

    @ArchTest
    static final ArchRule statement_reads_words_by_the_grammar = door(
                    "statement", "grammar", "speech", "event", "measure", "care")
            .because("meaning does not depend on where the sound or the record is");

    @ArchTest
    static final ArchRule entry_makes_statements_press_by_press = door("entry", "statement", "event", "measure")
            .because("what buttons can say does not depend on a screen, on words or on the record");

    @ArchTest
    static final ArchRule hearing_joins_sound_and_statements =
            door("hearing", "audio", "speech", "grammar", "statement").because("listening must not write");

    @ArchTest
    static final ArchRule dialog_decides_and_does_nothing = door(
                    "dialog", "statement", "event", "calf", "care", "measure")
            .because("what is confirmed is decided without a microphone, a disk or words");

    @ArchTest
    static final ArchRule journal_keeps_events =
            door("journal", "event", "measure").because("the record outlives the program that wrote it");

    @ArchTest
    static final ArchRule exchange_writes_and_reads_what_others_take = door(
                    "exchange", "journal", "care", "calf", "protocol", "event", "measure")
            .because("what is in a file for other programs does not depend on words, paper or the database");

    @ArchTest
    static final ArchRule spreadsheets_live_in_their_room =
            home("strawbed.exchange", "org.apache.commons.csv..").because("another library is another adapter");

    @ArchTest
    static final ArchRule the_crib_sheet_says_what_the_grammar_says = door(
                    "crib", "grammar", "speech", "statement", "text", "report")
            .because("what hangs in the pen does not depend on sound, disk or the farm's calves");

    @ArchTest
    static final ArchRule report_is_given_finished_words =
            door("report").because("a card lays out what it is given and decides nothing");

    @ArchTest
    static final ArchRule account_tells_what_the_record_and_the_rules_say = door(
                    "account", "calf", "care", "protocol", "event", "measure", "text")
            .because("screen, command and paper tell the same of a calf");

    @ArchTest
    static final ArchRule handover_puts_a_shift_into_words = door(
                    "handover", "account", "calf", "care", "event", "journal", "protocol", "report", "text")
            .because("what a shift leaves to the next is decided without paper, disk or command line");

    @ArchTest
    static final ArchRule herd_puts_figures_into_chapters = door("herd", "care", "protocol", "report", "text")
            .because("what the owner reads is decided without paper, disk or command line");

    @ArchTest
    static final ArchRule card_puts_a_calf_into_words = door(
                    "card", "account", "calf", "care", "event", "measure", "protocol", "report", "text")
            .because("what the feeder reads is decided without paper, disk or command line");

    @ArchTest
    static final ArchRule the_station_decides_what_is_shown = door(
                    "station",
                    "account",
                    "calf",
                    "card",
                    "care",
                    "dialog",
                    "entry",
                    "event",
                    "journal",
                    "measure",
                    "protocol",
                    "report",
                    "statement",
                    "text")
            .because("what a key does is decided without a window, a microphone or a disk");

    @ArchTest
    static final ArchRule the_window_paints_what_it_is_given =
            door("window", "station", "report", "statement").because("another toolkit is another window");

    @ArchTest
    static final ArchRule the_toolkit_lives_in_the_window =
            home("strawbed.window", "javax.swing..").because("another toolkit is another adapter");

    @ArchTest
    static final ArchRule content_is_drawn_elsewhere = noClasses()
            .that()
            .resideInAnyPackage("strawbed.handover..", "strawbed.herd..", "strawbed.card..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("strawbed.report.pdf..", "strawbed.report.html..", "strawbed.journal.sqlite..")
            .because("its words are the same on any paper and from any store");

    @ArchTest
    static final ArchRule the_standards_export_knows_the_record_only = door("exchange.ade", "calf", "event", "measure")
            .because("it tells what is on record, and adds no verdict of ours");

    @ArchTest
    static final ArchRule text_words_what_others_decided = noClasses()
            .that()
            .resideInAPackage("strawbed.text..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("strawbed.report..", "strawbed.app..", "strawbed.journal..")
            .because("words do not depend on paper, disk or command line");

    @ArchTest
    static final ArchRule nobody_knows_the_program = noClasses()
            .that()
            .resideOutsideOfPackage("strawbed.app..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("strawbed.app..")
            .because("the program wires the rooms, and they do not know of it");

    @ArchTest
    static final ArchRule rooms_form_no_circle = slices().matching("strawbed.(*)..")
            .should()
            .beFreeOfCycles()
            .because("a room can be understood and tested with those below it alone");

    @ArchTest
    static final ArchRule the_recogniser_lives_in_its_adapter = home(
                    "strawbed.speech.vosk", "org.vosk..", "com.sun.jna..")
            .because("another recogniser is another adapter");

    @ArchTest
    static final ArchRule the_database_lives_in_its_adapter = home(
                    "strawbed.journal.sqlite",
                    "java.sql..",
                    "javax.sql..",
                    "org.jdbi..",
                    "org.flywaydb..",
                    "org.sqlite..")
            .because("another store is another adapter");

    @ArchTest
    static final ArchRule the_file_format_lives_in_its_adapter =
            home("strawbed.protocol.file", "org.tomlj..", "org.antlr..").because("another format is another adapter");

    @ArchTest
    static final ArchRule paper_lives_in_its_adapter = home(
                    "strawbed.report.pdf", "org.apache.fontbox..", "org.apache.xmpbox..", "com.google.zxing..")
            .because("another kind of paper is another adapter");

    @ArchTest
    static final ArchRule finished_pages_are_read_by_the_printing_room_alone = noClasses()
            .that()
            .resideOutsideOfPackages("strawbed.report.pdf..", "strawbed.print..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.apache.pdfbox..")
            .because("a page is made in one room and handed over in another");

    @ArchTest
    static final ArchRule printing_takes_any_page_anywhere =
            door("print").because("a printer does not need to know of calves");

    @ArchTest
    static final ArchRule printers_live_in_their_room = home("strawbed.print", "javax.print..", "java.awt.print..")
            .because("another print system is another adapter");

    @ArchTest
    static final ArchRule the_reading_voice_lives_in_its_room =
            home("strawbed.voice", "com.sun.speech..").because("another voice is another adapter");

    @ArchTest
    static final ArchRule the_command_line_lives_in_the_program =
            home("strawbed.app", "picocli..").because("rooms have no command line");

    @ArchTest
    static final ArchRule json_is_read_where_it_comes_from = noClasses()
            .that()
            .resideOutsideOfPackages(
                    "strawbed.app..", "strawbed.exchange..", "strawbed.journal..", "strawbed.speech.vosk..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("com.fasterxml..")
            .because("events, recogniser results, exports and command output are the only JSON there is");

    @ArchTest
    static final ArchRule only_the_program_touches_its_surroundings = noClasses()
            .that()
            .resideOutsideOfPackage("strawbed.app..")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .accessField(System.class, "in")
            .orShould()
            .callMethodWhere(Predicates.targetOwner(are(ofType(System.class)))
                    .and(named("getenv", "exit", "currentTimeMillis", "console")))
            .orShould()
            .callMethodWhere(Predicates.targetOwner(are(ofType(Runtime.class))).and(named("exit", "halt", "exec")))
            .because("a room that reads its surroundings behaves differently on another machine");

    @ArchTest
    static final ArchRule only_the_program_knows_what_time_and_where_it_is = noClasses()
            .that()
            .resideOutsideOfPackage("strawbed.app..")
            .should()
            .callMethodWhere(Predicates.targetOwner(resideInAPackage("java.time.."))
                    .and(named("now"))
                    .and(readsTheClock()))
            .orShould()
            .callMethodWhere(Predicates.targetOwner(are(ofType(Clock.class)))
                    .and(named("system", "systemUTC", "systemDefaultZone", "tick", "tickMinutes", "tickSeconds")))
            .orShould()
            .callMethodWhere(Predicates.targetOwner(are(ofType(ZoneId.class))).and(named("systemDefault")))
            .orShould()
            .callMethodWhere(Predicates.targetOwner(are(ofType(Locale.class))).and(named("getDefault")))
            .orShould()
            .callMethodWhere(Predicates.targetOwner(are(ofType(TimeZone.class))).and(named("getDefault")))
            .orShould()
            .callConstructor(Date.class)
            .because("time, zone and language are given to a room, so that a test can choose them");

    @ArchTest
    static final ArchRule only_the_microphone_watches_the_machines_stopwatch = noClasses()
            .that()
            .resideOutsideOfPackages("strawbed.app..", "strawbed.audio..")
            .should()
            .callMethodWhere(Predicates.targetOwner(are(ofType(System.class))).and(named("nanoTime")))
            .because("time in a room is the time of the sound, except for a microphone that fell silent");

    @ArchTest
    static final ArchRule nothing_reaches_for_the_network = noClasses()
            .should()
            .dependOnClassesThat(resideInAnyPackage("java.net..", "javax.net..", "java.rmi..")
                    .and(namedNot("java.net.URI", "java.net.URL", "java.net.URISyntaxException"))
                    .or(simpleNameContaining("Socket").or(simpleNameContaining("DatagramChannel"))))
            .orShould()
            .callMethod(URL.class, "openConnection")
            .because("the recorder works where there is no network, and tells nobody");

    @ArchTest
    static final ArchRule rooms_show_no_foreign_types = classes()
            .that()
            .resideOutsideOfPackage("strawbed.app..")
            .and()
            .arePublic()
            .should(new ShowsNoForeignTypes())
            .because("who uses a room must not have to know the library inside");

    @ArchTest
    static final ArchRule every_package_is_checked_for_null =
            classes().should(new LivesInANullMarkedPackage()).because("the null checker looks at marked packages only");

    /** A room that knows the given rooms and no other one. */
    private static ArchRule door(String room, String... others) {
        String[] known = Stream.concat(
                        Stream.of("strawbed." + room + ".."),
                        Arrays.stream(others).map(other -> "strawbed." + other + ".."))
                .toArray(String[]::new);
        return classes()
                .that()
                .resideInAPackage("strawbed." + room + "..")
                .should()
                .onlyDependOnClassesThat(resideOutsideOfPackage("strawbed..").or(resideInAnyPackage(known)));
    }

    /** Libraries that one room alone knows. */
    private static ArchRule home(String room, String... libraries) {
        return noClasses()
                .that()
                .resideOutsideOfPackage(room + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(libraries);
    }

    @ArchTest
    static final ArchRule nothing_goes_to_a_network = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.net.http..", "java.rmi..", "javax.rmi..", "javax.net..", "javax.naming..")
            .orShould()
            .dependOnClassesThat(DescribedPredicate.describe(
                    "of a network",
                    type -> type.getPackageName().startsWith("java.n")
                            && type.getSimpleName().matches(".*(Socket|URLConnection|Inet|Network|Datagram|Proxy).*")))
            .orShould()
            .callMethod(URL.class, "openConnection")
            .because("what is said in the barn stays there");

    @ArchTest
    static final ArchRule addresses_are_opened_for_the_programs_own_files_only = noClasses()
            .that()
            .doNotHaveFullyQualifiedName("strawbed.speech.vosk.ModelStore")
            .should()
            .callMethod(URL.class, "openStream")
            .because("the speech model is read out of the program's own jar, and nothing else has an address");

    @ArchTest
    static final ArchRule nothing_starts_another_program_but_lpstat_with_fixed_words = noClasses()
            .that()
            .doNotHaveFullyQualifiedName("strawbed.print.CupsQueues")
            .should()
            .dependOnClassesThat(ofType(ProcessBuilder.class).or(ofType(Runtime.class)))
            .because("no name or number from a user may reach a shell");

    private static DescribedPredicate<JavaClass> ofType(Class<?> type) {
        return JavaClass.Predicates.type(type);
    }

    private static DescribedPredicate<JavaClass> namedNot(String... names) {
        return DescribedPredicate.describe(
                "other than " + String.join(", ", names),
                type -> !Arrays.asList(names).contains(type.getFullName()));
    }

    private static DescribedPredicate<JavaAccess<?>> named(String... names) {
        return DescribedPredicate.describe(
                "named " + String.join(", ", names),
                access -> Arrays.asList(names).contains(access.getTarget().getName()));
    }

    /** A clock that is handed over is welcome. */
    private static DescribedPredicate<JavaAccess<?>> readsTheClock() {
        return DescribedPredicate.describe(
                "without a clock",
                access -> access.getTarget() instanceof CodeUnitAccessTarget target
                        && target.getRawParameterTypes().stream()
                                .noneMatch(parameter -> parameter.isEquivalentTo(Clock.class)));
    }
}
