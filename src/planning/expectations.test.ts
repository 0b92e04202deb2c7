import { expect, test } from "vitest";
import { amount } from "./expectations.ts";

test("ohms are said to the tenth that a hand meter shows, larger quantities to three digits", () => {
  expect(amount(0.281, "ohm")).toBe("0.3 ohm");
  expect(amount(0, "ohm")).toBe("0 ohm");
  expect(amount(51.23, "ohm")).toBe("51.2 ohm");
  expect(amount(10_240, "ohm")).toBe("10.2 kohm");
  expect(amount(0.44, "V")).toBe("0.44 V");
});
