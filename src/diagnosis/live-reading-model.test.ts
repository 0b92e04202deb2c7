import { expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { liveStates } from "../live/live-of-log.ts";
import { liveReading } from "../live/live-reading.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { liveLogLikelihood } from "./live-reading-model.ts";

const parsed = parseBoard(SHIPPED.find(({ id }) => id === "greenhouse-fan-drive")?.board);
if (!parsed.ok) throw new Error(parsed.problem);
const bench = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: true };
const onMains = liveStates(parsed.value, bench, { do: "power", feed: "mains" }).state([]);

it("across an inrush part that is bypassed 1.5 V speak hard against it, across nets that float they may be picked up", () => {
  const bypassed = { value: 0, spread: 0.03 };
  const held = liveLogLikelihood("acv", 1.5, { ...bypassed, held: true });
  const floating = liveLogLikelihood("acv", 1.5, bypassed);
  expect(floating - held).toBeGreaterThan(4);
});

it("both ends of the inrush part swing with the mains, so what lies between them is held; a rail is not", () => {
  const across = liveReading(onMains, { mode: "acv", red: "L_C", black: "L_B" });
  expect(across?.held).toBe(true);
  expect(across?.value).toBeLessThan(0.1);
  expect(liveReading(onMains, { mode: "dcv", red: "V15", black: "NBUS" })?.held).toBe(false);
});
