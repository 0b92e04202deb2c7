import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { JobEvent, QuoteEvent, Verdict } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import { parseBoard } from "../board/parse-board.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { amountOf, amountText, plus, rounded, shareOf } from "./amount.ts";
import { acceptedQuote, type Bill, makeBill } from "./bill.ts";
import { currencyDigits } from "./currencies.ts";
import { jobSum } from "./job-sum.ts";
import { actionMinutes } from "./minutes.ts";
import { DEFAULT_TERMS, type Terms } from "./terms.ts";

function load(): Board {
  const parsed = parseBoard(smallDrive());
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}
const BOARD = load();

function timelineOf(log: readonly JobEvent[]): Timeline {
  const folded = foldLog(BOARD, [], log);
  if (!folded.ok) throw new Error(folded.problem);
  return folded.value;
}

function billed(log: readonly JobEvent[], terms: Partial<Terms> = {}, comeback = false): Bill {
  const all = { ...DEFAULT_TERMS, ...terms };
  const timeline = timelineOf(log);
  const close = timeline.entries.at(-1)?.event;
  const verdict = close?.do === "close" ? close.verdict : null;
  const sum = jobSum(BOARD, timeline, all);
  return makeBill(sum, all, { verdict, accepted: acceptedQuote(timeline), comeback });
}

const text = (bill: Bill, amount = bill.total) => amountText(amount, bill.currency);
const read: JobEvent = { do: "measure", mode: "diode", red: "PBUS", black: "NBUS", reading: 0.4 };
const fittedFor = (part: string, price: number): JobEvent => ({ do: "replace", part, price });
const close = (verdict: Verdict): JobEvent => ({ do: "close", verdict });
const quoted = (quote: Omit<QuoteEvent, "do">): JobEvent => ({ do: "quote", ...quote });

describe("what is billed", () => {
  const WORK = [read, fittedFor("Q1", 6.5)];
  // 0.4 + 10 minutes at 30 an hour: 5.20; Q1 with a quarter on top: 8.125, which is 8.12 in cents, half to even

  it("without a price agreed: work at the rate, parts with the mark-up, and the tax on both", () => {
    const bill = billed([...WORK, close("repaired")], { partsMarkUp: 0.25, taxRate: 0.21 });
    expect(bill.lines.map(({ what, part, amount }) => [part?.part ?? what, text(bill, amount)])).toEqual([
      ["work", "5.20"],
      ["Q1", "8.12"],
    ]);
    // 13.32 and 21 % of it, 2.7972
    expect([text(bill, bill.net), text(bill, bill.tax), text(bill)]).toEqual(["13.32", "2.80", "16.12"]);
  });

  it.each([
    ["a price in the terms is the price", [], { agreed: true, agreedPrice: 95 }, "95.00"],
    [
      "an accepted price is the least",
      [quoted({ offer: "repair", price: 12, cap: 20, answer: "accepted" })],
      {},
      "12.00",
    ],
    [
      "between price and cap it is the work",
      [quoted({ offer: "repair", price: 8, cap: 20, answer: "accepted" })],
      {},
      "11.70",
    ],
    [
      "the cap is the most",
      [quoted({ offer: "repair", price: 5, cap: 10, answer: "accepted" })],
      {},
      "10.00",
    ],
    ["a price without a cap is one", [quoted({ offer: "repair", price: 7, answer: "accepted" })], {}, "7.00"],
    [
      "a cap without a price is the most",
      [quoted({ offer: "repair", cap: 9, answer: "accepted" })],
      {},
      "9.00",
    ],
    [
      "a quote that was refused binds nobody",
      [quoted({ offer: "repair", price: 99, answer: "refused" })],
      {},
      "11.70",
    ],
    [
      "the last answer counts",
      [
        quoted({ offer: "repair", price: 5, cap: 6, answer: "accepted" }),
        quoted({ offer: "repair", price: 5, cap: 40, answer: "accepted" }),
      ],
      {},
      "11.70",
    ],
  ])("%s", (_what, quotes, terms: Partial<Terms>, total) => {
    expect(text(billed([...quotes, ...WORK, close("repaired")], terms))).toBe(total);
  });

  it.each(["not-economic", "not-repairable", "declined", "no-fault"] as const)(
    "a board that is closed as %s costs the diagnosis fee alone",
    (verdict) => {
      expect(text(billed([...WORK, close(verdict)], { feeIfNotRepaired: 25, agreed: true }))).toBe("25.00");
    },
  );

  it("no repair costs the fee that was told, where one was", () => {
    const told: JobEvent = { do: "quote", offer: "decline", price: 18, answer: "accepted" };
    expect(text(billed([...WORK, told, close("declined")], { feeIfNotRepaired: 25 }))).toBe("18.00");
  });

  it("a new board in its place costs what was quoted, or its price with the mark-up, and the fee", () => {
    const offer = (price?: number): JobEvent =>
      quoted({ offer: "replace", answer: "accepted", ...(price === undefined ? {} : { price }) });
    const terms = { newBoardPrice: 200, partsMarkUp: 0.1, feeIfNotRepaired: 25 };
    expect(text(billed([offer(), ...WORK, close("declined")], terms))).toBe("245.00");
    expect(text(billed([offer(240), ...WORK, close("declined")], terms))).toBe("240.00");
  });

  it("the shop's own repair come back costs the customer nothing, and shows what was done", () => {
    const bill = billed([...WORK, close("repaired")], { taxRate: 0.2 }, true);
    expect(text(bill)).toBe("0.00");
    expect(bill.lines).toHaveLength(3);
  });
});

