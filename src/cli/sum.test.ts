import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { ran, refusal } from "./ran.fixture.ts";
import { type Folder, freshFolder, SMALL_JOB } from "./small-job.fixture.ts";

let folder: Folder;
beforeEach(() => {
  folder = freshFolder();
});
afterEach(() => folder.remove());

const DEAD = { do: "measure", mode: "dcv", red: "C1.plus", black: "C1.minus", reading: 0 };
const LOG = [
  DEAD,
  { do: "replace", part: "F1", price: 0.1, with: "fuse 5x20 T 5A ceramic", id: "f" },
  { do: "replace", part: "BR1", price: 0.2, used: true },
  { do: "replace", part: "C1", price: 9.99, id: "c" },
  { do: "undo", of: "c" },
];

async function sumOf(log: readonly object[], terms: object = {}) {
  return JSON.parse((await ran("sum", folder.file("job.json", { ...SMALL_JOB, terms, log }), "--json")).out);
}

describe("sum", () => {
  it("has every minute and part of the log once, in exact decimal; what was undone never happened", async () => {
    const sum = await sumOf(LOG, { ratePerHour: 31 });
    // 0.4 + 10 + 10 minutes at 31 an hour: 10.54; 0.1 and 0.2 are 0.30
    expect(sum).toMatchObject({
      currency: "EUR",
      minutes: 20.4,
      labour: "10.54",
      partsTotal: "0.30",
      total: "10.84",
    });
    expect(sum.parts).toEqual([
      {
        part: "F1",
        kind: "fuse",
        value: ["5 A"],
        with: "fuse 5x20 T 5A ceramic",
        used: false,
        estimated: false,
        amount: "0.10",
      },
      {
        part: "BR1",
        kind: "bridge",
        value: ["600 V", "8 A"],
        with: null,
        used: true,
        estimated: false,
        amount: "0.20",
      },
    ]);
  });

  it("is the same when the job is replayed from its events, and grows by what each adds", async () => {
    const whole = await sumOf(LOG);
    expect(await sumOf(structuredClone(LOG))).toEqual(whole);
    const cents = (text: string) => BigInt(text.replace(".", ""));
    let before = 0n;
    for (let length = 0; length < 4; length++) {
      const now = cents((await sumOf(LOG.slice(0, length))).total);
      expect(now >= before).toBe(true);
      before = now;
    }
  });

  it("rounds by the currency, and says where a price was not noted", async () => {
    const log = [DEAD, { do: "replace", part: "C1" }];
    expect((await sumOf(log, { currency: "JPY", ratePerHour: 3100, newBoardPrice: 26_000 })).total).toMatch(
      /^\d+$/,
    );
    const { out } = await ran("sum", folder.file("job.json", { ...SMALL_JOB, log }));
    expect(out).toMatch(
      /^work, 10\.4 min +5\.20\ncapacitor C1, .* \(price not noted: usual one\) +\d+\.\d\d\ntogether, EUR +\d+\.\d\d\n$/,
    );
  });

  it("names a job file that is none", async () => {
    expect(
      await refusal("sum", folder.file("job.json", { ...SMALL_JOB, log: [{ do: "replace", part: "X9" }] })),
    ).toContain("log[0].part");
  });
});
