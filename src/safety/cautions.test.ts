import { expect, test } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { parseBoard } from "../board/parse-board.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { cautionsNow } from "./cautions.ts";

const board = (() => {
  const parsed = parseBoard(smallDrive());
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
})();

type Cautioned = Parameters<typeof cautionsNow>[0][number];

function saidAfter(log: readonly JobEvent[], ...actions: readonly Cautioned[]): string {
  const folded = foldLog(board, [], log);
  if (!folded.ok) throw new Error(folded.problem);
  return cautionsNow(actions, board, folded.value).join(" ");
}

const said = (action: Cautioned): string => saidAfter([], action);

test("every step under mains danger defers to local codes and licensed practice", () => {
  for (const action of [
    { do: "power", feed: "mains" },
    { do: "unpower" },
    { do: "clip" },
    { do: "measure", mode: "dcv" },
  ] as const)
    expect(said(action)).toContain("Local codes");
});

test("the lamp's caution says what the lamp does not do", () => {
  expect(said({ do: "power", feed: "lamp" })).toContain("not the energy stored in the bus");
  expect(said({ do: "power", feed: "mains" })).not.toContain("lamp limits");
});

test("an insulation tester is warned of where ohms are measured on a populated board, in the row too", () => {
  expect(said({ do: "measure", mode: "ohms" })).toContain("No insulation tester");
  expect(saidAfter([], { do: "measure", mode: "diode" }, { do: "measure", mode: "ohms" })).toContain(
    "No insulation tester",
  );
});

test("a part is replaced with the warning about pads and insulation; a look needs none", () => {
  expect(said({ do: "replace", part: "Q1" })).toContain("insulation pad");
  expect(said({ do: "replace", part: "RS1" })).not.toContain("insulation pad");
  expect(said({ do: "replace", part: "RS1" })).toContain("Pads lift");
  expect(said({ do: "look" })).toBe("");
});

test("a board that is handed back counts as charged until it has been proven empty once more", () => {
  expect(said({ do: "close" })).toContain("prove every capacitor empty once more");
});

const PROOF = { do: "measure", mode: "dcv", red: "C1.plus", black: "C1.minus", reading: 0.3 } as const;
const COLD = { do: "measure", mode: "diode", red: "V5", black: "NBUS", reading: 0.5 } as const;
const POWERED = [
  { do: "power", feed: "lamp", watts: 100, observed: "lamp-dark" },
  { do: "unpower" },
] as const;

test("that the bus creeps back is said at the first cold check after the proof, and not again until power changes", () => {
  const next = { do: "measure", mode: "diode" } as const;
  expect(saidAfter([PROOF], next)).toContain("creep back up");
  expect(saidAfter([PROOF, COLD], next)).toBe("");
  expect(saidAfter([PROOF, COLD, ...POWERED, PROOF], next)).toContain("creep back up");
});

test("an iron in a board that was left a while hears of the bus each time", () => {
  expect(saidAfter([PROOF, COLD, COLD], { do: "lift" })).toContain("creep back up");
});

test("who reads again across the resistor is not told to unplug what is unplugged", () => {
  const again = { do: "measure", mode: "dcv" } as const;
  expect(saidAfter([], again)).toContain("Unplug it");
  expect(saidAfter([{ ...PROOF, reading: 90 }], again)).not.toContain("Unplug it");
  expect(saidAfter([{ ...PROOF, reading: 90 }], again)).toContain("Highest DC range");
  expect(saidAfter([PROOF, ...POWERED], again)).toContain("Unplug it");
});

test("a resistor that comes off may be hot; nobody is told then how to discharge", () => {
  expect(said({ do: "unclip" })).toContain("still be hot");
  expect(said({ do: "unclip" })).not.toContain("screwdriver");
});
