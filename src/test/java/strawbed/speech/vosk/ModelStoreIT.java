package strawbed.speech.vosk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ModelStoreIT {
    private static final String PREFIX = "/speech-model/model-en-us";

    @TempDir
    Path folder;

    private final Map<String, String> packed = new LinkedHashMap<>();
    private Path target;

    @BeforeEach
    void pack() {
        target = folder.resolve("data").resolve("speech-model").resolve("v1");
        packed.put("files.txt", "uuid\nam/final.mdl\n");
        packed.put("uuid", "v1\n");
        packed.put("am/final.mdl", "weights");
    }

    /** What is packed, as resources in a jar. */
    private Function<String, @Nullable URL> jar() throws IOException {
        Path jar = Files.createTempFile(folder, "packed", ".jar");
        try (OutputStream out = Files.newOutputStream(jar);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, String> file : packed.entrySet()) {
                zip.putNextEntry(new ZipEntry(PREFIX.substring(1) + "/" + file.getKey()));
                zip.write(file.getValue().getBytes(StandardCharsets.UTF_8));
            }
        }
        return name -> {
            try {
                return packed.containsKey(name.substring(PREFIX.length() + 1))
                        ? URI.create("jar:" + jar.toUri() + "!" + name).toURL()
                        : null;
            } catch (IOException e) {
                throw new AssertionError(e);
            }
        };
    }

    private ModelStore store() throws IOException {
        return new ModelStore(Optional.empty(), folder.resolve("data"), PREFIX, jar());
    }

    private void assertFails(String... words) {
        assertThatThrownBy(() -> store().directory())
                .isInstanceOf(ModelException.class)
                .hasMessageContainingAll(words)
                .hasMessageEndingWith(".");
        assertThat(Files.exists(target)).isFalse();
    }

    @Test
    void a_packed_model_is_unpacked_once() throws IOException {
        assertThat(store().directory()).isEqualTo(target);
        assertThat(target.resolve("am/final.mdl")).hasContent("weights");
        assertThat(target.resolveSibling("v1.part")).doesNotExist();
        packed.put("am/final.mdl", "others");
        store().directory();
        assertThat(target.resolve("am/final.mdl")).hasContent("weights");
    }

    @Test
    void another_version_is_unpacked_beside_the_last() throws IOException {
        store().directory();
        packed.put("uuid", "v2");
        assertThat(store().directory()).isEqualTo(target.resolveSibling("v2"));
        assertThat(target).isDirectory();
    }

    @Test
    void an_interrupted_unpacking_is_begun_again() throws IOException {
        Files.createDirectories(target.resolveSibling("v1.part").resolve("am"));
        Files.writeString(target.resolveSibling("v1.part").resolve("am").resolve("final.mdl"), "wei");
        Files.createDirectories(target.resolve("am"));
        Files.writeString(target.resolve("am").resolve("rest"), "from a copy without its mark");
        assertThat(store().directory()).isEqualTo(target);
        assertThat(target.resolve("am/final.mdl")).hasContent("weights");
        assertThat(target.resolve("am/rest")).doesNotExist();
    }

    @Test
    void a_name_that_leaves_the_folder_is_refused() {
        packed.put("files.txt", "uuid\n../../../escaped\n");
        packed.put("../../../escaped", "x");
        assertFails("outside its folder: ../../../escaped");
        packed.put("files.txt", "/escaped\n");
        assertFails("outside its folder: /escaped");
        packed.put("uuid", "..");
        assertFails("version \"..\" is damaged");
    }

    @Test
    void a_file_that_is_listed_and_missing_is_named() {
        packed.remove("am/final.mdl");
        assertFails("am/final.mdl is missing", "install the program again");
    }

    @Test
    void a_data_folder_that_cannot_be_written_is_named() throws IOException {
        Files.writeString(folder.resolve("data"), "a file in the way");
        assertFails("cannot be unpacked into", folder.resolve("data").toString(), "100 MB");
    }

    @Test
    void a_model_that_is_set_is_used_and_its_folder_must_be_there() {
        assertThat(new ModelStore(Optional.of(folder), folder, PREFIX).directory())
                .isEqualTo(folder);
        Path missing = folder.resolve("missing");
        assertThatThrownBy(() -> new ModelStore(Optional.of(missing), folder, PREFIX).directory())
                .isInstanceOf(ModelException.class)
                .hasMessageContaining(missing.toString());
    }

    @Test
    void a_program_without_a_model_says_so() {
        assertThatThrownBy(() -> new ModelStore(Optional.empty(), folder, "/no-model").directory())
                .isInstanceOf(ModelException.class)
                .hasMessageContaining("set the path of one in the settings");
    }

    @Test
    void the_programs_own_model_is_whole() {
        Path directory = new ModelStore(Optional.empty(), folder, PREFIX).directory();
        VoskModel.load(directory).close();
        assertThat(directory.resolve("conf/model.conf"))
                .as("the build's settings")
                .content()
                .containsOnlyOnce("--lattice-beam=5.0")
                .containsOnlyOnce("--max-mem=2000000")
                .containsOnlyOnce("--endpoint.rule5.min-utterance-length=1000000");
        assertThat(directory.resolve("uuid"))
                .as("a version that counts these settings")
                .content()
                .endsWith(".2");
    }
}
