/** The evaluation boards are whole, of the size they claim, and read cold as such boards do. */
import { describe, expect, it } from "vitest";
import { storesOfCharge } from "../../src/board/stores-of-charge.ts";
import { makePredictor } from "../../src/meter/predictor.ts";
import { DEFAULT_METER } from "../../src/meter/settings.ts";
import { viewOf } from "../../src/priors/circuit-view.ts";
import { evaluationBoards, sizeSeries } from "./evaluation-boards.ts";

const BARE = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: false };
const ALL = [...evaluationBoards(), ...sizeSeries()];

describe.each(ALL.map((named) => [named.id, named.board] as const))("%s", (_id, board) => {
  const pinsOf = new Map<string, string[]>();
  for (const [ref, part] of board.parts)
    for (const [pin, net] of part.pins) pinsOf.set(net, [...(pinsOf.get(net) ?? []), `${ref}.${pin}`]);

  it("has two pins on every net, but where the mains comes in", () => {
    const loose = [...pinsOf].filter(([net, pins]) => pins.length < 2 && !board.supply.at.includes(net));
    expect(loose).toEqual([]);
  });

  it("feeds every rail from a part with a pin on it", () => {
    for (const rail of board.rails) {
      const source = rail.from === null ? undefined : board.parts.get(rail.from);
      expect([rail.name, source && [...source.pins.values()].includes(rail.net)]).toEqual([rail.name, true]);
    }
  });

  it("holds a bleeder or balancing resistor across every bus capacitor, so that it empties by itself", () => {
    const { bus } = viewOf(board).roles;
    expect(bus).toMatchObject({ plus: "PBUS", minus: "NBUS" });
    expect(storesOfCharge(board).length).toBeGreaterThan(0);
    const ohms = makePredictor(board, BARE, DEFAULT_METER).predict(
      { mode: "ohms", red: "PBUS", black: "NBUS" },
      [],
    );
    expect(ohms.solved && ohms.raw).toBeLessThan(1e6);
  });

  it("shows the diodes across the bus one way, and blocks the other", () => {
    const predictor = makePredictor(board, BARE, DEFAULT_METER);
    const forward = predictor.predict({ mode: "diode", red: "NBUS", black: "PBUS" }, []);
    const reverse = predictor.predict({ mode: "diode", red: "PBUS", black: "NBUS" }, []);
    expect(forward.solved && forward.raw).toBeGreaterThan(0.25);
    expect(forward.solved && forward.raw).toBeLessThan(1.1);
    expect(reverse.solved && (reverse.shown === "OL" || reverse.raw > 1)).toBe(true);
  });

  it("shows no rail shorted", () => {
    const predictor = makePredictor(board, BARE, DEFAULT_METER);
    for (const rail of board.rails) {
      const found = predictor.predict({ mode: "ohms", red: rail.net, black: rail.against ?? board.zero }, []);
      expect([rail.name, found.solved && found.raw > 100]).toEqual([rail.name, true]);
    }
  });
});

describe("the list", () => {
  it("holds three boards of other kinds, one of 300 parts and more", () => {
    const boards = evaluationBoards();
    expect(boards.map(({ board }) => board.family)).toEqual(["charger", "outdoor-inverter", "servo-drive"]);
    for (const { board } of boards) expect(board.parts.size).toBeGreaterThanOrEqual(100);
    expect(Math.max(...boards.map(({ board }) => board.parts.size))).toBeGreaterThanOrEqual(300);
  });

  it("holds boards within five percent of the sizes that speed is plotted over", () => {
    for (const { size, board } of sizeSeries())
      expect([size, Math.abs(board.parts.size / size - 1) <= 0.05]).toEqual([size, true]);
  });

  it("gives every switch of every axis its gate resistor and pull-down", () => {
    for (const { board } of ALL) {
      const resistors = [...board.parts.values()].filter((part) => part.kind === "resistor");
      for (const part of board.parts.values()) {
        const gate = part.pins.get("g");
        if ((part.kind !== "igbt" && part.kind !== "mosfet") || gate === undefined) continue;
        const at = resistors.filter((one) => [...one.pins.values()].includes(gate));
        expect([part.ref, at.length >= 1]).toEqual([part.ref, true]);
      }
    }
  });
});
