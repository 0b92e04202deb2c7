import { expect, it } from "vitest";
import { amountTyped } from "./amount-typed.ts";

it("an amount is read as typed: with a point, a comma, or in Arabic digits with their own sign", () => {
  for (const text of ["139.50", " 139,50 ", "١٣٩٫٥٠", "١٣٩.٥"]) expect(amountTyped(text), text).toBe(139.5);
  expect(amountTyped("١٤٠")).toBe(140);
});

it("nothing typed is no amount, and what is none is said to be wrong", () => {
  expect(amountTyped("  ")).toBeNull();
  for (const text of ["1.2.3", "-4", "four", "1 000"]) expect(amountTyped(text), text).toBe("wrong");
});
