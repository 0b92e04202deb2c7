import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plain } from "../messages/said.ts";
import { FrozenMap } from "../units/frozen.ts";
import type { Board } from "./board.ts";
import { KINDS } from "./kinds.ts";
import { parseBoard } from "./parse-board.ts";
import { smallDrive } from "./small-drive.fixture.ts";

type Raw = ReturnType<typeof smallDrive>;

function board(): Board {
  const parsed = parseBoard(smallDrive());
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}

/** The problem of the small drive after `spoil` had its way with it. */
function problemAfter(spoil: (raw: Raw) => void): string {
  const raw = smallDrive();
  spoil(raw);
  const parsed = parseBoard(raw);
  return parsed.ok ? "none" : plain(parsed.problem);
}

function part(ref: string, fields: Record<string, unknown>): (raw: Raw) => void {
  return (raw) => {
    raw.parts[ref] = { ...raw.parts[ref], ...fields };
  };
}

describe("a board file", () => {
  it("is read with every part, its pins, values and defaults", () => {
    const read = board();
    expect(read.parts.get("BR1")).toEqual({
      ref: "BR1",
      kind: "bridge",
      pins: new FrozenMap([
        ["ac1", "L_B"],
        ["ac2", "N_IN"],
        ["plus", "PBUS"],
        ["minus", "NBUS"],
      ]),
      value: { amps: 15, volts: 600 },
      stage: "rectifier",
      role: null,
      price: 2.5,
      minutes: { lift: 3, remove: 6, replace: 10 },
      obtainable: null,
      plugged: false,
      assumed: false,
    });
    expect(read.nets.get("PBUS")).toBe("DC bus +");
    expect(read.nets.get("MID")).toBeNull();
    expect(read.rails[1]).toEqual({
      name: "V5",
      net: "V5",
      volts: 5,
      tolerance: 0.05,
      from: "U2",
      against: null,
    });
    expect(read.points[0]).toEqual({ name: "TP1", net: "PBUS", at: "C1 plus pin", xy: [0.41, 0.22] });
  });

  it("may have a bridging resistor of 0 ohm, and reads -0 as 0", () => {
    const raw = smallDrive();
    part("RS1", { value: { ohms: -0 } })(raw);
    const parsed = parseBoard(raw);
    expect(parsed.ok && Object.is(parsed.value.parts.get("RS1")?.value.ohms, 0)).toBe(true);
  });

  it("cannot be changed once read", () => {
    const read = board();
    expect(Object.isFrozen(read.parts.get("BR1")?.value)).toBe(true);
    expect(() => (read.parts as Map<string, unknown>).set("X", 1)).toThrow("frozen");
    expect(() => (read.nets as Map<string, unknown>).delete("PBUS")).toThrow("frozen");
  });

  it.each<[string, (raw: Raw) => void, string]>([
    [
      "an unknown field of the board",
      (raw) => Object.assign(raw, { rail: {} }),
      'rail: unknown field of a board; did you mean "rails"?',
    ],
    [
      "an unknown value field",
      part("BR1", { value: { ampz: 15 } }),
      'parts.BR1.value.ampz: unknown field of the value of a bridge; did you mean "amps"?',
    ],
    [
      "an unknown kind",
      part("BR1", { kind: "brige" }),
      'parts.BR1.kind: "brige" is not known here; did you mean "bridge"?',
    ],
    [
      "a pin the kind has not",
      part("C3", { pins: { plus: "PBUS", minus: "NBUS", k: "NBUS" } }),
      "parts.C3.pins.k: a capacitor has no such pin; known: plus minus",
    ],
    [
      "a pin left out",
      part("C3", { pins: { plus: "PBUS" } }),
      "parts.C3.pins.minus: is missing; a capacitor needs the pins plus minus",
    ],
    [
      "an impossible net name",
      part("C3", { pins: { plus: "P BUS", minus: "NBUS" } }),
      'parts.C3.pins.plus: "P BUS" is not a name (letters, digits, _ + - only)',
    ],
    [
      "a text for a number",
      part("C3", { value: { farads: "220n" } }),
      'parts.C3.value.farads: expected a number, found "220n"',
    ],
    [
      "1e999",
      part("C3", { value: { farads: Number("1e999") } }),
      "parts.C3.value.farads: expected a number that can be held, found one that is too large",
    ],
    [
      "NaN",
      part("C3", { value: { farads: Number.NaN } }),
      "parts.C3.value.farads: expected a number that can be held, found NaN",
    ],
    [
      "minus zero ohms",
      part("NTC1", { value: { ohms: -0 } }),
      "parts.NTC1.value.ohms: must be above 0, found 0",
    ],
    [
      "a capacitor of no type known",
      part("C3", { value: { type: "foil" } }),
      'parts.C3.value.type: "foil" is not known here; known: electrolytic film ceramic',
    ],
    [
      "a part that is no object",
      (raw) => Object.assign(raw.parts, { C9: [] }),
      "parts.C9: expected an object, found a list of 0",
    ],
    [
      "a reference with a dot",
      (raw) => Object.assign(raw.parts, { "C.9": {} }),
      'parts.C.9: "C.9" is not a reference (letters, digits, _ + - only)',
    ],
    [
      "a rail on a net that is not there",
      (raw) => Object.assign(raw, { rails: { V5: { net: "V55", volts: 5 } } }),
      'rails.V5.net: there is no net "V55"; did you mean "V5"?',
    ],
    [
      "a rail from a part that is not there",
      (raw) => Object.assign(raw, { rails: { V5: { net: "V5", volts: 5, from: "U22" } } }),
      'rails.V5.from: there is no part "U22"; did you mean "U2"?',
    ],
    [
      "a rail that is its own return",
      (raw) => Object.assign(raw, { rails: { V5: { net: "NBUS", volts: 5 } } }),
      'rails.V5.net: "NBUS" is the net this rail is measured against',
    ],
    [
      "a zero that is no net",
      (raw) => Object.assign(raw, { zero: "NBSU" }),
      'zero: there is no net "NBSU"; did you mean "NBUS"?',
    ],
    [
      "a supply at one net",
      (raw) => Object.assign(raw, { supply: { kind: "ac", volts: 230, at: ["L_IN"] } }),
      "supply.at: names 1 nets; two are needed, or three for three phases",
    ],
    [
      "a supply at a net that is not there",
      (raw) => Object.assign(raw, { supply: { kind: "ac", volts: 230, at: ["L_IN", "N-IN"] } }),
      'supply.at[1]: there is no net "N-IN"; did you mean "N_IN"?',
    ],
    [
      "a dc supply with hertz",
      (raw) => Object.assign(raw, { supply: { kind: "dc", volts: 24, hz: 50, at: ["L_IN", "N_IN"] } }),
      "supply.hz: a dc supply has none; leave it out",
    ],
    [
      "a picture place outside the picture",
      (raw) => Object.assign(raw, { points: { TP1: { net: "PBUS", xy: [0.4, 1.2] } } }),
      "points.TP1.xy[1]: must be 1 or less, found 1.2",
    ],
    [
      "another format",
      (raw) => Object.assign(raw, { format: "faultwright-board/2" }),
      'format: expected "faultwright-board/1", found "faultwright-board/2"',
    ],
    [
      "no parts at all",
      (raw) => Object.assign(raw, { parts: null }),
      "parts: expected an object, found null",
    ],
    [
      "a winding on a pin that is not there",
      part("T1", { value: { windings: { pri: { pins: ["1", "9"] } } } }),
      'parts.T1.value.windings.pri.pins: there is no pin "9"; did you mean "1"?',
    ],
    [
      "a transformer pin in no winding",
      part("T1", { value: { windings: { pri: { pins: ["1", "2"] } } } }),
      "parts.T1.pins.3: is in no winding of this transformer",
    ],
    [
      "a floating vcc",
      part("U5", { value: { floating: [["vcc", "vs"]] } }),
      "parts.U5.value.floating: vcc cannot float: a floating pin has no path to vcc or gnd",
    ],
  ])("is refused for %s, in one line that names it", (_, spoil, problem) => {
    expect(problemAfter(spoil)).toBe(problem);
  });

  it.each([null, undefined, 3, "x", [], Number.NaN, true])("is refused when it is %j", (input) => {
    const parsed = parseBoard(input);
    expect(parsed.ok).toBe(false);
    expect(!parsed.ok && plain(parsed.problem)).toContain("expected an object");
  });

  it("may name parts and nets __proto__ and constructor without harm", () => {
    const raw = JSON.parse(
      JSON.stringify(smallDrive()).replaceAll('"CX1"', '"__proto__"').replaceAll('"MID"', '"constructor"'),
    );
    const parsed = parseBoard(raw);
    expect(parsed.ok && parsed.value.parts.get("__proto__")?.kind).toBe("capacitor");
    expect(parsed.ok && parsed.value.nets.get("constructor")).toBeNull();
    expect(parsed.ok && parsed.value.nets.has("toString")).toBe(false);
  });

  it("refuses the field __proto__ where no such field belongs", () => {
    const raw = JSON.parse(JSON.stringify(smallDrive()).replace('"amps":15', '"__proto__":{"amps":15}'));
    const parsed = parseBoard(raw);
    expect(!parsed.ok && plain(parsed.problem)).toContain("parts.BR1.value.__proto__: unknown field");
  });
});

