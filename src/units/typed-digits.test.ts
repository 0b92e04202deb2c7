import { expect, it } from "vitest";
import { latinDigits } from "./typed-digits.ts";

it("a reading typed in the digits of another script is the same reading", () => {
  expect(latinDigits("٠٫٤٧")).toBe("0.47");
  expect(latinDigits("۴k۷")).toBe("4k7");
  expect(latinDigits("३३० OL")).toBe("330 OL");
  expect(latinDigits("0,47 V")).toBe("0,47 V");
});
