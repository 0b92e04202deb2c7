import { describe, expect, it } from "vitest";
import type { Reading } from "../bench/event.ts";
import type { PartKind } from "../board/board.ts";
import { KIND_NAMES, kindOf } from "../board/kinds.ts";
import { incomingCheck } from "./incoming-check.ts";
import { incomingReads, readsGood } from "./incoming-reads.ts";
import type { Ratings } from "./ratings.ts";

const EXTRA: Readonly<Partial<Record<PartKind, readonly string[]>>> = {
  module: "p nu nv nw u v w vcc com vbu vbv vbw".split(" "),
};
const pinsOf = (kind: PartKind) => [...kindOf(kind).pins, ...(EXTRA[kind] ?? [])];

const fine = (kind: PartKind, ratings: Ratings, red: string, black: string, reading: Reading) => {
  const read = incomingReads(kind, ratings, pinsOf(kind)).find(
    (one) => one.red === red && one.black === black,
  );
  if (read === undefined) throw new Error(`${kind} is not read from ${red} to ${black}`);
  return readsGood(read, reading);
};

describe("the readings of an incoming check", () => {
  it.each<[string, PartKind, Ratings, string, string, Reading, boolean | null]>([
    ["an IGBT with its diode", "igbt", { copack: true }, "e", "c", 0.46, true],
    ["an IGBT with a diode where none was wanted", "igbt", { copack: false }, "e", "c", 0.46, false],
    ["an IGBT of which nobody knows", "igbt", {}, "e", "c", 0.46, null],
    ["a shorted IGBT", "igbt", {}, "c", "e", 0.01, false],
    ["a gate that leaks", "igbt", {}, "g", "e", 1.2, false],
    ["a gate that holds", "igbt", {}, "g", "e", "OL", true],
    ["a MOSFET's body diode", "mosfet", {}, "s", "d", 0.52, true],
    ["a module's diode", "module", {}, "u", "p", 0.41, true],
    ["a module's short", "module", {}, "nu", "u", 0.002, false],
    ["a module the wrong way", "module", {}, "p", "w", "OL", true],
    ["a bridge's diode", "bridge", {}, "minus", "ac2", 0.5, true],
    ["a Schottky", "diode", { type: "schottky" }, "a", "k", 0.2, true],
    ["a Schottky in a silicon diode's place", "diode", { type: "fast" }, "a", "k", 0.2, false],
    ["silicon carbide", "diode", { type: "sic" }, "a", "k", 0.8, true],
    ["a PNP by its emitter", "bjt", { polarity: "pnp" }, "e", "b", 0.66, true],
    ["an NPN by its base", "bjt", { polarity: "npn" }, "b", "e", 0.66, true],
    ["a capacitor that has dried up", "capacitor", { farads: 330e-6 }, "plus", "minus", 250e-6, false],
    ["one within its tolerance", "capacitor", { farads: 330e-6 }, "plus", "minus", 300e-6, true],
    ["a varistor", "varistor", {}, "1", "2", "OL", true],
    ["a leaky varistor", "varistor", {}, "1", "2", 200_000, false],
    ["a fuse with the leads' own tenths", "fuse", {}, "1", "2", 0.3, true],
    ["a shunt", "resistor", { ohms: 0.1, tolerance: 0.01 }, "1", "2", 0.4, true],
    ["a resistor 10 % high", "resistor", { ohms: 10_000, tolerance: 0.01 }, "1", "2", 11_000, false],
    ["a relay's coil", "relay", { coilOhms: 400 }, "coil1", "coil2", 410, true],
    ["what the thumb saw as a junction", "igbt", { copack: true }, "e", "c", "junction", true],
    ["what the thumb saw as zero", "igbt", { copack: true }, "e", "c", "zero", false],
  ])("%s: %s %o from %s to %s reads %s: %s", (_, kind, ratings, red, black, reading, says) => {
    expect(fine(kind, ratings, red, black, reading)).toBe(says);
  });

  it("are between pins that the kind has, each once", () => {
    for (const kind of KIND_NAMES) {
      const pins = pinsOf(kind);
      const keys = incomingReads(kind, {}, pins).map(({ mode, red, black }) => `${mode} ${red} ${black}`);
      expect(new Set(keys).size, kind).toBe(keys.length);
      // what is checked by words alone has none; what is read is in the words too
      if (keys.length > 0) expect(incomingCheck(kind, "other", {}, false).length, kind).toBeGreaterThan(1);
    }
  });

  it("of a module with one N pin are taken there for each leg", () => {
    const one = incomingReads("module", {}, "p n u v w".split(" "));
    expect(one.map(({ red, black }) => `${red} ${black}`)).toContain("n v");
    expect(one.some(({ red, black }) => /^n[uvw]$/.test(red) || /^n[uvw]$/.test(black))).toBe(false);
  });
});
