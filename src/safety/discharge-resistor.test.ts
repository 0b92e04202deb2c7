import { expect, test } from "vitest";
import { dischargeResistor } from "./discharge-resistor.ts";

test("three 470 uF at 385 V through 2.2 kohm are below 10 V in 11 s, with 67 W at first and 104 J (computed in the trade notes)", () => {
  const found = dischargeResistor(3 * 470e-6, 385);
  expect(found.ohms).toBe(2200);
  expect(found.seconds).toBeCloseTo(11.3, 1);
  expect(found.peakWatts).toBeCloseTo(67.4, 1);
  expect(found.joules).toBeCloseTo(104.5, 1);
});

test("a 560 V bus takes 4.7 kohm, since 2.2 kohm would see 143 W", () => {
  expect(dischargeResistor(680e-6, 560).ohms).toBe(4700);
});

test("what is already below 10 V needs no time", () => {
  expect(dischargeResistor(1e-3, 8).seconds).toBe(0);
});
