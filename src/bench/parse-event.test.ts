import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plain } from "../messages/said.ts";
import { parseEvent } from "./parse-event.ts";

function problemOf(input: unknown): string {
  const parsed = parseEvent(input, "log[3]");
  return parsed.ok ? "none" : plain(parsed.problem);
}

const STAMP = { id: "e1", at: "2026-03-01T09:30:00Z", who: "R." };
const DIODE = { do: "measure", mode: "diode", red: "PBUS", black: "Q1.c" };

describe("an event of the log", () => {
  it.each<Record<string, unknown>>([
    { ...DIODE, reading: 0.47, ...STAMP },
    { ...DIODE, reading: "OL" },
    { ...DIODE, reading: "junction", settling: "climbing" },
    { ...DIODE, mode: "continuity", reading: "beep" },
    { ...DIODE, mode: "ohms", reading: 0.02, wires: 4 },
    { ...DIODE, mode: "dcv", reading: -12.5, afterPower: 3 },
    { do: "measure", mode: "temperature", part: "U3", ambient: 22, by: "spot", reading: 41 },
    { do: "calibrate", mode: "ohms", known: 1000, reading: 998, ...STAMP },
    { do: "look", part: "C1", finding: "bulged", ...STAMP },
    { do: "clean", stage: "drive", dried: true },
    { do: "resolder", part: "K1", ...STAMP },
    { do: "lift", place: "Q1.c", ...STAMP },
    { do: "refit", place: "Q1.c" },
    { do: "remove", part: "Q1" },
    { do: "restore", part: "Q1" },
    { do: "replace", part: "Q1", with: "a 600 V 20 A one", price: 4.5, used: true, ...STAMP },
    { do: "replace", part: "Q1", with: "K40", used: true, from: { place: "shelf", donor: "heat pump 12" } },
    { do: "replace", part: "Q1", with: "K40", from: {} },
    { do: "incoming", part: "Q1", mode: "diode", red: "e", black: "c", reading: 0.46, ...STAMP },
    { do: "incoming", part: "C1", mode: "farads", red: "plus", black: "minus", reading: 330e-6 },
    { do: "clip", at: ["PBUS", "NBUS"], ohms: 2200, id: "e2", who: "R." },
    { do: "unclip", at: ["PBUS", "NBUS"], ohms: 2200 },
    { do: "power", feed: "mains", observed: "runs", ...STAMP },
    { do: "power", feed: "lamp", watts: 100, observed: ["lamp-bright", "lamp-dim"], ...STAMP },
    { do: "power", feed: "mains", meters: [["PBUS", "NBUS"]], observed: "quiet", ...STAMP },
    { do: "power", feed: "mains", signs: { LED1: true, K1: false }, observed: "quiet", ...STAMP },
    {
      do: "power",
      feed: "bench",
      volts: 15,
      limitAmps: 0.2,
      at: ["V15", "NBUS"],
      observed: "limiting",
      id: "e3",
    },
    { do: "unpower", ...STAMP },
    { do: "answer", question: "when", answer: "during the storm" },
    { do: "note", text: "" },
    { do: "overrule", why: "I have just measured it" },
    { do: "overrule", why: "bled by hand", of: "proof" },
    { do: "note", text: "the fan spun", turned: "M1" },
    { do: "undo", of: "e1", ...STAMP },
    { do: "close", verdict: "not-economic", ...STAMP },
    { do: "close", verdict: "not-economic", shelved: ["Q1", "Q2"] },
  ])("is read and keeps every field: %j", (event) => {
    expect(parseEvent(event, "log[0]")).toEqual({ ok: true, value: event });
  });

  it("takes a reading of minus zero for zero", () => {
    const parsed = parseEvent({ ...DIODE, reading: -0 }, "log[0]");
    expect(parsed.ok && parsed.value.do === "measure" && Object.is(parsed.value.reading, 0)).toBe(true);
  });

  it.each<[unknown, string]>([
    [{ do: "overrule", why: "", of: "everything" }, "log[3].of: "],
    [{ do: "note", text: "", turned: "" }, "log[3].turned: "],
    [{ ...DIODE, reading: 0.47, probe: 1 }, "log[3].probe: unknown field of measure; known:"],
    [{ ...DIODE, redd: "X", reading: 0.47 }, 'log[3].redd: unknown field of measure; did you mean "red"?'],
    [{ do: "mesure" }, 'log[3].do: "mesure" is not known here; did you mean "measure"?'],
    [{ mode: "diode" }, "log[3].do: is missing"],
    [7, "log[3]: expected an object, found 7"],
    [null, "log[3]: expected an object, found null"],
    [{ ...DIODE }, "log[3].reading: is missing"],
    [{ ...DIODE, reading: Number.NaN }, "log[3].reading: expected a number that can be held, found NaN"],
    [
      { ...DIODE, reading: Number("1e999") },
      "log[3].reading: expected a number that can be held, found one that is too large",
    ],
    [
      { ...DIODE, reading: null },
      "log[3].reading: null is no reading in diode mode; expected a number, OL, zero, junction, high",
    ],
    [{ ...DIODE, reading: "beep" }, 'log[3].reading: "beep" is no reading in diode mode'],
    [
      { ...DIODE, mode: "dcv", reading: "zero" },
      'log[3].reading: "zero" is no reading in dcv mode; expected a number, OL',
    ],
    [
      { ...DIODE, mode: "dcv", reading: 1, settling: "climbing" },
      "log[3].settling: belongs to a cold mode, not to dcv mode",
    ],
    [{ ...DIODE, reading: 1, afterPower: 2 }, "log[3].afterPower: belongs to a live mode, not to diode mode"],
    [{ ...DIODE, reading: 1, wires: 4 }, "log[3].wires: belongs to ohms mode, not to diode mode"],
    [{ ...DIODE, mode: "ohms", reading: 1, wires: 2 }, "log[3].wires: expected 4, or no such field, found 2"],
    [{ ...DIODE, reading: 1, part: "Q1" }, "log[3].part: belongs to temperature mode, not to diode mode"],
    [{ do: "measure", mode: "diode", red: "PBUS", reading: 1 }, "log[3].black: is missing"],
    [
      { do: "measure", mode: "temperature", red: "PBUS", part: "U3", reading: 1 },
      "log[3].red: belongs to a reading between two places",
    ],
    [
      { ...DIODE, red: "Q1.c.x", reading: 1 },
      'log[3].red: "Q1.c.x" is no place; write a net (PBUS) or one pin (Q1.c)',
    ],
    [
      { ...DIODE, red: ["PBUS"], reading: 1 },
      "log[3].red: expected a place (a net, or REF.pin), found a list of 1",
    ],
    [
      { do: "incoming", part: "Q1", mode: "dcv", red: "e", black: "c", reading: 1 },
      'log[3].mode: "dcv" is not known here',
    ],
    [
      { do: "incoming", part: "Q1", mode: "diode", red: "e", black: "e", reading: 1 },
      'log[3].black: "e" is where red is',
    ],
    [{ do: "incoming", part: "Q1", mode: "diode", red: "e", black: "c" }, "log[3].reading: is missing"],
    [{ do: "incoming", part: "", mode: "diode", red: "e", black: "c", reading: 1 }, "log[3].part: is empty"],
    [{ do: "replace", part: "Q1", from: {} }, "log[3].from: a part out of stock is named: with is missing"],
    [{ do: "replace", part: "Q1", with: "K40", from: "shelf" }, "log[3].from: expected an object, found"],
    [
      { do: "replace", part: "Q1", with: "K40", from: { shelf: "4" } },
      "log[3].from.shelf: unknown field of from",
    ],
    [{ do: "replace", part: "Q1", with: "K40", from: { place: "" } }, "log[3].from.place: is empty"],
    [{ do: "close", verdict: "repaired", shelved: ["Q1", "Q1"] }, 'log[3].shelved: "Q1" stands twice'],
    [{ do: "lift", place: "PBUS" }, 'log[3].place: "PBUS" is a net; lift takes one pin, such as Q1.c'],
    [{ do: "clean" }, "log[3].part: clean names either a part or a stage"],
    [{ do: "clean", part: "C1", stage: "bus" }, "log[3].stage: clean names either a part or a stage"],
    [{ do: "clean", part: "C1", dried: false }, "log[3].dried: expected true, or no such field, found false"],
    [{ do: "clip", at: ["PBUS", "PBUS"], ohms: 10 }, 'log[3].at: names "PBUS" twice; two places are needed'],
    [{ do: "clip", at: "2026-03-01T09:30:00Z", ohms: 10 }, "log[3].at: expected two places, found"],
    [{ do: "clip", at: ["PBUS", "NBUS"], ohms: 0 }, "log[3].ohms: must be above 0, found 0"],
    [{ do: "power", feed: "lamp" }, "log[3].watts: is missing"],
    [{ do: "power", feed: "mains", watts: 5 }, "log[3].watts: unknown field of power with feed mains"],
    [{ do: "power", feed: "mains", at: ["A", "B"] }, "log[3].at: expected text, found a list of 2"],
    [{ do: "power", feed: "bench", volts: 15, limitAmps: 1 }, "log[3].at: is missing"],
    [
      { do: "power", feed: "bench", volts: 15, limitAmps: 1, at: "2026-03-01T09:30:00Z" },
      "log[3].at: expected two places, [plus, minus]",
    ],
    [{ do: "power", feed: "mains", meters: "PBUS" }, "log[3].meters: expected a list of pairs of places"],
    [
      { do: "power", feed: "mains", signs: ["LED1"] },
      "log[3].signs: expected parts with true or false, found a list",
    ],
    [
      { do: "power", feed: "mains", signs: { LED1: "lit" } },
      'log[3].signs.LED1: expected true (it came on) or false, found "lit"',
    ],
    [{ do: "power", feed: "mains", meters: [["PBUS"]] }, "log[3].meters[0]: expected two places"],
    [
      { do: "power", feed: "mains", meters: [["PBUS", "PBUS"]] },
      'log[3].meters[0]: names "PBUS" twice; two places are needed',
    ],
    [
      { do: "power", feed: "mains", observed: [] },
      "log[3].observed: is an empty list; quiet says that nothing was seen",
    ],
    [
      { do: "power", feed: "mains", observed: ["runs", "smokes"] },
      'log[3].observed[1]: "smokes" is not known here; did you mean "smoke"?',
    ],
    [
      { do: "unpower", at: "yesterday" },
      'log[3].at: "yesterday" is no time; write it as 2026-03-01T09:30:00Z (RFC 3339)',
    ],
    [{ do: "unpower", id: "" }, "log[3].id: must be 1 to 200 characters long, is 0"],
    [{ do: "close", verdict: "fixed" }, 'log[3].verdict: "fixed" is not known here'],
    [{ do: "undo" }, "log[3].of: is missing"],
  ])("is refused in one line that names the field: %j", (input, problem) => {
    expect(problemOf(input)).toContain(problem);
  });

  it("never makes the reader throw, whatever is put in any field", () => {
    const names = fc.constantFrom(
      "measure",
      "power",
      "clip",
      "look",
      "lift",
      "undo",
      "clean",
      "replace",
      "close",
    );
    const fields = fc.dictionary(
      fc.constantFrom(
        "mode",
        "red",
        "black",
        "reading",
        "at",
        "ohms",
        "feed",
        "observed",
        "part",
        "id",
        "__proto__",
      ),
      fc.anything(),
    );
    const neverThrows = fc.property(names, fields, (name, rest) => {
      const parsed = parseEvent({ ...rest, do: name }, "log[0]");
      if (!parsed.ok) expect(parsed.problem).toMatch(/^log\[0\]/);
    });
    fc.assert(neverThrows, { seed: 3, numRuns: 1000 });
  });
});
