package org.stillrail.sweepfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class NumberColumnsTest {

    @Test
    void readsATraceWithAPreamble() {
        NumberColumns read = NumberColumns.read(bytes("Model,Invented\nBandwidth,20 MHz\nTime (s),Ch 1 (V)\n-1e-6,0.001\n0,0.002\n1e-6,-0.003\n"), 2);
        assertThat(read.columns().get(0)).containsExactly(-1e-6, 0, 1e-6);
        assertThat(read.columns().get(1)).containsExactly(0.001, 0.002, -0.003);
        assertThat(read.headings()).containsExactly("Time (s)", "Ch 1 (V)");
        assertThat(read.firstLine()).isEqualTo(4);
    }

    @Test
    void readsDecimalCommasBetweenSemicolons() {
        NumberColumns read = NumberColumns.read(bytes("f;dB;Grad\n100;40,5;-90\n1000;20,25;-91,5\n"), 3);
        assertThat(read.columns().get(1)).containsExactly(40.5, 20.25);
    }

    @Test
    void namesTheLineThatIsNoNumber() {
        assertThatThrownBy(() -> NumberColumns.read(bytes("1,2\n3,4\nfive,6\n"), 2)).hasMessageStartingWith("Line 3");
        assertThatThrownBy(() -> NumberColumns.read(bytes("only words\n"), 2)).isInstanceOf(SweepFileException.class);
    }

    @Property(tries = 2000)
    void nothingButItsOwnErrorComesOut(@ForAll byte[] bytes) {
        try {
            assertThat(NumberColumns.read(bytes, 2).rows()).isPositive();
        } catch (SweepFileException e) {
            assertThat(e.getMessage()).isNotBlank();
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
