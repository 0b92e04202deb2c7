import { describe, expect, test } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { plain } from "../messages/said.ts";
import { DEFAULT_TERMS } from "../money/terms.ts";
import { makeSafe } from "./make-safe.ts";
import { provenEmpty, smallDriveBoard } from "./scene.fixture.ts";

const BOARD = smallDriveBoard();
const SAFE = provenEmpty(BOARD);

function due(log: readonly JobEvent[], equipment: readonly string[] = []) {
  const folded = foldLog(BOARD, [], log);
  if (!folded.ok) throw new Error(folded.problem);
  const timeline = folded.value;
  return makeSafe({ board: BOARD, bench: timeline.now, timeline, terms: DEFAULT_TERMS, equipment });
}

const volts = (ref: string, reading: number | "OL"): JobEvent => ({
  do: "measure",
  mode: "dcv",
  red: `${ref}.plus`,
  black: `${ref}.minus`,
  reading,
});
const others = (...refs: readonly string[]) =>
  SAFE.filter((event) => event.do === "measure" && !refs.some((ref) => event.red === `${ref}.plus`));

describe("a store that reads charged", () => {
  test("gets the resistor that the bench has, with the seconds of the whole capacitance between its pins", () => {
    // 340 uF of the pair in series, and 0.22 uF, from 385 V through 4.7 kohm: 5.8 s
    const step = due([...others("C3"), volts("C3", 385)], ["resistor-4700", "resistor-10000"]);
    expect(step?.action).toEqual({ do: "clip", at: ["C3.plus", "C3.minus"], ohms: 4700 });
    expect(plain(step?.why ?? "")).toContain("25 J");
    expect(plain(step?.why ?? "")).toContain(
      "4.7 kohm, 10 W, across its own pins: about 6 s to fall below 10 V, 32 W at first.",
    );
  });

  test("gets one to choose where the bench has none, or a lamp it has", () => {
    const log = [...others("C1"), volts("C1", 160)];
    expect(plain(due(log)?.why ?? "")).toContain("2.2 kohm, 10 W or more, wire-wound");
    expect(plain(due(log)?.why ?? "")).not.toContain("lamp");
    expect(plain(due(log, ["lamp-100"])?.why ?? "")).toContain(
      "the 100 W lamp across it does it in a flash; a dark lamp is no proof",
    );
    expect(plain(due([...others("C3"), volts("C3", 385)], ["lamp-100"])?.why ?? "")).toContain(
      "two such lamps in series",
    );
    expect(plain(due(log, ["lamp-100", "resistor-2200"])?.why ?? "")).not.toContain("lamp");
  });

  test("is said to come back by itself, a large electrolytic by 15 %, a film hardly", () => {
    expect(plain(due([...others("C1"), volts("C1", 160)])?.why ?? "")).toContain("come back to 24 V");
    expect(plain(due([...others("C3"), volts("C3", 160)])?.why ?? "")).not.toContain("come back");
  });

  test("above the meter's range is taken for what it may hold at most", () => {
    expect(plain(due([...others("C1"), volts("C1", "OL")])?.why ?? "")).toContain(
      "reads over the meter's range",
    );
  });
});

describe("with the resistor on", () => {
  const CHARGED = [...others("C1", "C2", "C3"), volts("C1", 190), volts("C2", 180), volts("C3", 370)];
  const CLIPPED: JobEvent[] = [...CHARGED, { do: "clip", at: ["C3.plus", "C3.minus"], ohms: 2200 }];

  test("a pair empties with what stands across it: all are read again before another clip goes on", () => {
    expect(due(CLIPPED)?.action).toMatchObject({ mode: "dcv", red: "C3.plus" });
    const first = due([...CLIPPED, volts("C3", 2)]);
    expect([first?.action, ...(first?.row ?? [])]).toMatchObject([{ red: "C1.plus" }, { red: "C2.plus" }]);
  });

  test("what does not fall is still fed, and the card says so", () => {
    expect(plain(due([...CLIPPED, volts("C3", 365)])?.why ?? "")).toContain("something still feeds it");
  });

  test("what the resistor does not reach is next: off there, on here", () => {
    const left = [...CLIPPED, volts("C3", 2), volts("C1", 1), volts("C2", 30)];
    expect(due(left)?.action).toMatchObject({ do: "unclip", at: ["C3.plus", "C3.minus"] });
    expect(due([...left, { do: "unclip", at: ["C3.plus", "C3.minus"], ohms: 2200 }])?.action).toMatchObject({
      do: "clip",
      at: ["C2.plus", "C2.minus"],
    });
  });

  test("it comes off once all is empty, unless that was overruled", () => {
    const empty = [...CLIPPED, volts("C3", 2), volts("C1", 1), volts("C2", 1)];
    expect(due(empty)?.action.do).toBe("unclip");
    expect(due([...empty, { do: "overrule", why: "it stays while I solder", of: "resistor" }])).toBeNull();
  });
});

test("the card says what the proof was lost by", () => {
  expect(plain(due([])?.why ?? "")).toContain("Nothing says yet that this board is dead");
  expect(plain(due([...SAFE, { do: "note", text: "", turned: "M1" }])?.why ?? "")).toContain(
    "What turned has charged the bus",
  );
  expect(
    plain(due([...SAFE, { do: "measure", mode: "acv", red: "U", black: "V", reading: 30 }])?.why ?? ""),
  ).toContain("Is the plug out");
  expect(plain(due([...SAFE, { do: "replace", part: "C1" }])?.why ?? "")).toContain("brings its own charge");
});