describe("a power module", () => {
  const pins = { p: "PBUS", u: "U", v: "V", w: "W" };
  const put = (more: Record<string, string>) => part("IPM1", { kind: "module", pins: { ...pins, ...more } });

  it("may bring out one return for all three legs, or three, and leave its control pins out", () => {
    expect(problemAfter(put({ n: "NSH" }))).toBe("none");
    expect(problemAfter(put({ nu: "A", nv: "B", nw: "C", vcc: "V15", com: "NBUS", inup: "X" }))).toBe("none");
  });

  it("may not bring out both, nor two of three", () => {
    expect(problemAfter(put({ n: "NSH", nu: "A" }))).toContain(
      "parts.IPM1.pins.n: stands for nu nv nw together",
    );
    expect(problemAfter(put({ nu: "A", nv: "B" }))).toContain("a module needs n, or all of nu nv nw");
  });
});

describe("a transformer without windings in the file", () => {
  it("has its pins taken two by two", () => {
    const raw = smallDrive();
    raw.parts.T1 = { kind: "transformer", pins: { "1": "A", "2": "B", "3": "C", "4": "D" } };
    const parsed = parseBoard(raw);
    expect(parsed.ok && { ...parsed.value.parts.get("T1")?.value.windings }).toEqual({
      w12: { pins: ["1", "2"] },
      w34: { pins: ["3", "4"] },
    });
  });
});

