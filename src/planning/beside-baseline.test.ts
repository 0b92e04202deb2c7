/** What a part read before it went in, and what it reads on the board. */
import { describe, expect, it } from "vitest";
import type { ColdMode, JobEvent, Reading } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { plain } from "../messages/said.ts";
import type { Predictor } from "../meter/prediction.ts";
import { DEFAULT_TERMS } from "../money/terms.ts";
import { amissWords, type Beside, baselineAgain, besideBaseline } from "./beside-baseline.ts";
import { coldRecheck } from "./cold-recheck.ts";
import type { PlanningInput } from "./planning-input.ts";
import { provenEmpty, scene, smallDriveBoard } from "./scene.fixture.ts";

const BOARD = smallDriveBoard();
const Q1 = BOARD.parts.get("Q1");
const [C, E] = ["c", "e"].map((pin) => Q1?.pins.get(pin) ?? "");
const inHand = (red: string, black: string, reading: Reading, mode: ColdMode = "diode"): JobEvent => ({
  do: "incoming",
  part: "Q1",
  mode,
  red,
  black,
  reading,
});
const onBoard = (red = E, black = C, reading: Reading = 0.46, mode: ColdMode = "diode"): JobEvent => ({
  do: "measure",
  mode,
  red,
  black,
  reading,
});
const FIT: JobEvent = { do: "replace", part: "Q1", with: "K40" };

function input(...log: readonly JobEvent[]): PlanningInput {
  const timeline = foldLog(BOARD, [], [...provenEmpty(BOARD), ...log]);
  if (!timeline.ok) throw new Error(timeline.problem);
  const { now } = timeline.value;
  return { board: BOARD, bench: now, timeline: timeline.value, terms: DEFAULT_TERMS, equipment: [] };
}

/** A board that shows this wherever it is asked. */
function showing(good: number | "OL"): Predictor {
  const raw = good === "OL" ? 3 : good;
  const { predictor } = scene(BOARD, []);
  return {
    ...predictor,
    predict: () => ({
      solved: true,
      raw,
      shown: good,
      centre: raw,
      spread: 0.01 * raw,
      common: 0,
      alike: 0,
      restsOn: [],
    }),
  };
}

const pairs = (of: PlanningInput) =>
  coldRecheck(of).row.map((one) => (one.do === "measure" ? `${one.mode} ${one.red} ${one.black}` : one.do));

describe("the cold re-check of a part that was read before it went in", () => {
  it("asks for the very readings that it had, on the board, and says what they are held against", () => {
    const fitted = input(inHand("e", "c", 0.46), inHand("g", "e", "OL"), FIT);
    const gate = Q1?.pins.get("g") ?? "";
    expect(pairs(fitted).slice(0, 2)).toEqual([`diode ${E} ${C}`, `diode ${gate} ${E}`]);
    expect(plain(coldRecheck(fitted).why)).toContain("held against what was read before it went in");
    expect(pairs(input(inHand("e", "c", 0.46), inHand("g", "e", "OL"), FIT, onBoard()))[0]).toBe(
      `diode ${gate} ${E}`,
    );
    expect(plain(coldRecheck(input(FIT)).why)).not.toContain("before it went in");
  });

  it("takes the reading of the part that went in, not of one that was put away or of the one before it", () => {
    const held = (...log: readonly JobEvent[]) =>
      besideBaseline(input(...log), showing("OL")).map((one) => one.before);
    expect(held(inHand("e", "c", 0.1), inHand("e", "c", 0.46), FIT)).toEqual([0.46]);
    expect(held(inHand("e", "c", 0.46), FIT, FIT)).toEqual([]);
    expect(held(inHand("e", "c", 0.46))).toEqual([]);
    // power has shown what it is worth
    const ran: readonly JobEvent[] = [{ do: "power", feed: "mains", observed: "quiet" }, { do: "unpower" }];
    expect(held(inHand("e", "c", 0.46), FIT, ...ran)).toEqual([]);
  });

  it.each<[string, ColdMode, Reading, Reading, number | "OL", Beside]>([
    ["a drop that has not moved", "diode", 0.46, 0.45, 0.46, "as before"],
    ["warm from the iron, 25 mV less", "diode", 0.46, 0.435, 0.46, "as before"],
    ["open before and after", "diode", "OL", "OL", "OL", "as before"],
    ["zero where there was a drop", "diode", 0.46, 0.002, 0.46, "short"],
    ["zero where it was open", "diode", "OL", 0.01, "OL", "short"],
    ["a gate that reads its resistor on the board", "diode", "OL", 1.2, 1.2, "as the board has it"],
    ["a gate that reads less than its resistor", "diode", "OL", 0.6, 1.2, "lower"],
    ["a drop where it was open", "diode", "OL", 0.5, "OL", "lower"],
    ["a drop that rose: a joint", "diode", 0.46, 0.62, 0.46, "higher"],
    ["a drop that rose, whatever the board is said to show", "diode", 0.46, 0.62, 0.62, "higher"],
    ["open where there was a drop", "diode", 0.46, "OL", 0.46, "higher"],
    ["a thumb that saw a junction where 0.46 was", "diode", 0.46, "junction", 0.46, "as before"],
    ["a thumb that saw zero where 0.46 was", "diode", 0.46, "zero", 0.46, "short"],
    ["a shunt by its ohms, with the leads", "ohms", 0.3, 0.5, 0.3, "as before"],
    ["10 kohm with 5 kohm across it on the board", "ohms", 10_000, 3_330, 3_330, "as the board has it"],
    ["a capacitor beside others of its bank", "farads", 330e-6, 1000e-6, 990e-6, "as the board has it"],
    ["a capacitor that lost half", "farads", 330e-6, 150e-6, 330e-6, "lower"],
    ["a capacitor that lost half, on any board", "farads", 330e-6, 150e-6, 150e-6, "lower"],
    ["a capacitor alone that reads more", "farads", 330e-6, 700e-6, 330e-6, "higher"],
  ])("says of %s what it is: %s %s, then %s, a good board %s: %s", (_, mode, was, is, good, says) => {
    const [found] = besideBaseline(
      input(inHand("e", "c", was, mode), FIT, onBoard(E, C, is, mode)),
      showing(good),
    );
    expect(found?.says).toBe(says);
    expect(found && amissWords(found) === null).toBe(says === "as before" || says === "as the board has it");
  });

  it("is the same reading at the part's own pins", () => {
    const [found] = besideBaseline(
      input(inHand("e", "c", 0.46), FIT, onBoard("Q1.e", "Q1.c", 0.46)),
      showing(0.46),
    );
    expect(found?.says).toBe("as before");
  });

  it("that shows a short is taken once more before power, and not a third time", () => {
    const log = [inHand("e", "c", 0.46), FIT, onBoard(E, C, 0.01)];
    const again = baselineAgain(input(...log), showing(0.46));
    expect(again?.action).toEqual({ do: "measure", mode: "diode", red: E, black: C });
    expect(plain(again?.why ?? "")).toMatch(/^Q1 reads a short where there was none before it went in/);
    expect(baselineAgain(input(...log, onBoard(E, C, 0.01)), showing(0.46))).toBeNull();
    expect(baselineAgain(input(inHand("e", "c", 0.46), FIT, onBoard()), showing(0.46))).toBeNull();
  });
});
