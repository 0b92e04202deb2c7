import { expect, it } from "vitest";
import type { JobEvent, Observed } from "../bench/event.ts";
import { plain } from "../messages/said.ts";
import { ladderStates } from "./ladder-states.ts";
import { benchRungs, mainsRung, nextOnMains, openBenchRungs, triedRungs } from "./power-ladder.ts";
import { provenEmpty, scene, smallDriveBoard } from "./scene.fixture.ts";

const BOARD = smallDriveBoard();
const OFF: readonly JobEvent[] = [{ do: "unpower" }, ...provenEmpty(BOARD)];

function inputAfter(log: readonly JobEvent[], equipment: readonly string[] = ["lamp-100"]) {
  return scene(BOARD, [...provenEmpty(BOARD), ...log], { equipment }).input;
}

function next(log: readonly JobEvent[], equipment?: readonly string[]) {
  return nextOnMains(inputAfter(log, equipment))?.action ?? null;
}

function lamp(observed: Observed, watts = 100): JobEvent {
  return { do: "power", feed: "lamp", watts, observed };
}
function volts(red: string, reading: number): JobEvent {
  return { do: "measure", mode: "dcv", red, black: "NBUS", reading };
}

it("with one meter and a lamp: the lamp, its bus read, then the mains, and nothing twice on the same board", () => {
  expect(next([])).toEqual({ do: "power", feed: "lamp", watts: 100 });
  const dark = [lamp("lamp-dark"), volts("PBUS", 318), ...OFF];
  expect(next(dark)).toEqual({ do: "power", feed: "mains" });
  expect(next([...dark, { do: "power", feed: "mains", observed: "quiet" }, ...OFF])).toBeNull();
  expect(next([...dark, { do: "replace", part: "BR1" }])).toMatchObject({ feed: "lamp" });
});

it("a lamp gone dark proves nothing until the bus, or a rail made from it, was read at its volts", () => {
  expect(next([lamp("lamp-dark"), ...OFF])).toMatchObject({ feed: "lamp" });
  expect(next([lamp("lamp-dark"), volts("V15", 14.8), ...OFF])).toMatchObject({ feed: "mains" });
  // a dead rail says nothing of the bus
  expect(next([lamp("lamp-dark"), volts("V15", 0.1), ...OFF])).toMatchObject({ feed: "lamp" });
  // dark with the bus empty: the feed is open, and the mains would show no more
  expect(next([lamp("lamp-dark"), volts("PBUS", 3), ...OFF])).toBeNull();
  // it ran: nothing else makes it run
  expect(next([lamp("runs"), ...OFF])).toMatchObject({ feed: "mains" });
});

it("a lamp that stays bright stops the ladder until the board has been worked on, or the technician goes on", () => {
  const bright = [lamp("lamp-bright"), ...OFF];
  expect(next(bright)).toBeNull();
  expect(next([...bright, { do: "replace", part: "BR1" }])).toMatchObject({ feed: "lamp" });
  expect(next([...bright, { do: "overrule", why: "the lamp was the wrong one" }])).toMatchObject({
    feed: "mains",
  });
  expect(
    next([lamp("lamp-dark"), volts("PBUS", 3), ...OFF, { do: "overrule", of: "proof", why: "-" }]),
  ).toBeNull();
});

it("pulsing may be the lamp itself: the next larger one is tried, and without one the mains at their own risk", () => {
  const pulsing = [lamp("lamp-pulsing", 40), ...OFF];
  expect(next(pulsing, ["lamp-40", "lamp-150"])).toEqual({ do: "power", feed: "lamp", watts: 150 });
  expect(next(pulsing, ["lamp-40"])).toEqual({ do: "power", feed: "mains" });
  // once: borne or not, the mains do not come again of themselves
  const borne = [...pulsing, { do: "power", feed: "mains", observed: "quiet" } as const, ...OFF];
  expect(next(borne, ["lamp-40"])).toBeNull();
  // with anything harder than pulsing it is no question of the lamp
  const bright = [
    { do: "power", feed: "lamp", watts: 40, observed: ["lamp-pulsing", "lamp-bright"] } as const,
    ...OFF,
  ];
  expect(next(bright, ["lamp-40", "lamp-150"])).toBeNull();
  const larger = [...pulsing, lamp("lamp-dark", 150), volts("PBUS", 320), ...OFF];
  expect(next(larger, ["lamp-40", "lamp-150"])).toEqual({ do: "power", feed: "mains" });
});

