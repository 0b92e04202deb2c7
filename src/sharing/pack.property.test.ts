/** A board that is given away: the same bytes for the same content, nothing of a customer in it, and no malformed file taken. */

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { VERDICTS } from "../bench/words.ts";
import { parseBoard } from "../board/parse-board.ts";
import { parseJob } from "../job/parse-job.ts";
import { plain } from "../messages/said.ts";
import { CAUSES, SYMPTOMS } from "../priors/cause.ts";
import { bring } from "./bring.ts";
import { outcomesOf, type PooledOutcomes, pooled } from "./outcomes.ts";
import { packText, readPack } from "./pack.ts";

const SEED = { seed: 20261126, numRuns: 150 };
const CANARY = "canary-7731";

const ohms = fc.double({ min: 1e-3, max: 1e9, noNaN: true });
const net = fc.constantFrom("A", "B", "C", "D+1", "E_2");
const part = fc.oneof(
  fc.record({
    kind: fc.constant("resistor"),
    pins: fc.record({ "2": net, "1": net }),
    value: fc.record({ ohms }),
    assumed: fc.constant(true),
  }),
  fc.record({
    kind: fc.constant("transformer"),
    // the order of a transformer's pins says which belong together
    pins: fc
      .shuffledSubarray(["p", "q", "r", "s"], { minLength: 4 })
      .map((pins) => Object.fromEntries(pins.map((pin) => [pin, "A"]))),
  }),
);
const board = fc
  .record({
    name: fc.string({ maxLength: 30 }),
    parts: fc.dictionary(fc.stringMatching(/^[A-Z][A-Z0-9]{1,4}$/), part),
  })
  .map(({ name, parts }) => ({
    format: "faultwright-board/1",
    name,
    family: "pump",
    supply: { kind: "dc", volts: 24, at: ["A", "B"] },
    zero: "B",
    nets: { A: { label: "in" }, B: {} },
    parts,
  }))
  .filter((content) => parseBoard(content).ok);
const count = fc.nat(5000);
const counts = (words: readonly string[]) => fc.dictionary(fc.constantFrom(...words), count);
const outcomes = fc.dictionary(
  fc.stringMatching(/^[a-z]{1,8}$/),
  fc.record({
    jobs: count,
    verdicts: counts(VERDICTS),
    causes: counts(CAUSES),
    symptoms: counts(SYMPTOMS),
    replaced: fc.constant({}),
  }),
);

describe("a packed board", () => {
  it("comes out byte for byte as it went in, however often", () => {
    fc.assert(
      fc.property(board, outcomes, (content, pool) => {
        const text = packText({ board: content, outcomes: pool as PooledOutcomes });
        const read = bring(text, "give.json", null);
        if (!read.ok) throw new Error(read.problem);
        expect(packText(read.value)).toBe(text);
        expect(packText(JSON.parse(JSON.stringify(read.value)))).toBe(text);
      }),
      SEED,
    );
  });

  it("is refused in one line wherever it was cut or changed into what it cannot be", () => {
    const sound = packText({
      board: {
        format: "faultwright-board/1",
        name: "pump",
        family: "pump",
        supply: { kind: "dc", volts: 24, at: ["A", "B"] },
        zero: "B",
        parts: { R1: { kind: "resistor", pins: { "1": "A", "2": "B" } } },
      },
      outcomes: {
        here: { jobs: 1, verdicts: { repaired: 1 }, causes: {}, symptoms: {}, replaced: { R1: 1 } },
      },
    });
    expect(bring(sound, "give.json", null).ok).toBe(true);
    fc.assert(
      fc.property(fc.nat(sound.length - 3), (at) => {
        const cut = bring(sound.slice(0, at), "give.json", null);
        expect(cut).toMatchObject({ ok: false, problem: expect.not.stringContaining("\n") });
      }),
      SEED,
    );
    const changed: readonly [string, string, RegExp][] = [
      ['"repaired": 1', '"repaired": -1', /outcomes\.here\.verdicts\.repaired: must be 0 or more/],
      ['"repaired": 1', '"repaired": 1.5', /expected a whole number/],
      ['"repaired": 1', '"mended": 1', /outcomes\.here\.verdicts\.mended/],
      ['"replaced": {\n    "R1"', '"replaced": {\n    "R2"', /outcomes\.here\.replaced\.R2/],
      ['"jobs": 1', '"jobs": 1, "customer": "x"', /outcomes\.here\.customer/],
      ['"resistor"', '"resistance"', /^give\.json: board: parts\.R1\.kind/],
      ["faultwright-pack/1", "faultwright-pack/9", /^give\.json: format/],
    ];
    for (const [from, to, why] of changed) {
      expect(sound).toContain(from);
      const read = bring(sound.replace(from, to), "give.json", null);
      expect(read.ok ? "" : plain(read.problem), to).toMatch(why);
    }
    expect(readPack(null).ok).toBe(false);
  });
});

