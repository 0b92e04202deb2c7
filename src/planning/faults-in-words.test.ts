import { expect, test } from "vitest";
import { andList, brief, inOneBreath, orList } from "./faults-in-words.ts";

test("faults of one part that differ in one place are said in one breath", () => {
  expect(
    inOneBreath([
      "M1 upper switch of phase U shorted",
      "C5 shorted",
      "M1 upper switch of phase W shorted",
      "M1 upper switch of phase V shorted",
    ]),
  ).toEqual(["M1 upper switch of phase U, W or V shorted", "C5 shorted"]);
  expect(inOneBreath(["U2 VCC to source shorted", "U2 VCC to source leaky"])).toEqual([
    "U2 VCC to source shorted or leaky",
  ]);
});

test("parts that fail alike are named together", () => {
  expect(inOneBreath(["C5 shorted", "Q1 collector to emitter shorted", "C6 shorted"], "and")).toEqual([
    "C5 and C6 shorted",
    "Q1 collector to emitter shorted",
  ]);
});

test("dirt is said pair by pair", () => {
  const dirt = ["dirt between A and B", "dirt between A and C"];
  expect(inOneBreath(dirt)).toEqual(dirt);
});

test("lists end in or, where one of them holds, and in and, where all do", () => {
  expect(orList(["a", "b", "c"])).toBe("a, b or c");
  expect(andList(["a", "b"])).toBe("a and b");
  expect(andList(["a"])).toBe("a");
});

test("no more is named than is read at a glance, and the first always", () => {
  const long = (net: string) =>
    `dirt between lower end of phase ${net} at the module and bootstrap of phase ${net}`;
  expect(brief(["U", "V", "W"].map(long))).toEqual([long("U"), long("V")]);
  expect(brief(["x".repeat(200)])).toHaveLength(1);
});
