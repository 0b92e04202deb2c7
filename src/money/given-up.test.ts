import { describe, expect, it } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { parseBoard } from "../board/parse-board.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { plain } from "../messages/said.ts";
import { amountOf, amountText } from "./amount.ts";
import { type GivenUp, givenUp, resultOfGivingUp, stopMoney } from "./given-up.ts";
import { jobSum } from "./job-sum.ts";
import { DEFAULT_TERMS, type Terms } from "./terms.ts";

const parsed = parseBoard(smallDrive());
if (!parsed.ok) throw new Error(parsed.problem);
const BOARD = parsed.value;

function left(
  log: readonly JobEvent[],
  terms: Partial<Terms> = {},
  faulty: Record<string, number> = {},
): GivenUp {
  const folded = foldLog(BOARD, [], log);
  if (!folded.ok) throw new Error(folded.problem);
  return givenUp(BOARD, folded.value, { ...DEFAULT_TERMS, ...terms }, (part) => faulty[part] ?? 0);
}

const row = (of: GivenUp, what: string) => of.rows.find((one) => plain(one.what) === what);
const worth = (of: GivenUp, what: string) => {
  const amount = row(of, what)?.amount;
  return amount === undefined ? "none" : amountText(amount, "EUR");
};
const DEAD = { U3: 1 };

describe("a board given up", () => {
  it("leaves the fee, and a part fitted here at half its price less the minutes of taking it off", () => {
    const given = left([{ do: "replace", part: "Q1", price: 20 }], { feeIfNotRepaired: 15 }, DEAD);
    expect(worth(given, "diagnosis fee")).toBe("15.00");
    // half of 20, less 5 minutes at 30 an hour
    expect(worth(given, "Q1")).toBe("7.50");
    expect(amountText(given.total, "EUR")).toBe("22.50");
    expect(amountText(resultOfGivingUp(given, amountOf(30)), "EUR")).toBe("-7.50");
  });

  it("counts the minutes of what came off at the close once: in the work, and no more in what it fetches", () => {
    const log: JobEvent[] = [
      { do: "replace", part: "Q1", price: 20 },
      { do: "close", verdict: "not-economic", shelved: ["Q1"] },
    ];
    // half of 20 in full
    expect(worth(left(log, {}, DEAD), "Q1")).toBe("10.00");
    const folded = foldLog(BOARD, [], log);
    if (!folded.ok) throw new Error(folded.problem);
    expect(amountText(jobSum(BOARD, folded.value, DEFAULT_TERMS).minutes, "JPY")).toBe("15");
  });

  it("keeps on a part that fetches less than its removal, and one that is likely dead", () => {
    const cheap = left([{ do: "replace", part: "Q1", price: 2 }], {}, DEAD);
    expect(row(cheap, "Q1")).toMatchObject({ counted: false });
    const dead = left([{ do: "replace", part: "Q1", price: 20 }], {}, { ...DEAD, Q1: 0.9 });
    // a tenth of 10, less 2.50
    expect(worth(dead, "Q1")).toBe("-1.50");
    expect(row(dead, "Q1")?.counted).toBe(false);
    expect(dead.total.micros).toBe(0n);
  });

  it("counts a part fitted twice once, at what the one on it cost", () => {
    const twice = left(
      [
        { do: "replace", part: "Q1", price: 8 },
        { do: "replace", part: "Q1", price: 20 },
      ],
      {},
      DEAD,
    );
    expect(twice.rows.filter(({ what }) => what === "Q1")).toHaveLength(1);
    expect(worth(twice, "Q1")).toBe("7.50");
  });

  it("has a donor in a controller that is alive, and none in a dead one", () => {
    // 40 % of what a donor costs (40 of a new board's 100), less 12 minutes
    expect(worth(left([], { newBoardPrice: 200 }), "U3")).toBe("26.00");
    expect(row(left([], { newBoardPrice: 200 }, DEAD), "U3")?.counted).toBe(false);
  });

  it("leaves the shop its fee and what it fitted under a name wherever the board goes; the controller and the carcass only where it stays", () => {
    const terms = { feeIfNotRepaired: 15, carcassValue: 10, newBoardPrice: 200 };
    const log = (name?: string): JobEvent[] => [
      { do: "replace", part: "Q1", price: 20, ...(name === undefined ? {} : { with: name }) },
    ];
    const stop = (events: readonly JobEvent[], boardStays: boolean) =>
      stopMoney(left(events, terms), { ...DEFAULT_TERMS, boardStays });
    // half of 20 less 5 minutes; a part without a name cannot be kept by the shelf
    expect(stop(log("K40"), false)).toBe(15 + 7.5);
    expect(stop(log(), false)).toBe(15);
    // the controller 40 % of a donor at 80 less 12 minutes, the carcass 10
    expect(stop(log("K40"), true)).toBe(15 + 7.5 + 26 + 10);
  });

  it("goes whole in exchange, or stays for its parts: the better counts, never both", () => {
    const terms = { newBoardPrice: 200, carcassValue: 10 };
    const sold = left([], { ...terms, exchangeCredit: 50 });
    expect(amountText(sold.total, "EUR")).toBe("50.00");
    expect(row(sold, "carcass")?.counted).toBe(false);
    const kept = left([], { ...terms, exchangeCredit: 20 });
    expect(amountText(kept.total, "EUR")).toBe("36.00");
    expect(row(kept, "exchange board")?.counted).toBe(false);
  });
});