describe("every kind of the format", () => {
  it.each([...KINDS.keys()])("%s is read with just its pins", (kind) => {
    const row = KINDS.get(kind);
    const names =
      kind === "module" ? ["p", "n", "u", "v", "w"] : kind === "transformer" ? ["1", "2"] : (row?.pins ?? []);
    const raw = smallDrive();
    raw.parts.X1 = { kind, pins: Object.fromEntries(names.map((name) => [name, `X_${name}`])) };
    const parsed = parseBoard(raw);
    expect(parsed.ok ? parsed.value.parts.get("X1")?.kind : plain(parsed.problem)).toBe(kind);
  });

  it("never makes the reader throw, whatever is put in any field", () => {
    const paths = fc.constantFrom("kind", "pins", "value", "stage", "price", "minutes", "plugged", "role");
    const anyField = fc.property(
      paths,
      fc.anything(),
      fc.constantFrom("BR1", "T1", "U5", "C1"),
      (key, value, ref) => {
        const raw = smallDrive();
        raw.parts[ref] = { ...raw.parts[ref], [key]: value };
        const parsed = parseBoard(raw);
        if (!parsed.ok) expect(parsed.problem).toContain(`parts.${ref}.`);
      },
    );
    fc.assert(anyField, { seed: 11, numRuns: 500 });
  });
});
