import { expect, test } from "vitest";
import { plain, said } from "../messages/said.ts";
import { andList, brief, inOneBreath, orList, type SpokenFault } from "./faults-in-words.ts";

function fault(part: string | null, words: string): SpokenFault {
  return { part, words, name: plain(words) };
}

function shorted(part: string, where: string | null = null): SpokenFault {
  return fault(part, said`${where === null ? part : said`${part} ${where}`} ${said`shorted`}`);
}

const told = (...given: Parameters<typeof inOneBreath>) => inOneBreath(...given).map(plain);

test("faults of one part that differ in one place are said in one breath", () => {
  const upper = (phase: string) => shorted("M1", said`upper switch of phase ${phase}`);
  expect(told([upper("U"), shorted("C5"), upper("W"), upper("V")])).toEqual([
    "M1 upper switch of phase U, W or V shorted",
    "C5 shorted",
  ]);
  const toSource = (how: string) => fault("U2", said`${said`${"U2"} ${said`VCC to source`}`} ${how}`);
  expect(told([toSource(said`shorted`), toSource(said`leaky`)])).toEqual([
    "U2 VCC to source shorted or leaky",
  ]);
});

test("parts that fail alike are named together", () => {
  const faults = [shorted("C5"), shorted("Q1", said`collector to emitter`), shorted("C6")];
  expect(told(faults, andList)).toEqual(["C5 and C6 shorted", "Q1 collector to emitter shorted"]);
});

test("what differs in more than one place is said apart", () => {
  const faults = [
    shorted("M1", said`upper switch of phase ${"U"}`),
    fault("M1", said`${said`${"M1"} ${"vbu"}`} ${said`open`}`),
  ];
  expect(told(faults)).toEqual(["M1 upper switch of phase U shorted", "M1 vbu open"]);
});

test("dirt is said pair by pair", () => {
  const dirt = (one: string, other: string) => fault(null, said`dirt between ${one} and ${other}`);
  expect(told([dirt("A", "B"), dirt("A", "C")])).toEqual(["dirt between A and B", "dirt between A and C"]);
});

test("lists end in or, where one of them holds, and in and, where all do", () => {
  expect(plain(orList(["a", "b", "c"]))).toBe("a, b or c");
  expect(plain(andList(["a", "b"]))).toBe("a and b");
  expect(andList(["a"])).toBe("a");
});

test("no more is named than is read at a glance, and the first always", () => {
  const long = (net: string) =>
    `dirt between lower end of phase ${net} at the module and bootstrap of phase ${net}`;
  const faults = ["U", "W", "V"].map((net) => fault(null, long(net)));
  expect(brief(faults)).toEqual([long("U"), long("W")]);
  expect(brief([fault(null, "x".repeat(200))])).toHaveLength(1);
});
