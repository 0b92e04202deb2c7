import { describe, expect, it } from "vitest";
import { smallDrive } from "../board/small-drive.fixture.ts";
import type { ComebackReason } from "./comeback-of.ts";
import { comebackCostText, correctedVerdict, ownWarrantyCost } from "./comebacks.ts";
import type { Job } from "./job.ts";
import { parseJob } from "./parse-job.ts";

function back(reason: ComebackReason, price: number): Job {
  const job = parseJob(
    {
      format: "faultwright-job/1",
      board: smallDrive(),
      cause: "surge",
      symptom: "dead",
      comebackOf: { job: "first", reason },
      log: [{ do: "replace", part: "Q1", price }],
    },
    null,
  );
  if (!job.ok) throw new Error(job.problem);
  return job.value;
}
const link = (reason: ComebackReason) => ({ job: "first", reason });

describe("a board that comes back", () => {
  it.each(["repaired", "no-fault"] as const)(
    "overturns the verdict %s where the repair is to blame",
    (verdict) => {
      const log = [{ do: "close" as const, verdict }];
      expect(correctedVerdict(log, [])).toEqual({ closedAs: verdict, held: true, because: [] });
      expect(correctedVerdict(log, [link("other")]).held).toBe(true);
      expect(correctedVerdict(log, [link("other"), link("missed-fault")])).toEqual({
        closedAs: verdict,
        held: false,
        because: ["missed-fault"],
      });
    },
  );

  it("overturns nothing that promised nothing", () => {
    expect(correctedVerdict([{ do: "close", verdict: "not-economic" }], [link("same-fault")]).held).toBe(
      true,
    );
    expect(correctedVerdict([], [link("same-fault")])).toEqual({ closedAs: null, held: true, because: [] });
  });

  it("costs its minutes and parts, where the repair is to blame", () => {
    // 10 minutes at 30 an hour each
    expect(
      comebackCostText([back("same-fault", 4), back("other", 90), back("fitted-part", 0.1)], "EUR"),
    ).toBe("14.10");
  });

  it("makes the shop's own figure little by little: after twenty repairs it counts as much as the usual one", () => {
    expect(ownWarrantyCost(6, 0, [])).toBe(6);
    expect(ownWarrantyCost(6, 20, [])).toBe(3);
    // 20 times 6 and 15 over 40 repairs
    expect(ownWarrantyCost(6, 20, [back("same-fault", 10)])).toBeCloseTo((20 * 6 + 15) / 40, 12);
  });
});
