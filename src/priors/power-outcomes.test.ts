import { describe, expect, it } from "vitest";
import type { Feed, Observed } from "../bench/event.ts";
import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import { parseBoard } from "../board/parse-board.ts";
import { parseFaultList } from "../board/parse-fault.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { fixtureBoard } from "./drives.fixture.ts";
import { boardEffect } from "./power-effects.ts";
import { OUTCOME_ROWS, observedLikelihood, outcomeChances } from "./power-outcomes.ts";
import { priorTable } from "./prior-table.ts";

const board = fixtureBoard("module");
const discrete = fixtureBoard("discrete");

function faults(text: string, on = board): readonly Fault[] {
  const parsed = parseFaultList(text, on);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}

function likeliest(text: string, feed: Feed, on = board): Observed {
  const chances = [...outcomeChances(on, faults(text, on), { feed })];
  return chances.reduce((best, one) => (one[1] > best[1] ? one : best))[0];
}

function shipped(wanted: string): Board {
  const parsed = parseBoard(SHIPPED.find(({ id }) => id === wanted)?.board);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}

describe("what is seen at power-up", () => {
  it("a whole board runs, and leaves the lamp dark", () => {
    expect(likeliest("", "mains")).toBe("runs");
    expect(likeliest("", "lamp")).toBe("lamp-dark");
  });

  it("a hard short on the line or the bus lights the lamp", () => {
    for (const text of ["RV1:short", "C1:short", "BR1.ac1plus:short", "M1.up:short,M1.un:short"])
      expect(likeliest(text, "lamp")).toBe("lamp-bright");
  });

  it("one tired capacitor of a bank does not keep a board from running; a lone one makes it weak", () => {
    const drive = shipped("outdoor-unit-inverter");
    expect(boardEffect(drive, faults("C8:drift", drive))).toBe("none");
    expect(boardEffect(drive, faults("C30:drift", drive))).toBe("weak");
  });

  it("a supply without its clamp starts and comes back; a shorted clamp takes its whole stroke", () => {
    const drive = shipped("greenhouse-fan-drive");
    for (const open of ["R28:open", "D5:open"]) expect(boardEffect(drive, faults(open, drive))).toBe("weak");
    for (const short of ["R28:short", "C16:short", "D5:short"])
      expect(boardEffect(drive, faults(short, drive))).toBe("supply-dead");
  });

  it("a capacitor that joins a wire of the mains to earth trips the residual-current breaker, on the mains and through a lamp", () => {
    const drive = shipped("small-frequency-drive");
    for (const text of ["C3:short", "C4:short", "C4:leaky@3000"])
      expect(boardEffect(drive, faults(text, drive))).toBe("earth-short");
    expect(boardEffect(drive, faults("C4:leaky@100000", drive))).toBe("none");
    expect(boardEffect(drive, faults("RV3:short", drive))).toBe("none");
    for (const feed of ["mains", "lamp"] as const) expect(likeliest("C4:short", feed, drive)).toBe("trip");
  });

  it("a board runs without its bleeder; two ohms across a shunt of 20 milliohms change nothing", () => {
    const drive = shipped("small-frequency-drive");
    const effect = (text: string) => boardEffect(drive, faults(text, drive));
    expect(effect("R3:open")).toBe("none");
    expect(effect("R4:short")).toBe("weak");
    expect(effect("R14:short@2")).toBe("none");
    expect(effect("R14:open")).toBe("no-run");
    expect(effect("R5:open")).toBe("no-run");
  });

  it("a feedback pin that leaks a few kilohms to ground keeps the supply down, as its feed does at less", () => {
    const drive = shipped("greenhouse-fan-drive");
    const effect = (text: string) => boardEffect(drive, faults(text, drive));
    expect(effect("U4.fb:leaky@4000")).toBe("supply-dead");
    expect(effect("U4.vcc:leaky@1500")).toBe("supply-dead");
    expect(effect("U4.vcc:leaky@4000")).toBe("none");
  });

  it("a rail without its reservoir works poorly, as with a dried one; without a small capacitor it works", () => {
    const drive = shipped("greenhouse-fan-drive");
    expect(boardEffect(drive, faults("C23:open", drive))).toBe("weak");
    expect(boardEffect(drive, faults("C24:open", drive))).toBe("none");
  });

  it("one shorted switch does not light it by itself, its whole leg does", () => {
    expect(likeliest("Q2.ce:short", "lamp", discrete)).toBe("lamp-dark");
    expect(likeliest("Q2.ce:short,Q3.ce:short", "lamp", discrete)).toBe("lamp-bright");
    expect(likeliest("Q2.ce:short,Q5.ce:short", "lamp", discrete)).toBe("lamp-dark");
  });

  it("no lamp glows on the mains and nothing limits there; each feed's words sum to one", () => {
    const seen = (feed: Feed) => outcomeChances(board, faults("C1:short"), { feed, at: ["PBUS", "NBUS"] });
    expect([...seen("mains").keys()].some((word) => word.startsWith("lamp-"))).toBe(false);
    expect(seen("mains").has("limiting")).toBe(false);
    expect(seen("lamp").has("lamp-bright")).toBe(true);
    expect(seen("bench").has("limiting")).toBe(true);
    for (const feed of ["mains", "lamp", "bench"] as const)
      expect([...seen(feed).values()].reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 12);
  });

  it("an open fuse hides every short behind it", () => {
    expect(likeliest("C1:short", "mains")).toBe("fuse-blew");
    expect(likeliest("F1:open,C1:short,U20.supply:short", "mains")).toBe("quiet");
    expect(likeliest("F1:open,C1:short", "lamp")).toBe("lamp-dark");
  });

  it("a shorted rail makes the lamp pulse and the board stay quiet", () => {
    for (const text of ["C13:short", "U20.supply:short@5", "Z10:short", "M1.drive:short"]) {
      expect(likeliest(text, "lamp")).toBe("lamp-pulsing");
      expect(likeliest(text, "mains")).toBe("quiet");
    }
  });

  it("a part off the board counts as open, and its faults as gone", () => {
    const off = new Set(["M1"]);
    expect(boardEffect(board, faults("M1.up:short,M1.un:short"), off)).toBe("no-run");
    expect(boardEffect(board, [], new Set(["BR1"]))).toBe("feed-open");
    expect(boardEffect(board, [], new Set(["F1"]))).toBe("input-open");
  });

  it("a bench supply on a shorted rail limits, on another it does not", () => {
    const chance = (at: [string, string]): number =>
      observedLikelihood(board, faults("C13:short"), { feed: "bench", at }, "limiting");
    expect(chance(["V5", "NBUS"])).toBeGreaterThan(0.9);
    expect(chance(["C13.plus", "NBUS"])).toBeGreaterThan(0.9);
    expect(chance(["V15", "NBUS"])).toBeLessThan(0.1);
  });

  it("chances sum to one and none is nought, for every single fault and feed", () => {
    const rows = priorTable(board, "unknown", "dead").faults;
    for (const feed of ["mains", "lamp", "bench"] as const)
      for (const row of rows) {
        const chances = [...outcomeChances(board, [row.fault], { feed, at: ["PBUS", "NBUS"] }).values()];
        expect(chances.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 9);
        expect(Math.min(...chances)).toBeGreaterThan(0);
      }
  });

  it("several words at once weigh as their mean, and order does not matter", () => {
    const words: Observed[] = ["fuse-blew", "smoke"];
    const likelihood = (observed: readonly Observed[]): number =>
      observedLikelihood(board, faults("C1:short"), { feed: "mains" }, observed);
    expect(likelihood(words)).toBeCloseTo(likelihood([...words].reverse()), 12);
    expect(likelihood(words)).toBeCloseTo(Math.sqrt(likelihood(["fuse-blew"]) * likelihood(["smoke"])), 12);
  });

  it("each row of the table shares out everything", () => {
    for (const row of Object.values(OUTCOME_ROWS))
      for (const shares of [row.mains, row.lamp])
        expect(Object.values(shares).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
  });
});

describe("a hob at power-up", () => {
  const hob = shipped("induction-hob");

  it("lights the lamp with a shorted switch, which has no partner to wait for", () => {
    expect(boardEffect(hob, faults("Q1.ce:short", hob))).toBe("bus-short");
    expect(likeliest("Q1.ce:short", "lamp", hob)).toBe("lamp-bright");
  });

  it("stays dark with a shorted coil or resonant capacitor until the switch is told to switch", () => {
    for (const text of ["L2:short", "C7:short"]) {
      expect(boardEffect(hob, faults(text, hob))).toBe("leg-half");
      expect(likeliest(text, "lamp", hob)).toBe("lamp-dark");
    }
  });

  it("heats nothing with an open coil, and has no bus with an open current transformer", () => {
    expect(boardEffect(hob, faults("L2:open", hob))).toBe("no-run");
    expect(boardEffect(hob, faults("CT1.pri:open", hob))).toBe("feed-open");
    expect(boardEffect(hob, faults("CT1.sec:open", hob))).toBe("no-run");
    expect(boardEffect(hob, faults("L1:open", hob))).toBe("feed-open");
  });

  it("runs on one of the two diodes that feed its small supply, and blows at one that is shorted", () => {
    const diodes = [...hob.parts.values()].filter(({ pins }) => pins.get("k") === "SUP_IN");
    expect(diodes).toHaveLength(2);
    for (const { ref } of diodes) {
      expect(boardEffect(hob, faults(`${ref}:open`, hob))).toBe("weak");
      expect(boardEffect(hob, faults(`${ref}:short`, hob))).toBe("supply-short");
    }
  });
});