/** Logs in which anything may be fitted, read, looked at and undone, as the small drive allows it. */
const event = fc.oneof(
  fc.constant<JobEvent>(read),
  fc.record({
    do: fc.constant("look" as const),
    part: fc.constantFrom("Q1", "C1", "BR1"),
    finding: fc.constant("clean" as const),
  }),
  fc.record({
    do: fc.constant("replace" as const),
    part: fc.constantFrom("Q1", "Q2", "BR1", "C1", "F1"),
    price: fc.integer({ min: 0, max: 99_999 }).map((thousandths) => thousandths / 1000),
  }),
  fc.record({
    do: fc.constant("incoming" as const),
    part: fc.constantFrom("Q1", "Q2"),
    mode: fc.constant("diode" as const),
    red: fc.constant("e"),
    black: fc.constant("c"),
    reading: fc.constant(0.46),
  }),
  fc.record({ do: fc.constant("note" as const), text: fc.constant("-") }),
  fc.constant<JobEvent>({ do: "quote", offer: "repair", price: 20, cap: 60, answer: "accepted" }),
);
const log = fc.array(fc.tuple(event, fc.boolean()), { maxLength: 25 }).map((pairs) =>
  pairs.flatMap(([one, undone], at): JobEvent[] =>
    undone
      ? [
          { ...one, id: `e${at}` },
          { do: "undo", of: `e${at}` },
        ]
      : [{ ...one, id: `e${at}` }],
  ),
);
const terms = fc.record({
  currency: fc.constantFrom("EUR", "JPY", "KWD"),
  ratePerHour: fc.constantFrom(0, 30, 31.5, 4200),
  partsMarkUp: fc.constantFrom(0, 0.25, 0.333),
  taxRate: fc.constantFrom(0, 0.07, 0.2),
  agreed: fc.boolean(),
  agreedPrice: fc.constantFrom(0, 95, 140.5),
  feeIfNotRepaired: fc.constantFrom(0, 25),
});
const verdict = fc.constantFrom<Verdict | null>(null, "repaired", "not-economic", "declined");

describe("a bill is the log", () => {
  it("with every minute and every part once, whatever was undone, agreed or given up", () => {
    const holds = fc.property(log, terms, verdict, (events, given, closing) => {
      const all = closing === null ? events : [...events, close(closing)];
      const bill = billed(all, given);
      // counted anew, off the log itself and not off the sum
      const entries = timelineOf(all).entries;
      const minutes = plus(
        ...entries.map(({ event: one, before }) => amountOf(actionMinutes(BOARD, before, one))),
      );
      const work = bill.lines.filter(({ what }) => what === "work");
      expect(work.map((line) => line.minutes?.micros)).toEqual([minutes.micros]);
      const fitted = entries.flatMap(({ event: one }) => {
        if (one.do !== "replace") return [];
        const cost = rounded(amountOf(one.price ?? Number.NaN), bill.currency);
        return [[one.part, rounded(shareOf(cost, 1 + given.partsMarkUp), bill.currency).micros]];
      });
      expect(
        bill.lines.flatMap(({ part, amount }) => (part === undefined ? [] : [[part.part, amount.micros]])),
      ).toEqual(fitted);
      // labour by long division of whole thousandths of a minute, half coins up
      const perHour = BigInt(Math.round(given.ratePerHour * 1000));
      const exact = (minutes.micros * perHour) / 60_000n;
      const [labour] = work;
      const off = (labour?.amount.micros ?? 0n) - exact;
      const coin = 10n ** BigInt(6 - currencyDigits(bill.currency));
      expect(2n * (off < 0n ? -off : off)).toBeLessThanOrEqual(coin + 2n);
    });
    fc.assert(holds, { seed: 61, numRuns: 200 });
  });

  it("adds up to the last coin: lines to net, net and tax to the total, each in whole coins of its currency", () => {
    const holds = fc.property(log, terms, verdict, (events, given, closing) => {
      const bill = billed(closing === null ? events : [...events, close(closing)], given);
      expect(plus(...bill.lines.map(({ amount }) => amount)).micros).toBe(bill.net.micros);
      expect(plus(bill.net, bill.tax).micros).toBe(bill.total.micros);
      for (const amount of [...bill.lines.map((line) => line.amount), bill.tax, bill.total]) {
        expect(rounded(amount, bill.currency).micros).toBe(amount.micros);
        const [, behind = ""] = text(bill, amount).split(".");
        expect(behind).toHaveLength(currencyDigits(bill.currency));
      }
      expect(bill.total.micros >= 0n).toBe(true);
    });
    fc.assert(holds, { seed: 62, numRuns: 200 });
  });

  it("is never above the cap accepted nor below its price, once repaired", () => {
    const holds = fc.property(log, (events) => {
      const bill = billed([...events, close("repaired")]);
      if (acceptedQuote(timelineOf(events)) === null) return;
      expect(bill.net.micros).toBeGreaterThanOrEqual(amountOf(20).micros);
      expect(bill.net.micros).toBeLessThanOrEqual(amountOf(60).micros);
    });
    fc.assert(holds, { seed: 63, numRuns: 200 });
  });

  it("is the same when the job is replayed from its events", () => {
    const holds = fc.property(log, terms, (events, given) => {
      expect(billed(structuredClone(events), given)).toEqual(billed(events, given));
      const settled = events.filter((one, at) => one.do !== "undo" && events[at + 1]?.do !== "undo");
      expect(billed(settled, given).total).toEqual(billed(events, given).total);
    });
    fc.assert(holds, { seed: 64, numRuns: 200 });
  });
});
