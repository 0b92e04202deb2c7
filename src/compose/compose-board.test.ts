/** Boards out of answers: whatever is answered, the file is whole and the program sees in it what was said. */

import { describe, expect, it } from "vitest";
import type { Board } from "../board/board.ts";
import { parseBoard } from "../board/parse-board.ts";
import { deriveRoles } from "../board/roles.ts";
import { knownWords } from "../messages/known-words.ts";
import { isSaid, plain } from "../messages/said.ts";
import { type Answers, choicesOf, settleAnswers } from "./answers.ts";
import { composeBoard, type Heading } from "./compose-board.ts";
import { QUESTIONS, type QuestionId } from "./questions.ts";

function composed(answers: Answers, heading?: Heading): Board {
  const made = composeBoard(answers, heading);
  if (!made.ok) throw new Error(made.problem);
  const board = parseBoard(made.value.board);
  if (!board.ok) throw new Error(board.problem);
  return board.value;
}

/** Every fitting choice of one question, beside the others' defaults and these answers. */
function eachChoice(id: QuestionId, answers: Answers): readonly Answers[] {
  const question = QUESTIONS.find((one) => one.id === id);
  const settled = settleAnswers(answers);
  if (question === undefined || !settled.ok || !settled.value.values.has(id)) return [];
  const values =
    question.kind === "number"
      ? [`${question.least}`, "2", "5"]
      : choicesOf(question, settled.value.values).map(({ value }) => value);
  return values.map((value) => ({ ...answers, [id]: value }));
}

const FIRST_FOUR = ["supply", "boost", "switches", "rails"] as const;
const firstAnswers = FIRST_FOUR.reduce<readonly Answers[]>(
  (sets, id) => sets.flatMap((answers) => eachChoice(id, answers)),
  [{}],
);
const rest = QUESTIONS.filter(({ first }) => !first).map(({ id }) => id);
/** All ways through the first four; beside each, one other question's every answer, the questions taken in turn. */
const WAYS = firstAnswers.flatMap((answers, i) => [
  answers,
  ...eachChoice(rest[i % rest.length], answers),
  ...eachChoice(rest[(i + 7) % rest.length], answers),
]);

function looseNets(board: Board): readonly string[] {
  const pins = new Map<string, number>();
  const onPlug = new Set<string>();
  for (const part of board.parts.values())
    for (const net of part.pins.values()) {
      pins.set(net, (pins.get(net) ?? 0) + 1);
      if (part.plugged) onPlug.add(net);
    }
  return [...pins]
    .filter(([net, n]) => n < 2 && !board.supply.at.includes(net) && !onPlug.has(net))
    .map(([net]) => net);
}

