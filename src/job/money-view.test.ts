import { describe, expect, it } from "vitest";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { plain } from "../messages/said.ts";
import { provenEmpty } from "../planning/scene.fixture.ts";
import { type Assessment, AssessmentSession, assess } from "./assess.ts";
import { moneyView } from "./money-view.ts";
import type { MoneyView } from "./money-view-shape.ts";
import { parseJob } from "./parse-job.ts";

const session = new AssessmentSession();

/** One leg of the small drive and no motor: the same questions, quickly answered. */
function rawBoard(): ReturnType<typeof smallDrive> {
  const raw = smallDrive();
  for (const ref of ["M1", ...["2", "3", "5", "6"].flatMap((n) => [`Q${n}`, `RG${n}`, `RP${n}`, `DZ${n}`])])
    delete raw.parts[ref];
  return raw;
}
const BOARD = rawBoard();

function assessed(log: readonly object[], terms: object = {}): Assessment {
  const job = parseJob(
    { format: "faultwright-job/1", board: BOARD, cause: "surge", symptom: "dead", terms, log },
    null,
  );
  if (!job.ok) throw new Error(job.problem);
  const result = assess(job.value, session);
  if (!result.ok) throw new Error(result.problem);
  return result.value;
}

const money = (log: readonly object[], terms: object = {}): MoneyView => moneyView(assessed(log, terms));
const read = (red: string, black: string, reading: number | "OL") => ({
  do: "measure",
  mode: "diode",
  red,
  black,
  reading,
});
const Q1_SHORT = [read("PBUS", "U", 0.0002), read("U", "NSH", "OL")];
const SAFE = provenEmpty(assessed([]).job.board);

describe("the job's money, live", () => {
  it("has the margin and the chance that the card has, of the same plan", () => {
    const view = assessed([...SAFE, ...Q1_SHORT]);
    const { toGo } = moneyView(view);
    expect(Number(toGo?.margin)).toBeCloseTo(view.proposal.outlook.expectedMargin, 2);
    expect(toGo?.repairProbability).toBeCloseTo(view.proposal.outlook.repairProbability, 9);
    expect(toGo?.over).toBe(false);
  });

  it("moves to what is spent as the part that is dead is fitted: less of minutes and parts is still expected", () => {
    const before = money([...SAFE, ...Q1_SHORT]);
    const after = money([...SAFE, ...Q1_SHORT, { do: "replace", part: "Q1" }]);
    expect(Number(after.spent.total)).toBeGreaterThan(Number(before.spent.total));
    expect(after.toGo?.minutes.mean).toBeLessThan(before.toGo?.minutes.mean ?? 0);
    expect(Number(after.toGo?.parts.mean)).toBeLessThan(Number(before.toGo?.parts.mean));
  });

  it("says to stop where a part that nobody sells is dead, and that going on would be over the stop line", () => {
    const dead = money([
      ...SAFE,
      { do: "measure", mode: "ohms", red: "V5", black: "NBUS", reading: 8 },
      read("V5", "NBUS", 0.01),
      read("V15", "NBUS", "OL"),
      { do: "measure", mode: "farads", red: "V5", black: "NBUS", reading: "OL" },
      { do: "lift", place: "U3.vdd" },
      read("NBUS", "U3.vdd", 0.01),
      { do: "measure", mode: "ohms", red: "V5", black: "NBUS", reading: "OL" },
    ]);
    expect(plain(dead.advice)).toMatch(/^Stop here\. .*U3/);
    expect(dead.quote).toMatchObject({ advised: "replace" });
    expect(Number(dead.toGo?.stopLine)).toBeLessThan(140 * 0.2);
  });

  it("expects nothing more of a job that is closed, and is the same replayed from its events", () => {
    const log = [
      ...SAFE,
      ...Q1_SHORT,
      { do: "replace", part: "Q1", price: 3 },
      { do: "close", verdict: "declined" },
    ];
    const view = money(log);
    expect(view.toGo).toBeNull();
    expect(plain(view.advice)).toBe("The job is closed.");
    expect(money(structuredClone(log))).toEqual(view);
  });

  it("sets aside what repairs cost in coming back: the margin falls by its share and the stop line with it", () => {
    const plain = money([...SAFE, ...Q1_SHORT]);
    const careful = money([...SAFE, ...Q1_SHORT], { warrantyCost: 20 });
    const { repairProbability = 0 } = plain.toGo ?? {};
    expect(Number(plain.toGo?.margin) - Number(careful.toGo?.margin)).toBeCloseTo(20 * repairProbability, 1);
    expect(Number(careful.toGo?.stopLine)).toBeLessThan(Number(plain.toGo?.stopLine));
  });

  it("stops earlier by the least margin and by what a board that stays still fetches; card and sum tell the same true margin", () => {
    const log = [...SAFE, ...Q1_SHORT];
    const plain = money(log);
    const { repairProbability = 0 } = plain.toGo ?? {};
    const choosy = assessed(log, { minimumMargin: 25 });
    const { toGo } = moneyView(choosy);
    expect(Number(plain.toGo?.stopLine) - Number(toGo?.stopLine)).toBeCloseTo(25 * repairProbability, 1);
    expect(toGo?.margin).toBe(plain.toGo?.margin);
    expect(choosy.proposal.outlook.expectedMargin).toBeCloseTo(Number(toGo?.margin), 2);
    // the carcass, and what is on the board of parts that nobody sells, as the second line had it
    const goes = money(log, { carcassValue: 30 });
    const stays = money(log, { carcassValue: 30, boardStays: true });
    expect(goes.toGo?.stopLine).toBe(plain.toGo?.stopLine);
    // a few more endings are worth stopping at then, and the chance of a repair falls by that
    expect(Number(stays.toGo?.stopLine)).toBeCloseTo(Number(goes.toGo?.stopLineWithRemains), 0);
    expect(stays.toGo?.stopLineWithRemains).toBeNull();
    expect(Number(stays.toGo?.stopLine)).toBeLessThan(
      Number(goes.toGo?.stopLine) - 30 * repairProbability + 1,
    );
  });

  it("asks the customer again before the bill may pass the cap accepted", () => {
    const accepted = (cap: number) => ({ do: "quote", offer: "repair", price: 40, cap, answer: "accepted" });
    const dear = { partsMarkUp: 3 };
    expect(money([...SAFE, accepted(120), ...Q1_SHORT], dear).askAgain).toBeNull();
    expect(money([...SAFE, accepted(41), ...Q1_SHORT], dear).askAgain).toMatch(
      /It may come to .* above the 41\.00 EUR/,
    );
    const above = money([...SAFE, accepted(41), ...Q1_SHORT, { do: "replace", part: "Q1", price: 20 }], dear);
    expect(above.askAgain).toMatch(/stand at .* ask the customer again, or bear the rest/);
    expect(above.bill.total).toBe("41.00");
  });
});