it("plugging a motor back is no work on the board: after the mains without it the mains with it follow", () => {
  const without: readonly JobEvent[] = [
    { do: "remove", part: "M1" },
    lamp("lamp-dark"),
    volts("PBUS", 318),
    ...OFF,
    { do: "power", feed: "mains", observed: "runs" },
    ...OFF,
  ];
  expect(triedRungs(BOARD, inputAfter(without).timeline).map(({ id }) => id)).toEqual(["E", "F"]);
  expect(nextOnMains(inputAfter(without))).toBeNull();
  const plugged = inputAfter([...without, { do: "restore", part: "M1" }]);
  expect(nextOnMains(plugged)).toEqual(mainsRung(plugged));
  expect(mainsRung(plugged).id).toBe("H");
});

it("a bench supply adds each rail at its own volts and the bus at a few, and none of them once the mains were borne", () => {
  expect(benchRungs(inputAfter([], ["lamp-100"]))).toEqual([]);
  const bench = ["lamp-100", "bench-supply", "high-voltage-supply"];
  const rungs = benchRungs(inputAfter([], bench));
  expect(rungs.map(({ id }) => id).sort()).toEqual(["A", "B", "C", "D"]);
  for (const { id, action } of rungs) {
    expect(action.limitAmps).toBeLessThanOrEqual(1);
    if (id === "C") expect(action.volts).toBeLessThanOrEqual(60);
    if (id === "D") expect(action.volts).toBeLessThanOrEqual(150);
  }
  const first = rungs[0].action;
  const tried: JobEvent = { ...first, observed: "quiet" };
  expect(openBenchRungs(inputAfter([tried, ...OFF], bench)).map(({ action }) => action)).not.toContainEqual(
    first,
  );
  expect(openBenchRungs(inputAfter([lamp("lamp-dark"), volts("PBUS", 318), ...OFF], bench))).toEqual([]);
});

it("every rung that is shut says why, and what would open it", () => {
  const at = (log: readonly JobEvent[], equipment?: readonly string[]) => {
    const input = inputAfter(log, equipment);
    const now = nextOnMains(input);
    if (now === null) throw new Error("no rung");
    return new Map(
      ladderStates(input, now).map(({ name, state, note }) => [
        plain(name),
        plain(`${state}: ${note ?? ""}`),
      ]),
    );
  };
  const lampOnly = at([]);
  expect(lampOnly.get("bench supply into a rail")).toBe("shut: wants a bench supply with a current limit");
  expect(lampOnly.get("mains through a series lamp")).toBe("now: ");
  expect(lampOnly.get("mains with its motor and load")).toMatch(
    /^shut: after the lamp has gone dark or dim, and the bus/,
  );
  expect(at([], []).get("mains through a series lamp")).toMatch(/^shut: wants a series lamp/);
  const dark = at([lamp("lamp-dark"), volts("PBUS", 318), ...OFF]);
  expect(dark.get("mains through a series lamp")).toBe("done: ");
  expect(dark.get("mains with its motor and load")).toBe("now: ");
  // a motor with something against it keeps its own rung shut, not the one without it
  const badMotor: readonly JobEvent[] = [
    { do: "remove", part: "M1" },
    { do: "answer", question: "motor-insulation", answer: "under 2" },
  ];
  expect(at(badMotor).get("mains with its motor and load")).toMatch(
    /^shut: M1 reads under 10 Mohm to earth: until/,
  );
});
