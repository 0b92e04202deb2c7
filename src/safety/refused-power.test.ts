import { expect, test } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { parseBoard } from "../board/parse-board.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { plain } from "../messages/said.ts";
import { MOTOR_INSULATION } from "../priors/told.ts";
import { refusedPower } from "./refused-power.ts";

const board = (() => {
  const parsed = parseBoard(smallDrive());
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
})();
const CLIP = { at: ["C1.plus", "C1.minus"] as const, ohms: 2200 };
const ON: JobEvent = { do: "clip", ...CLIP };
const POWER: JobEvent = { do: "power", feed: "lamp", watts: 100 };
const UNPLUGGED: JobEvent = { do: "remove", part: "M1" };
const refusedOn = (absent: readonly string[], log: readonly JobEvent[], kept = 0) => {
  const problem = refusedPower({ board, absent, log }, kept);
  return problem === null ? null : plain(problem);
};
/** The board without its motor: a resistor alone may be in the way. */
const refused = (log: readonly JobEvent[], kept = 0) => refusedOn(["M1"], log, kept);
const overrule = (of?: "proof" | "resistor" | "proposal"): JobEvent => ({
  do: "overrule",
  why: "it stays on",
  ...(of === undefined ? {} : { of }),
});

test("power with the discharging resistor on is refused, in a line that says what to do", () => {
  expect(refused([ON, POWER])).toBe(
    "log[1].do: 2200 ohm is still clipped on between C1.plus and C1.minus: take it off before power (unclip), or overrule with a reason; left on it burns, and is reached for live",
  );
  expect(refused([ON, { do: "unclip", ...CLIP }, POWER])).toBeNull();
  expect(refused([POWER])).toBeNull();
});

test("a log that holds such a power-up already stays readable and goes on", () => {
  expect(refused([ON, POWER, { do: "unpower" }], 2)).toBeNull();
  expect(refused([ON, POWER, { do: "unpower" }, POWER], 3)).toContain("log[3].do");
});

test("whoever overrules it powers on; until the next power, and for the resistors that were on", () => {
  expect(refused([ON, overrule("resistor"), POWER])).toBeNull();
  expect(refused([ON, overrule("resistor"), { do: "note", text: "" }, POWER])).toBeNull();
  expect(refused([ON, overrule("resistor"), POWER, { do: "unpower" }, POWER])).toContain("log[4]");
  expect(
    refused([ON, overrule("resistor"), { do: "clip", at: ["C2.plus", "C2.minus"], ohms: 4700 }, POWER]),
  ).toContain("(and 1 more)");
});

test("an overrule that does not say of what counts directly before power; one of the proof or of a mere proposal does not", () => {
  expect(refused([ON, overrule(), POWER])).toBeNull();
  expect(refused([ON, overrule(), { do: "note", text: "" }, POWER])).not.toBeNull();
  expect(refused([ON, overrule("proposal"), POWER])).not.toBeNull();
  expect(refused([ON, overrule("proof"), POWER])).not.toBeNull();
});

const MAINS: JobEvent = { do: "power", feed: "mains" };
const OHMS = [
  ["u", "v"],
  ["v", "w"],
  ["u", "w"],
].map(([a, b]): JobEvent => ({ do: "measure", mode: "ohms", red: `M1.${a}`, black: `M1.${b}`, reading: 4 }));
const INSULATED: JobEvent = { do: "answer", question: MOTOR_INSULATION.question, answer: "over 50" };
const PLUGGED: JobEvent = { do: "restore", part: "M1" };

test("typed mains, straight or through a lamp, wait for a motor that is plugged in unread", () => {
  for (const typed of [MAINS, POWER, { ...MAINS, load: "own" } as const])
    expect(refusedOn([], [typed])).toMatch(
      /^log\[0\]\.do: M1 has not been read: pull its plug.*or overrule with a reason \(overrule motor WHY\)$/,
    );
  expect(refusedOn([], [UNPLUGGED, MAINS])).toBeNull();
  expect(refusedOn([], [UNPLUGGED, ...OHMS, PLUGGED, MAINS])).not.toBeNull();
  expect(refusedOn([], [UNPLUGGED, ...OHMS, INSULATED, PLUGGED, MAINS])).toBeNull();
  expect(
    refusedOn([], [{ do: "power", feed: "bench", volts: 15, limitAmps: 0.1, at: ["V15", "NBUS"] }]),
  ).toBeNull();
});

test("the motor is driven unread for one tap and a reason, and a log that holds such a power-up goes on", () => {
  const overruled: JobEvent = { do: "overrule", of: "motor", why: "It runs on another board" };
  expect(refusedOn([], [overruled, MAINS])).toBeNull();
  expect(refusedOn([], [{ do: "overrule", why: "I know" }, MAINS])).toBeNull();
  expect(refusedOn([], [{ do: "overrule", of: "proposal", why: "I know" }, MAINS])).not.toBeNull();
  expect(refusedOn([], [MAINS, { do: "unpower" }], 1)).toBeNull();
});
