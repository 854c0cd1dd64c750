package org.honorsdue.reading.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.honorsdue.reading.ReadAs;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected readings: common practice, no published source. The units are invented. */
@DisplayName("Orders as cited")
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class OrdersTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            GO 33 WD 45                               | GO 33 WD 1945
            WD GO 33/45                               | GO 33 WD 1945
            WDGO 33 45                                | GO 33 WDGO 1945
            WD GO #40 45                              | GO 40 WD 1945
            GO 33 & 40 WD 45                          | GO 33 WD 1945, GO 40 WD 1945
            WD GO 33 & 40 45                          | GO 33 WD 1945, GO 40 WD 1945
            GO 33/40 WD 45                            | GO 33 WD 1945, GO 40 WD 1945
            WD GO 33/45 & 40/45                       | GO 33 WD 1945, GO 40 WD 1945
            GO 33 WD 45 40 WD 45                      | GO 33 WD 1945, GO 40 WD 1945
            GO 12 Hq 999 Inf 44                       | GO 12 Hq 999 Inf 1944
            GO 12 Hq 44 Inf Div 45                    | GO 12 Hq 44 Inf Div 1945
            GO 12 44 Inf Div 45                       | GO 12 44 Inf Div 1945
            GO 102, 9th Inf Div, 44                   | GO 102 9th Inf Div 1944
            GO 19, Fifteenth AF, 3 Jan 45             | GO 19 Fifteenth AF 1945
            GO 12 42d Gen Hosp 44                     | GO 12 42d Gen Hosp 1944
            GO 40 Hq 3 Inf Div dtd 2 Feb 44           | GO 40 Hq 3 Inf Div 1944
            GO 231 Hq 3 Bomb Div 44                   | GO 231 Hq 3 Bomb Div 1944
            SEC IV WD CIR 333 43                      | CIR 333 WD 1943
            Par 3 SO 66 Hq 999 FA Bn                  | SO 66 Hq 999 FA Bn -
            Hq 7th Army GO 12 44                      | GO 12 Hq 7th Army 1944
            GO 40/44 3RD INF DIV                      | GO 40 3RD INF DIV 1944
            G.O. #24 Hq 45th Gen Hosp 29 Feb 44       | GO 24 Hq 45th Gen Hosp 1944
            GO lO HQ 999 INF 44                       | GO 10 HQ 999 INF 1944
            """)
    void are_read_in_every_style(String typed, String expected) {
        var orders = ReadAs.entry(Entry.DECORATIONS_AND_CITATIONS, "Purple Heart " + typed)
                .orders();
        assertThat(orders.stream()
                        .map(order -> "%s %s %s %s"
                                .formatted(
                                        order.type().orElse("-"),
                                        order.number().isPresent()
                                                ? order.number().getAsInt()
                                                : "-",
                                        order.headquarters().orElse("-"),
                                        order.year().isPresent() ? order.year().getAsInt() : "-"))
                        .collect(Collectors.joining(", ")))
                .isEqualTo(expected);
    }
}