describe("pictures in a packed board", () => {
  const content = {
    format: "faultwright-board/1",
    name: "pump",
    family: "pump",
    supply: { kind: "dc", volts: 24, at: ["A", "B"] },
    zero: "B",
    parts: { R1: { kind: "resistor", pins: { "1": "A", "2": "B" } } },
  };
  const face = { side: "top", width: 4, height: 3, turn: 90, type: "image/jpeg", data: "/9j/4A==" } as const;
  const pin = { place: "R1.1", side: "top", x: 0.25, y: 1 } as const;
  const packed = (pictures: unknown) =>
    JSON.stringify({ format: "faultwright-pack/1", board: content, outcomes: {}, pictures });

  it("come out as they went in, and are told of before they are kept", () => {
    const revision = "rev C";
    const pictures = {
      faces: [{ ...face, revision }],
      pins: [
        { ...pin, revision },
        { ...pin, place: "A" },
      ],
    };
    const text = packText({ board: content, outcomes: {}, pictures });
    const read = bring(text, "give.json", null);
    if (!read.ok) throw new Error(read.problem);
    expect(read.value.pictures).toEqual(pictures);
    expect(packText(read.value)).toBe(text);
    expect(plain(read.value.changes.at(-1) ?? "")).toBe("with a picture of the board, 2 places pinned");
    const none = bring(packText({ board: content, outcomes: {} }), "give.json", null);
    expect(none.ok && "pictures" in none.value).toBe(false);
  });

  it("are refused where they are no pictures of this board", () => {
    const wrong: readonly [unknown, RegExp][] = [
      [{ faces: [face, face], pins: [] }, /pictures\.faces: at most one picture a side/],
      [{ faces: [{ ...face, data: "<svg>" }], pins: [] }, /pictures\.faces\[0\]\.data/],
      [{ faces: [{ ...face, turn: 45 }], pins: [] }, /pictures\.faces\[0\]\.turn/],
      [{ faces: [{ ...face, taken: "here" }], pins: [] }, /pictures\.faces\[0\]\.taken/],
      [
        { faces: [], pins: [{ ...pin, place: "R9.1" }] },
        /pictures\.pins\[0\]\.place: this board has no such/,
      ],
      [{ faces: [], pins: [{ ...pin, x: 1.5 }] }, /pictures\.pins\[0\]\.x/],
      [{ faces: [{ ...face, revision: " " }], pins: [] }, /pictures\.faces\[0\]\.revision: expected 1 to 40/],
    ];
    for (const [pictures, why] of wrong) {
      const read = bring(packed(pictures), "give.json", null);
      expect(read.ok ? "" : plain(read.problem)).toMatch(why);
    }
  });
});

describe("counts of jobs", () => {
  const content = {
    format: "faultwright-board/1",
    name: "pump",
    family: "pump",
    supply: { kind: "dc", volts: 24, at: ["A", "B"] },
    zero: "B",
    parts: {
      R1: { kind: "resistor", pins: { "1": "A", "2": "B" } },
      R2: { kind: "resistor", pins: { "1": "A", "2": "B" } },
    },
  };
  const read = parseBoard(content);
  if (!read.ok) throw new Error(read.problem);
  const job = (cause: string, log: readonly object[]) => {
    const parsed = parseJob(
      { format: "faultwright-job/1", board: content, cause, symptom: "dead", log },
      null,
    );
    if (!parsed.ok) throw new Error(parsed.problem);
    return parsed.value;
  };

  it("are of closed jobs, a part once a job, undone entries not at all, and hold no word of anybody", () => {
    const said = { id: CANARY, who: CANARY };
    const jobs = [
      job("surge", [
        { do: "note", text: CANARY, ...said },
        { do: "replace", part: "R1", with: CANARY },
        { do: "replace", part: "R1", with: CANARY },
        { do: "replace", part: "R2", id: "wrong" },
        { do: "undo", of: "wrong" },
        { do: "overrule", why: CANARY },
        { do: "close", verdict: "repaired" },
      ]),
      job("water", [
        { do: "answer", question: CANARY, answer: CANARY },
        { do: "close", verdict: "not-economic" },
      ]),
      job("age", [{ do: "replace", part: "R2" }]),
    ];
    const own = outcomesOf(read.value, jobs);
    expect(own).toEqual({
      jobs: 2,
      verdicts: { "not-economic": 1, repaired: 1 },
      causes: { surge: 1, water: 1 },
      symptoms: { dead: 2 },
      replaced: { R1: 1 },
    });
    const text = packText({ board: content, outcomes: pooled({}, "here", own) });
    expect(text).not.toContain(CANARY);
    const shuffled = pooled({}, "here", outcomesOf(read.value, [...jobs].reverse()));
    expect(packText({ board: content, outcomes: shuffled })).toBe(text);
  });

  it("of one shop take the place of what it said before, beside those of others", () => {
    const [one, two] = [1, 2].map((jobs) => ({ jobs, verdicts: {}, causes: {}, symptoms: {}, replaced: {} }));
    if (one === undefined || two === undefined) throw new Error("two counts");
    expect(pooled({ b: one, z: one }, "b", two)).toEqual({ b: two, z: one });
    expect(Object.keys(pooled({ b: one }, "a", two))).toEqual(["a", "b"]);
  });
});
