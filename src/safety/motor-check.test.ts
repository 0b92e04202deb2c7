import { expect, it } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { parseBoard } from "../board/parse-board.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { plain } from "../messages/said.ts";
import { MOTOR_INSULATION } from "../priors/told.ts";
import { motorCheck, motorInTheWay, motorsOf } from "./motor-check.ts";

function against(answer: string, family = "frequency drive"): string | null {
  const parsed = parseBoard({ ...smallDrive(), family });
  if (!parsed.ok) throw new Error(parsed.problem);
  const board = parsed.value;
  const log: readonly JobEvent[] = [
    { do: "remove", part: "M1" },
    { do: "answer", question: MOTOR_INSULATION.question, answer },
  ];
  const timeline = foldLog(board, [], log);
  if (!timeline.ok) throw new Error(timeline.problem);
  const [motor] = motorsOf(board, new Set());
  const found = motorCheck(board, timeline.value, motor).against;
  return found === null ? null : plain(found);
}

it("a motor is sound from ten megohms to earth, whichever way the figure is written", () => {
  for (const sound of ["over 50", "10 to 50", "12", "12,5 Mohm", "OL"]) expect(against(sound)).toBeNull();
  for (const bad of ["2 to 10", "under 2", "under 10", "0.8", "9.9 Mohm"])
    expect(against(bad)).toContain("under 10 Mohm to earth");
});

it("a hermetic compressor reads low when cold and full: warned under two megohms, and read again warm", () => {
  expect(against("2 to 10", "outdoor unit")).toBeNull();
  expect(against("under 2", "outdoor unit")).toMatch(/under 2 Mohm.*read it again warm/);
  expect(against("1.5", "outdoor unit")).toMatch(/read it again warm/);
});

it("what could not be read stands against it", () => {
  expect(against(MOTOR_INSULATION.notRead)).toContain("could not be read");
  expect(against("")).toContain("could not be read");
});

it("the mains wait for a motor that is plugged in unread, until it is pulled or overruled", () => {
  const parsed = parseBoard(smallDrive());
  if (!parsed.ok) throw new Error(parsed.problem);
  const waits = (...log: readonly JobEvent[]) => {
    const timeline = foldLog(parsed.value, [], log);
    if (!timeline.ok) throw new Error(timeline.problem);
    const waiting = motorInTheWay(parsed.value, timeline.value);
    return waiting === null ? null : plain(waiting);
  };
  expect(waits()).toMatch(/M1 has not been read: pull its plug/);
  expect(waits({ do: "remove", part: "M1" })).toBeNull();
  expect(waits({ do: "overrule", of: "motor", why: "It runs on another board" })).toBeNull();
  const low: JobEvent = { do: "answer", question: MOTOR_INSULATION.question, answer: "under 2" };
  expect(waits(low)).toMatch(/M1 reads under 10 Mohm to earth: pull/);
});
