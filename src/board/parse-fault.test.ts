import { describe, expect, it } from "vitest";
import { plain } from "../messages/said.ts";
import type { Board } from "./board.ts";
import { faultName } from "./fault.ts";
import { faultSites } from "./fault-sites.ts";
import { parseBoard } from "./parse-board.ts";
import { parseFault, parseFaultList } from "./parse-fault.ts";
import { smallDrive } from "./small-drive.fixture.ts";

function load(extra: Record<string, Record<string, unknown>> = {}): Board {
  const raw = smallDrive();
  Object.assign(raw.parts, extra);
  const parsed = parseBoard(raw);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}

const BOARD = load({
  IPM1: {
    kind: "module",
    pins: { p: "P", n: "N", u: "U", v: "V", w: "W", vcc: "V15", com: "NBUS", vbu: "BU", inup: "I" },
  },
  BR3: { kind: "bridge", pins: { ac1: "a", ac2: "b", ac3: "c", plus: "d", minus: "e" } },
});

function junctions(ref: string): readonly (string | null)[] {
  const part = BOARD.parts.get(ref);
  if (part === undefined) throw new Error(ref);
  return faultSites(part).map((site) => site.junction);
}

function problemOf(text: string): string {
  const parsed = parseFault(text, BOARD);
  return parsed.ok ? "none" : plain(parsed.problem);
}

describe("where a part can fail", () => {
  it("is a junction of its kind, as the format names them", () => {
    expect(junctions("BR1")).toEqual(["ac1plus", "ac2plus", "minusac1", "minusac2"]);
    expect(junctions("BR3")).toEqual(["ac1plus", "ac2plus", "minusac1", "minusac2", "ac3plus", "minusac3"]);
    expect(junctions("Q1")).toEqual(["ce", "ge"]);
    expect(junctions("U1")).toEqual(["ds", "vcc", "fb"]);
    expect(junctions("U2")).toEqual(["inout", "outgnd"]);
    expect(junctions("T1")).toEqual(["pri", "sec"]);
    expect(junctions("L1")).toEqual(["w12", "w34"]);
    expect(junctions("K1")).toEqual(["coil", "contact"]);
    expect(junctions("U3")).toEqual(["supply", "pa0", "pa0.supply", "pa1", "pa1.supply"]);
    expect(junctions("C1")).toEqual([null]);
  });

  it("in a module is only where it brings a pin out", () => {
    expect(junctions("IPM1")).toEqual(["up", "vp", "wp", "un", "vn", "wn", "vbu", "drive", "inup"]);
  });

  it("in a chip's floating side has no junction to the supply", () => {
    expect(junctions("U5")).toEqual(["supply", "ho", "vs", "in", "in.supply"]);
  });
});

describe("a fault's spelling", () => {
  it("is read and written back the same, for every site and mode of the board", () => {
    for (const part of BOARD.parts.values()) {
      for (const [site, mode] of faultSites(part).flatMap((one) =>
        one.modes.map((mode) => [one, mode] as const),
      )) {
        const where = site.junction === null ? part.ref : `${part.ref}.${site.junction}`;
        const parsed = parseFault(`${where}:${mode}`, BOARD);
        expect(parsed.ok ? faultName(parsed.value) : plain(parsed.problem)).toBe(`${where}:${mode}`);
      }
    }
  });

  it("carries another value behind @", () => {
    expect(parseFault("C5:short@1.5", BOARD)).toEqual({
      ok: true,
      value: { of: "part", part: "C5", junction: null, mode: "short", value: 1.5 },
    });
    expect(parseFault("RG1:drift@33000", BOARD)).toMatchObject({ ok: true, value: { value: 33000 } });
    expect(parseFault("PBUS~NBUS:leaky@2e3", BOARD)).toMatchObject({ ok: true, value: { value: 2000 } });
  });

  it("of a shunt reference may leave its one junction out", () => {
    expect(parseFault("U4:short", BOARD)).toEqual(parseFault("U4.ka:short", BOARD));
  });

  it.each([
    ["BR1:short", "BR1 has several junctions; name one: ac1plus ac2plus minusac1 minusac2"],
    ["T1:open", "T1 has several junctions; name one: pri sec"],
    ["BR9:short", 'there is no part "BR9"; did you mean "BR1"?'],
    ["Q1.cee:short", 'Q1 (igbt) has no junction "cee"; did you mean "ce"?'],
    ["C1.plus:short", "C1 (capacitor) has only one junction; write C1:short"],
    ["Q1.ce:drift", "an igbt cannot drift; its modes: short leaky open"],
    ["C1:shrot", '"shrot" is no mode; did you mean "short"?'],
    ["C1:open@5", "an open takes no value"],
    ["C1:short@-1", '"-1" behind @ is not a number above 0'],
    ["C1:short@1e999", '"1e999" behind @ is not a number above 0'],
    ["PBUS~NBUS:short", "between two nets only leaky is a fault"],
    ["PBUS~PBUS:leaky", "a leak lies between two different nets"],
    ["PBUS~XBUS:leaky", 'there is no net "XBUS"; did you mean "PBUS"?'],
    ["", "expected REF:mode"],
    ["C1", "expected REF:mode"],
    ["__proto__:short", 'there is no part "__proto__"'],
  ])("%j is refused, saying what would be right", (text, why) => {
    expect(problemOf(text)).toContain(`fault ${JSON.stringify(text)}: `);
    expect(problemOf(text)).toContain(why);
  });
});

describe("a set of faults", () => {
  it("is one text with commas, or a list", () => {
    const names = (input: unknown) => {
      const parsed = parseFaultList(input, BOARD);
      return parsed.ok ? parsed.value.map(faultName) : plain(parsed.problem);
    };
    expect(names("C1:short, F1:open")).toEqual(["C1:short", "F1:open"]);
    expect(names(["C1:short", "F1:open"])).toEqual(["C1:short", "F1:open"]);
    expect(names("")).toEqual([]);
    expect(names([])).toEqual([]);
    expect(names(7)).toBe("faults: expected a list of faults, found 7");
    expect(names(["C1:short", null])).toBe("faults[1]: expected text, found null");
  });

  it("holds no two faults of one junction, nor one leak twice", () => {
    expect(parseFaultList("Q1.ce:short,Q1.ge:open", BOARD).ok).toBe(true);
    expect(parseFaultList("Q1.ce:short,Q1.ce:open", BOARD)).toMatchObject({ ok: false });
    expect(parseFaultList("PBUS~NBUS:leaky,NBUS~PBUS:leaky", BOARD)).toMatchObject({ ok: false });
    expect(parseFaultList("U4:short,U4.ka:open", BOARD)).toMatchObject({ ok: false });
  });
});
