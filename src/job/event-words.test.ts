import { expect, it } from "vitest";
import { readingWords } from "./event-words.ts";

it("a reading under power is said in its own unit", () => {
  expect(readingWords({ do: "measure", mode: "dcv", red: "PBUS", black: "NBUS", reading: 322 })).toBe(
    "322 V",
  );
  expect(readingWords({ do: "measure", mode: "temperature", part: "U3", reading: 54 })).toBe("54 degC");
  expect(readingWords({ do: "measure", mode: "amps", red: "A", black: "B", reading: 0.2 })).toBe("0.200 A");
});

it("a cold reading is said as the display shows it", () => {
  expect(readingWords({ do: "measure", mode: "diode", red: "A", black: "B", reading: 0.47 })).toBe("0.470 V");
  expect(readingWords({ do: "measure", mode: "ohms", red: "A", black: "B", reading: "OL" })).toBe("OL");
});
