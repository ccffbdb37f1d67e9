package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

/** What the program said to one command. */
record Said(int exit, String out, String err) {
    /** The command was carried out. */
    Said done() {
        assertThat(exit).as("exit code; it said:%n%s%s", out, err).isEqualTo(Exit.OK);
        return this;
    }

    /** The command was not carried out: this exit code, these words on the error stream, nothing on the other, no stack trace. */
    Said refused(int code, String... words) {
        assertThat(exit).as("exit code; it said:%n%s%s", out, err).isEqualTo(code);
        assertThat(err).contains(words);
        assertThat(err).doesNotContain("\tat ", "Exception", "java.");
        assertThat(out).isEmpty();
        return this;
    }

    /** No line is wider than a terminal of 80 columns. */
    Said fits() {
        assertThat(out.lines().filter(line -> line.length() > 80)).isEmpty();
        return this;
    }

    List<String> lines() {
        return out.lines().toList();
    }
}
