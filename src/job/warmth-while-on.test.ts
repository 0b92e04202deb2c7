/** After the meters are read, and before the board goes off: what its warmth would tell, where that is worth its minutes. */

import { expect, it } from "vitest";
import type { JobEvent, Observed } from "../bench/event.ts";
import { parseBoard } from "../board/parse-board.ts";
import { plain } from "../messages/said.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { AssessmentSession, assess } from "./assess.ts";
import { parseJob } from "./parse-job.ts";
import { provenEmpty } from "./work-ahead.ts";

const content = SHIPPED.find((one) => one.id === "outdoor-unit-inverter")?.board;
const parsed = parseBoard(content);
if (!parsed.ok) throw new Error(parsed.problem);
const board = parsed.value;
const session = new AssessmentSession();

/** What is proposed once the bus and a 12 V rail that hangs at 3.5 V have been read under mains. */
function nextOn(equipment: readonly string[], observed: Observed, ...then: readonly JobEvent[]) {
  const log: readonly JobEvent[] = [
    ...provenEmpty({ board, absent: ["MOT1"] }),
    { do: "replace", part: "BR1" },
    {
      do: "power",
      feed: "mains",
      meters: [
        ["PBUS", "NBUS"],
        ["V12", "NBUS"],
      ],
      observed,
    },
    { do: "measure", mode: "dcv", red: "PBUS", black: "NBUS", reading: 322 },
    { do: "measure", mode: "dcv", red: "V12", black: "NBUS", reading: 3.5 },
    ...then,
  ];
  const job = parseJob(
    {
      format: "faultwright-job/1",
      board: content,
      cause: "surge",
      symptom: "dead",
      absent: board.parts.has("MOT1") ? ["MOT1"] : [],
      equipment,
      log,
    },
    board,
  );
  if (!job.ok) throw new Error(job.problem);
  const assessed = assess(job.value, session);
  if (!assessed.ok) throw new Error(assessed.problem);
  return assessed.value.proposal;
}

const CAMERA = ["lamp-100", "thermal-camera"];

it("with a camera the clamp of a rail that hangs low is looked at from outside, while the board is on, and once", () => {
  const { action, why } = nextOn(CAMERA, "quiet");
  expect(action).toMatchObject({ do: "measure", mode: "temperature", by: "camera", part: "ZD2" });
  expect(action.do === "measure" && [20, 120].includes(action.afterPower ?? 0)).toBe(true);
  expect(plain(why)).toContain("nothing touches a live board");
  if (action.do !== "measure") return;
  const warm = nextOn(CAMERA, "quiet", { ...action, reading: 80 });
  expect(warm.action).not.toMatchObject({ part: "ZD2", afterPower: action.afterPower });
});

it("a bench without a thermometer switches off, and so does one whose board smoked or has blown its fuse", () => {
  expect(nextOn(["lamp-100"], "quiet").action).toEqual({ do: "unpower" });
  expect(nextOn(CAMERA, "smoke").action).toEqual({ do: "unpower" });
  expect(nextOn(CAMERA, "fuse-blew").action).toEqual({ do: "unpower" });
});
