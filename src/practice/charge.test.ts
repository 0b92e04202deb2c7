import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { parseBoard } from "../board/parse-board.ts";
import { restVolts } from "./charge.ts";

const board = (() => {
  const parsed = parseBoard(JSON.parse(readFileSync("boards/small-frequency-drive-3ph.json", "utf8")));
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
})();

function volts(log: readonly JobEvent[], red: string, black: string): number {
  const timeline = foldLog(board, [], log);
  if (!timeline.ok) throw new Error(timeline.problem);
  return restVolts(board, timeline.value, 7, red, black, false, 300);
}

const POWERED: readonly JobEvent[] = [{ do: "power", feed: "mains", observed: "quiet" }, { do: "unpower" }];

it("each of two bus capacitors in series holds half of what the film beside them holds", () => {
  expect(volts(POWERED, "C9.plus", "C9.minus")).toBe(300);
  expect(volts(POWERED, "C7.plus", "C7.minus")).toBe(150);
  expect(volts(POWERED, "C8.minus", "C8.plus")).toBe(-150);
});

it("a resistor across one of the two empties that one alone; across both it empties all", () => {
  const one: readonly JobEvent[] = [...POWERED, { do: "clip", at: ["C7.plus", "C7.minus"], ohms: 2200 }];
  expect(Math.abs(volts(one, "C7.plus", "C7.minus"))).toBeLessThan(5);
  expect(volts(one, "C8.plus", "C8.minus")).toBe(150);
  const both: readonly JobEvent[] = [...POWERED, { do: "clip", at: ["C9.plus", "C9.minus"], ohms: 2200 }];
  for (const ref of ["C7", "C8", "C9"])
    expect(Math.abs(volts(both, `${ref}.plus`, `${ref}.minus`))).toBeLessThan(5);
});
