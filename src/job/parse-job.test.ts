import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { plain } from "../messages/said.ts";
import { DEFAULT_TERMS } from "../money/terms.ts";
import { lampWatts } from "./equipment.ts";
import { boardPathOf, parseJob } from "./parse-job.ts";

type Raw = Record<string, unknown>;

function rawJob(more: Raw = {}): Raw {
  return {
    format: "faultwright-job/1",
    board: smallDrive(),
    cause: "surge",
    symptom: "dead",
    log: [],
    ...more,
  };
}

function problemOf(more: Raw): string {
  const parsed = parseJob(rawJob(more), null);
  return parsed.ok ? "none" : plain(parsed.problem);
}

const lift = { do: "lift", place: "Q1.c" };

describe("a job file", () => {
  it("has the format's terms and meter where it gives none, with no price agreed", () => {
    const parsed = parseJob(rawJob(), null);
    expect(parsed).toMatchObject({
      ok: true,
      value: {
        cause: "surge",
        symptom: "dead",
        absent: [],
        equipment: [],
        terms: { currency: "EUR", ratePerHour: 30, agreedPrice: 140, newBoardPrice: 260, agreed: false },
        meter: {
          diodeOpenVolts: 3,
          diodeShortAmps: 0.0011,
          diodeMaxVolts: 2,
          ohmsOpenVolts: 0.5,
          beepOhms: 40,
        },
        log: [],
      },
    });
  });

  it("counts a price as agreed once it names one", () => {
    const parsed = parseJob(rawJob({ terms: { agreedPrice: 95, currency: "GBP" } }), null);
    expect(parsed.ok && parsed.value.terms).toEqual({
      currency: "GBP",
      ratePerHour: 30,
      agreedPrice: 95,
      newBoardPrice: 260,
      feeIfNotRepaired: 0,
      comebackCost: 30,
      waitCost: 0,
      atHand: DEFAULT_TERMS.atHand,
      agreed: true,
      partsMarkUp: 0,
      minimumMargin: 0,
      warrantyCost: 0,
      taxRate: 0,
      boardStays: false,
      carcassValue: 0,
      exchangeCredit: 0,
    });
  });

  it("counts with the shop's own usual price until one is agreed", () => {
    const usual = parseJob(rawJob({ terms: { usualPrice: 95 } }), null);
    expect(usual).toMatchObject({ ok: true, value: { terms: { agreedPrice: 95, agreed: false } } });
    const both = parseJob(rawJob({ terms: { usualPrice: 95, agreedPrice: 120 } }), null);
    expect(both).toMatchObject({ ok: true, value: { terms: { agreedPrice: 120, agreed: true } } });
  });

  it("takes the price of the quote that was accepted last for the price agreed, until that is undone", () => {
    const log = [
      { do: "quote", offer: "repair", price: 90, cap: 110, answer: "accepted", id: "q" },
      { do: "note", text: "-" },
    ];
    const terms = (more: readonly object[]) => {
      const parsed = parseJob(rawJob({ log: [...log, ...more] }), null);
      return parsed.ok ? parsed.value.terms : plain(parsed.problem);
    };
    expect(terms([])).toMatchObject({ agreedPrice: 90, agreed: true });
    expect(terms([{ do: "undo", of: "q" }])).toMatchObject({ agreedPrice: 140, agreed: false });
    expect(terms([{ do: "quote", offer: "repair", price: 99, answer: "refused" }])).toMatchObject({
      agreed: false,
    });
    expect(terms([{ do: "quote", offer: "replace", price: 300, answer: "accepted" }])).toMatchObject({
      agreed: false,
    });
  });

  it("names the job that its board came back from", () => {
    const back = { job: "march-17", reason: "same-fault" };
    expect(parseJob(rawJob({ comebackOf: back }), null)).toMatchObject({
      ok: true,
      value: { comebackOf: back },
    });
    expect(parseJob(rawJob(), null)).toMatchObject({ ok: true, value: { comebackOf: null } });
  });

  it("tells what lies at hand for which place, and what waiting for the rest costs", () => {
    const next = { with: "K50", price: 3, count: 4 };
    const stock = { Q1: { with: "K40", price: 2.6, used: true, next }, U3: {} };
    const parsed = parseJob(rawJob({ stock, terms: { waitCost: 5 } }), null);
    expect(parsed.ok && parsed.value.terms.waitCost).toBe(5);
    expect(parsed.ok && Object.fromEntries(parsed.value.terms.atHand)).toEqual(stock);
  });

  it("may name its board by a path, which the caller reads", () => {
    const board = parseBoard(smallDrive());
    const raw = rawJob({ board: "boards/small.json" });
    expect(boardPathOf(raw)).toBe("boards/small.json");
    expect(boardPathOf(rawJob())).toBeNull();
    expect(boardPathOf(null)).toBeNull();
    expect(board.ok && parseJob(raw, board.value).ok).toBe(true);
    expect(problemOf({ board: "boards/small.json" })).toBe(
      'board: names the board file "boards/small.json", which was not read',
    );
  });

  it("knows a lamp of any whole watts", () => {
    expect(problemOf({ equipment: ["lamp-75", "bench-supply"] })).toBe("none");
    expect(lampWatts("lamp-75")).toBe(75);
    expect(lampWatts("bench-supply")).toBeNull();
  });

  it("cannot be changed once read", () => {
    const parsed = parseJob(rawJob({ log: [lift] }), null);
    expect(parsed.ok && Object.isFrozen(parsed.value.log)).toBe(true);
    expect(parsed.ok && Object.isFrozen(parsed.value.log[0])).toBe(true);
  });

  it.each<[Raw, string]>([
    [{ sympton: "dead" }, 'sympton: unknown field of a job; did you mean "symptom"?'],
    [{ format: "faultwright-board/1" }, 'format: expected "faultwright-job/1", found "faultwright-board/1"'],
    [
      { cause: "lightning" },
      'cause: "lightning" is not known here; known: water surge overload age insects impact unknown',
    ],
    [{ symptom: "ded" }, 'symptom: "ded" is not known here; did you mean "dead"?'],
    [{ absent: ["M2"] }, 'absent[0]: there is no part "M2"; did you mean "M1"?'],
    [{ absent: ["M1", "M1"] }, 'absent[1]: "M1" stands twice'],
    [{ absent: "M1" }, 'absent: expected a list, found "M1"'],
    [
      { equipment: ["bench-suply"] },
      'equipment[0]: "bench-suply" is no known equipment; did you mean "bench-supply"?',
    ],
    [{ equipment: ["spectrometer"] }, 'equipment[0]: "spectrometer" is no known equipment; known: lamp-40'],
    [{ terms: { rate: 30 } }, "terms.rate: unknown field of the terms; known:"],
    [{ terms: { agreedPrice: -1 } }, "terms.agreedPrice: must be 0 or more, found -1"],
    [{ terms: { taxRate: 20 } }, "terms.taxRate: must be 1 or less, found 20"],
    [{ comebackOf: { job: "", reason: "other" } }, "comebackOf.job: is empty"],
    [{ comebackOf: { job: "a" } }, "comebackOf.reason: is missing"],
    [
      { log: [{ do: "quote", offer: "repair", price: 9, cap: 8, answer: "accepted" }] },
      "log[0].cap: 8 is below",
    ],
    [
      { log: [{ do: "quote", offer: "replace", cap: 8, answer: "accepted" }] },
      "log[0].cap: is of a repair alone",
    ],
    [{ terms: { partsMarkUp: -0.1 } }, "terms.partsMarkUp: must be 0 or more, found -0.1"],
    [{ terms: { currency: "" } }, 'terms.currency: expected a short word such as EUR, found ""'],
    [{ terms: { waitCost: -1 } }, "terms.waitCost: must be 0 or more, found -1"],
    [{ stock: { Q9: {} } }, 'stock.Q9: there is no part "Q9"; did you mean "Q1"?'],
    [
      { stock: { Q1: { prize: 2 } } },
      'stock.Q1.prize: unknown field of a part at hand; did you mean "price"?',
    ],
    [
      { stock: { Q1: { next: { next: {} } } } },
      "stock.Q1.next.next: unknown field of a part at hand; known: with price used from count",
    ],
    [{ stock: { Q1: { price: -2 } } }, "stock.Q1.price: must be 0 or more, found -2"],
    [{ stock: { Q1: { used: false } } }, "stock.Q1.used: expected true, or no such field, found false"],
    [{ meter: { diodeOpenVolts: 0 } }, "meter.diodeOpenVolts: must be above 0, found 0"],
    [{ meter: { beepOhms: Number("1e999") } }, "meter.beepOhms: expected a number that can be held"],
    [{ board: { ...smallDrive(), zero: "X_Y" } }, 'board.zero: there is no net "X_Y"'],
    [{ board: [] }, "board: expected an object, found a list of 0"],
    [{ log: {} }, "log: expected a list, found an object"],
    [{ log: [lift, { do: "lift", place: "Q1.c" }] }, "log[1].place: Q1.c is lifted already"],
    [{ log: [lift, { do: "lift" }] }, "log[1].place: is missing"],
    [
      { log: [{ do: "measure", mode: "diode", red: "PBUS", black: "NBUS", reading: Number.NaN }] },
      "log[0].reading: expected a number that can be held, found NaN",
    ],
  ])("is refused in one line that names the field: %j", (more, problem) => {
    expect(problemOf(more)).toContain(problem);
    expect(problemOf(more)).not.toContain("\n");
  });

  it("without board, cause or symptom is refused for the first that is missing", () => {
    const problem = (input: unknown) => {
      const read = parseJob(input, null);
      return read.ok ? "none" : plain(read.problem);
    };
    expect(problem({ format: "faultwright-job/1" })).toBe("board: is missing");
    expect(problem("job")).toBe('expected an object, found "job"');
  });

  it("never makes the reader throw, whatever is put in any field", () => {
    const keys = fc.constantFrom(
      "board",
      "cause",
      "symptom",
      "absent",
      "equipment",
      "terms",
      "meter",
      "log",
      "__proto__",
    );
    const neverThrows = fc.property(keys, fc.anything(), (key, value) => {
      const raw = rawJob();
      Object.defineProperty(raw, key, { value, enumerable: true });
      const parsed = parseJob(raw, null);
      if (!parsed.ok) expect(parsed.problem).not.toBe("");
    });
    fc.assert(neverThrows, { seed: 5, numRuns: 500 });
  });

  it("folds five thousand events in one go, and refuses more", () => {
    const note = { do: "note", text: "x" };
    expect(problemOf({ log: Array.from({ length: 5000 }, () => note) })).toBe("none");
    expect(problemOf({ log: Array.from({ length: 5001 }, () => note) })).toContain(
      "log: 5001 events are too many",
    );
  });
});
