import { expect, test } from "vitest";
import { bleedSeconds } from "../board/stored-charge.ts";
import { dischargeResistor, keptResistor } from "./discharge-resistor.ts";

/** trade notes, computed there: 385 V to 10 V */
const BUS = 3 * 470e-6;

test.each([
  [2200, 11, 67],
  [4700, 24, 32],
  [10_000, 52, 15],
])(
  "three 470 uF at 385 V through %i ohm are below 10 V in %i s, with %i W at first",
  (ohms, seconds, watts) => {
    const found = dischargeResistor(BUS, 385, [`resistor-${ohms}`]);
    expect(found).toMatchObject({ ohms, own: true });
    expect(Math.round(found.peakWatts)).toBe(watts);
    expect(Math.abs(found.seconds - seconds)).toBeLessThan(0.6);
  },
);

test.each([
  [680e-6, 50],
  [BUS, 104],
  [3 * 680e-6, 151],
])("%f F at 385 V hold %i J", (farads, joules) => {
  expect(Math.abs(dischargeResistor(farads, 385).joules - joules)).toBeLessThan(0.6);
});

test("of what the bench has, the quickest that bears its first peak; what would burn or take for ever is left in the drawer", () => {
  const has = (...words: readonly string[]) => dischargeResistor(BUS, 385, words);
  expect(has("resistor-10000", "resistor-4700")).toMatchObject({ ohms: 4700, watts: 10, own: true });
  expect(has("resistor-470", "resistor-10000")).toMatchObject({ ohms: 10_000, own: true });
  expect(has("resistor-1000-25w")).toMatchObject({ ohms: 1000, watts: 25, own: true });
  expect(has("resistor-2200-1w", "resistor-200000")).toMatchObject({ ohms: 2200, watts: 10, own: false });
  expect(has("lamp-100")).toMatchObject({ ohms: 2200, own: false });
});

test("200 kohm, as one article advises, would take 17 minutes", () => {
  expect(bleedSeconds(385, 10, 200_000, BUS) / 60).toBeCloseTo(17, 0);
});

test("an equipment word names ohms, and watts where they are not the usual ten", () => {
  expect(keptResistor("resistor-4700")).toEqual({ ohms: 4700, watts: 10 });
  expect(keptResistor("resistor-4700-25w")).toEqual({ ohms: 4700, watts: 25 });
  for (const word of ["resistor-0", "resistor-4k7", "resistor-", "resistor-4700-w", "lamp-100"])
    expect(keptResistor(word)).toBeNull();
});

test("a 560 V bus takes 4.7 kohm, since 2.2 kohm would see 143 W", () => {
  expect(dischargeResistor(680e-6, 560).ohms).toBe(4700);
});

test("what is already below 10 V needs no time", () => {
  expect(dischargeResistor(1e-3, 8).seconds).toBe(0);
});
