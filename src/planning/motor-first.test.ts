import { expect, it } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { plain } from "../messages/said.ts";
import { MOTOR_INSULATION } from "../priors/told.ts";
import { minutesOf } from "./action-minutes.ts";
import { minutesOfMotorGate, motorGate, motorWords } from "./motor-first.ts";
import { provenEmpty, scene, smallDriveBoard } from "./scene.fixture.ts";

const PLUG = { remove: 0.5, restore: 0.5 };
const BOARD = smallDriveBoard((raw) => {
  raw.parts.M1 = { ...raw.parts.M1, kind: "motor", pins: { u: "U", v: "V", w: "W" }, minutes: PLUG };
});
const at = (...log: readonly JobEvent[]) => scene(BOARD, [...provenEmpty(BOARD), ...log]).input;

const BACK = { do: "restore", part: "M1" } as const;
const APART: JobEvent = { do: "remove", part: "M1" };
const ohms = (a: string, b: string, reading: number | "OL"): JobEvent => ({
  do: "measure",
  mode: "ohms",
  red: `M1.${a}`,
  black: `M1.${b}`,
  reading,
});
const ALIKE = [ohms("u", "v", 4), ohms("v", "w", 4.1), ohms("u", "w", 4)];
const insulation = (answer: string): JobEvent => ({
  do: "answer",
  question: MOTOR_INSULATION.question,
  answer,
});

it("a motor is unplugged, its windings read in one row, its insulation asked: once; it goes back on once the mains were borne", () => {
  expect(motorGate(at())?.action).toEqual(APART);
  const windings = motorGate(at(APART));
  expect(windings?.action).toEqual({ do: "measure", mode: "ohms", red: "M1.u", black: "M1.v" });
  expect(windings?.row).toHaveLength(2);
  expect(windings?.inHand).toBe("M1");
  const asked = motorGate(at(APART, ...ALIKE));
  expect(asked?.action).toMatchObject({ do: "answer", question: MOTOR_INSULATION.question });
  expect(plain(asked?.why ?? "")).toMatch(
    /never on the board.*over 10 Mohm; the maker's limit goes before it/,
  );
  const read = [APART, ...ALIKE, insulation("over 50")];
  expect(motorGate(at(...read))).toBeNull();
  expect(plain(motorWords(at(...read)).join(" "))).toContain(
    "M1 stays unplugged: the first power is without a motor",
  );
  const borne = [...read, { do: "power", feed: "mains", observed: "runs" }, { do: "unpower" }] as const;
  expect(motorGate(at(...borne))?.action).toEqual(BACK);
  const back = at(...borne, BACK);
  expect(motorGate(back)).toBeNull();
  expect(minutesOfMotorGate(back)).toBe(0);
  expect(plain(motorWords(back).join(" "))).toContain("reads well and is plugged in");
});

it("however well it reads, the first power after work on the board is without it, unless that was overruled", () => {
  const plugged = [APART, ...ALIKE, insulation("over 50"), BACK];
  expect(motorGate(at(...plugged))).toMatchObject({ action: APART, gate: "motor" });
  expect(plain(motorGate(at(...plugged))?.why ?? "")).toMatch(/reads well.*first power is without a motor/);
  const lamp: readonly JobEvent[] = [
    { do: "power", feed: "lamp", watts: 100, observed: "lamp-dark" },
    { do: "measure", mode: "dcv", red: "PBUS", black: "NBUS", reading: 318 },
    { do: "unpower" },
  ];
  expect(motorGate(at(...plugged, ...lamp))?.action).toEqual(APART);
  const mains: readonly JobEvent[] = [{ do: "power", feed: "mains", observed: "quiet" }, { do: "unpower" }];
  expect(motorGate(at(...plugged, ...mains))).toBeNull();
  expect(motorGate(at(...plugged, ...mains, { do: "replace", part: "F1" }))?.action).toEqual(APART);
  expect(
    motorGate(at(...plugged, { do: "overrule", of: "motor", why: "It runs on another board" })),
  ).toBeNull();
});

it("all of it together takes no more than three minutes", () => {
  const input = at();
  const taken = [APART, ...ALIKE, { do: "restore", part: "M1" } as const].reduce(
    (sum, event) => sum + minutesOf(BOARD, input.timeline.now, event),
    0,
  );
  expect(taken).toBeLessThanOrEqual(3);
  expect(minutesOfMotorGate(input)).toBeCloseTo(taken, 9);
});

it("no motor is asked about where none came with the board", () => {
  const without = smallDriveBoard((raw) => {
    delete raw.parts.M1;
  });
  expect(motorGate(scene(without, provenEmpty(without)).input)).toBeNull();
});

it("one tap and a reason pass over the gate, and a motor fitted anew is asked about again", () => {
  const overrule: JobEvent = { do: "overrule", of: "motor", why: "It runs on another board" };
  expect(motorGate(at(overrule))).toBeNull();
  expect(plain(motorWords(at(overrule)).join(" "))).toContain("as overruled");
  expect(motorGate(at(APART, overrule))?.action).toEqual({ do: "restore", part: "M1" });
  expect(motorGate(at({ do: "overrule", why: "not now" }))?.action).toEqual(APART);
  expect(motorGate(at(overrule, { do: "replace", part: "M1" }))?.action).toEqual(APART);
});

it("a motor with something against it stays apart, and power may come without it", () => {
  for (const bad of [
    [ohms("u", "v", 4), ohms("v", "w", 2.5), ohms("u", "w", 4)],
    [ohms("u", "v", "OL")],
    [...ALIKE, insulation("2 to 10")],
    [...ALIKE, insulation(MOTOR_INSULATION.notRead)],
  ]) {
    const input = at(APART, ...bad);
    expect(motorGate(input)).toBeNull();
    expect(plain(motorWords(input).join(" "))).toMatch(/M1 stays unplugged: /);
    // plugged back all the same, it comes off again
    expect(motorGate(at(APART, ...bad, { do: "restore", part: "M1" }))?.action).toEqual(APART);
  }
});

it("windings read through the board's own switches say nothing of the motor", () => {
  expect(motorGate(at(...ALIKE, insulation("over 50")))?.action).toEqual(APART);
});

it("where the plug counts as a part to take off, it comes off contact by contact", () => {
  const slow = smallDriveBoard();
  const input = scene(slow, provenEmpty(slow)).input;
  expect(motorGate(input)?.action).toEqual({ do: "lift", place: "M1.u" });
});
