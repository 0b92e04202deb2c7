import { beforeEach, describe, expect, it } from "vitest";
import { acceptLog } from "../job/accept-log.ts";
import type { KeptEvent } from "../job/job-store.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { MemoryJobStore } from "../store/memory/memory-job-store.ts";
import { makeApp } from "./app.ts";

const BOARD = SHIPPED[0]?.board;
let store: MemoryJobStore;
let app: ReturnType<typeof makeApp>;

beforeEach(() => {
  let seconds = 0;
  store = new MemoryJobStore(() => new Date(1000 * seconds++).toISOString());
  app = makeApp({ store, acceptLog, newId: () => "made-here", boards: [], webRoot: "", report: () => {} });
});

async function keep(
  id: string,
  events: readonly KeptEvent[],
  more: object = {},
  practice = false,
): Promise<void> {
  await store.createJob({
    id,
    title: id,
    practice: practice ? { seed: 1 } : null,
    header: { format: "faultwright-job/1", board: BOARD, cause: "surge", symptom: "dead", ...more },
    events,
  });
}
const REPAIRED: readonly KeptEvent[] = [{ do: "close", verdict: "repaired", id: "c" }];
const WORKED: readonly KeptEvent[] = [
  { do: "measure", mode: "diode", red: "PBUS", black: "NBUS", reading: 0.4, id: "m" },
];
const get = async (path: string) => (await app.request(path)).json();

describe("what came back", () => {
  it("is told of the old job with its cost, and that its verdict did not hold", async () => {
    await keep("old", REPAIRED);
    await keep("back", WORKED, { comebackOf: { job: "old", reason: "missed-fault" } });
    await keep("elsewhere", WORKED, { comebackOf: { job: "another", reason: "missed-fault" } });
    expect(await get("/api/jobs/old/comebacks")).toEqual({
      comebacks: [{ id: "back", title: "back", reason: "missed-fault" }],
      // 0.4 minutes at 30 an hour
      cost: "0.20",
      currency: "EUR",
      held: false,
    });
    expect(await get("/api/jobs/back/comebacks")).toMatchObject({ comebacks: [], held: true });
    expect((await app.request("/api/jobs/none/comebacks")).status).toBe(404);
  });

  it("makes the shop's own warranty cost, practice left out", async () => {
    await keep("old", REPAIRED);
    await keep("practised", REPAIRED, {}, true);
    await keep("back", WORKED, { comebackOf: { job: "old", reason: "same-fault" } });
    await keep("played", WORKED, { comebackOf: { job: "old", reason: "same-fault" } }, true);
    // until there are own ones: 7.5 % of repairs come back at 40 each
    const own = { repaired: 1, comebacks: 1, costOfOne: (20 * 0.075 * 40 + 0.2) / 21 };
    expect(await get("/api/warranty?currency=EUR&comebackCost=40")).toEqual(own);
    // repairs and comebacks in another currency are another sum
    await keep("abroad", REPAIRED, { terms: { currency: "USD" } });
    expect(await get("/api/warranty?currency=EUR&comebackCost=40")).toEqual(own);
    expect(await get("/api/warranty?currency=USD&comebackCost=0")).toEqual({
      repaired: 1,
      comebacks: 0,
      costOfOne: 0,
    });
    expect((await app.request("/api/warranty?comebackCost=lots")).status).toBe(400);
  });
});