describe("a board made of answers", () => {
  it("is made of words that can be told in another language, name, nets, places and parts", () => {
    for (const answers of WAYS) {
      const { name, nets, points, parts } = composed(answers);
      const labels = [...nets.values()].filter((label) => label !== null);
      const roles = [...parts.values()].flatMap(({ role }) => role ?? []);
      const texts = new Set([name, ...labels, ...points.flatMap(({ at }) => at ?? []), ...roles]);
      expect(
        [...texts].filter((text) => !isSaid(knownWords(text)) || plain(knownWords(text)) !== text),
      ).toEqual([]);
    }
  });

  it("is whole, whatever is answered: no loose net, a source on every rail, the bus and every switch found", () => {
    expect(WAYS.length).toBeGreaterThan(200);
    for (const answers of WAYS) {
      const board = composed(answers);
      const roles = deriveRoles(board);
      const said = JSON.stringify(answers);
      expect([said, looseNets(board)]).toEqual([said, []]);
      for (const rail of board.rails) {
        const source = board.parts.get(rail.from ?? "");
        expect([said, rail.name, [...(source?.pins.values() ?? [])].includes(rail.net)]).toEqual([
          said,
          rail.name,
          true,
        ]);
      }
      expect([said, roles.bus?.plus, roles.bus?.minus]).toEqual([said, "PBUS", "NBUS"]);
      expect([said, roles.motorSwitches.length]).toEqual([said, 6]);
      expect([said, roles.boosts.length]).toEqual([said, answers.boost === "switch" ? 1 : 0]);
      const settled = settleAnswers(answers);
      const inrush = settled.ok && settled.value.values.get("inrush") !== "none" ? 1 : 0;
      expect([said, roles.inrush.length]).toEqual([said, inrush]);
    }
  });

  it("takes for not seen what nobody answered for, and that alone", () => {
    const open = composed({ supply: "230-1", boost: "none", switches: "discrete", rails: "15,5" });
    const seen = (board: Board, assumed: boolean, kind: string) =>
      [...board.parts.values()].filter((part) => part.kind === kind && part.assumed === assumed).length;
    expect(seen(open, true, "igbt")).toBe(0);
    expect(seen(open, false, "igbt")).toBe(6);
    expect(seen(open, true, "switcher")).toBe(1);
    const gates = [...open.parts.values()].filter((part) => part.stage === "drive");
    expect(gates.length).toBeGreaterThan(20);
    expect(gates.every((part) => part.assumed)).toBe(true);
    const all: Record<string, string> = {};
    for (const { id } of QUESTIONS) {
      const settled = settleAnswers(all);
      const usual = settled.ok ? settled.value.values.get(id) : undefined;
      if (usual !== undefined) all[id] = usual;
    }
    expect([...composed(all).parts.values()].filter((part) => part.assumed)).toEqual([]);
  });

  it("states no amps of a fuse that nobody has read, and no capacitor beyond what it bears", () => {
    const open = composed({
      supply: "230-1",
      boost: "none",
      switches: "module",
      rails: "15,5",
      filter: "plain",
    });
    const read = composed({
      supply: "230-1",
      boost: "none",
      switches: "module",
      rails: "15,5",
      filter: "plain",
      fuseAmps: "6.3",
    });
    expect(open.parts.get("F1")?.value.amps).toBeUndefined();
    expect(open.parts.get("F1")?.assumed).toBe(false);
    expect(read.parts.get("F1")?.value.amps).toBe(6.3);
    const high = { supply: "400-3", boost: "none", switches: "discrete", rails: "15,5" };
    expect(settleAnswers({ ...high, bus: "parallel" }).ok).toBe(false);
    const diodes = [...composed(high).parts.values()].filter(
      ({ kind, stage, value }) => kind === "diode" && stage === "drive" && value.type === "fast",
    );
    expect(diodes).toHaveLength(3);
    for (const { value } of diodes) expect(value.volts).toBe(1200);
  });

  it("takes a number as a person writes it, blanks round it, and no other spelling", () => {
    const first = { supply: "230-1", boost: "none", switches: "module", rails: "15,5" };
    expect(composed({ ...first, busMicrofarads: " 330 " }).parts.get("C5")).toBeDefined();
    for (const busMicrofarads of ["1e3", "0x1f4", "3,3", ""])
      expect(settleAnswers({ ...first, busMicrofarads }).ok, busMicrofarads).toBe(false);
    expect(settleAnswers({ ...first, busCount: "1.5" }).ok).toBe(false);
  });

  it("puts series capacitors, a charge resistor and 1200 V switches behind three phases of 400 V", () => {
    const board = composed({ supply: "400-3" });
    const roles = deriveRoles(board);
    const electrolytics = roles.busCapacitors.filter(
      (ref) => board.parts.get(ref)?.value.type === "electrolytic",
    );
    expect(electrolytics.map((ref) => board.parts.get(ref)?.value.volts)).toEqual([400, 400]);
    expect(roles.inrush.map((ref) => board.parts.get(ref)?.kind)).toEqual(["resistor"]);
    expect(board.parts.get("M1")?.value.volts).toBe(1200);
    expect(board.supply.at).toHaveLength(3);
  });

  it("carries the values that were answered, its name and family", () => {
    const board = composed(
      { busMicrofarads: "330", busCount: "3", fuseAmps: "6.3" },
      { name: "pump drive", family: "pump" },
    );
    const caps = [...board.parts.values()].filter((part) => part.value.farads === 330e-6);
    expect(caps).toHaveLength(3);
    expect(board.parts.get("F1")?.value.amps).toBe(6.3);
    expect([board.name, board.family]).toEqual(["pump drive", "pump"]);
    expect(composed({}).name).toBe("own board, 230 V, one phase, no boost, power module, 15 V, 5 V");
  });

  it("leaves prices to the program's table: nobody has said what these parts cost", () => {
    expect([...composed({}).parts.values()].filter((part) => part.price !== null)).toEqual([]);
  });
});

describe("an answer that cannot be", () => {
  it.each([
    [{ suply: "230-1" }, /"suply" is no question; did you mean "supply"/],
    [{ supply: "230" }, /^supply: "230" is no answer.*answers: 230-1, /],
    [
      { supply: "400-3", boost: "switch" },
      /^boost: "switch" does not go with the answers before it; none do/,
    ],
    [{ controller: "3.3" }, /^controller: "3.3" does not go with the answers before it; 5, plug do/],
    [{ relays: "two" }, /^relays: expected a number of relays from 0 to 7, found "two"/],
    [{ busCount: "1.5" }, /^busCount: expected a number of capacitors from 1 to 12/],
  ])("%o is refused in one line that names the question", (answers, words) => {
    const made = composeBoard(answers as unknown as Answers);
    expect(made.ok ? "" : plain(made.problem)).toMatch(words);
  });
});
