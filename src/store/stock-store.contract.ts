/** What `parts/stock/stock-store.ts` promises, asked of every store alike. */
import { describe, expect, it } from "vitest";
import type { Clock, JobStore, KeptEvent } from "../job/job-store.ts";
import type { StockLine } from "../parts/catalogue.ts";
import type { CountEvent } from "../parts/stock/stock-event.ts";
import type { Count, StockStore } from "../parts/stock/stock-store.ts";
import { ACCEPT_ALL, newJob, steppingClock } from "./job-store.contract.ts";

export function someDiodes(count: number, place = "strip 2"): StockLine {
  return {
    type: { name: "1N4007", kind: "diode", ratings: { volts: 1000 }, source: null },
    count,
    place,
    price: 0.05,
    supplier: "a wholesaler",
    used: false,
    donor: null,
  };
}

export function counting(...lines: readonly StockLine[]): Count {
  return () => ({ ok: true, value: { do: "count", lines, gone: [] } satisfies CountEvent });
}

export function fitting(id: string, part = "D1"): KeptEvent {
  return { do: "replace", id, part, with: "1N4007", price: 0.05, from: { place: "strip 2" } };
}

type ShopStore = JobStore & StockStore;

export function stockStoreContract(
  name: string,
  open: (clock: Clock) => ShopStore | Promise<ShopStore>,
): void {
  describe(`${name} keeps the shop's stock`, () => {
    const withStore = async (use: (store: ShopStore) => Promise<void>) => {
      const store = await open(steppingClock());
      try {
        await use(store);
      } finally {
        await store.close();
      }
    };
    const counts = async (store: ShopStore) => (await store.readStock()).lines().map(({ count }) => count);

    it("gives back what was counted, whole", () =>
      withStore(async (store) => {
        expect((await store.readStock()).lines()).toEqual([]);
        await store.countStock(counting(someDiodes(50), someDiodes(3, "shelf")));
        expect((await store.readStock()).lines()).toEqual([
          { ...someDiodes(50), short: 0 },
          { ...someDiodes(3, "shelf"), short: 0 },
        ]);
      }));

    it("keeps nothing of a count that is refused, and tells the refusal", () =>
      withStore(async (store) => {
        await store.countStock(counting(someDiodes(50)));
        const seen: (number | null)[][] = [];
        const refused = await store.countStock((stock) => {
          seen.push(stock.lines().map(({ count }) => count));
          return { ok: false, problem: "count: no" };
        });
        expect(refused).toEqual({ ok: false, problem: "count: no" });
        expect(seen).toEqual([[50]]);
        expect(await store.countStock(() => ({ ok: true, value: null }))).toEqual({ ok: true, value: null });
        expect(await counts(store)).toEqual([50]);
      }));

    it("takes one out with the entry that fitted it, once, and gives it back with its undo", () =>
      withStore(async (store) => {
        await store.countStock(counting(someDiodes(50)));
        await store.createJob(newJob("j1"));
        await store.appendEvents("j1", [fitting("e1"), fitting("e2", "D2")], ACCEPT_ALL);
        await store.appendEvents("j1", [fitting("e1")], ACCEPT_ALL);
        expect(await counts(store)).toEqual([48]);
        await store.appendEvents("j1", [{ do: "undo", id: "u1", of: "e1" }], ACCEPT_ALL);
        expect(await counts(store)).toEqual([49]);
      }));

    it("moves nothing for a post that is refused, for a job brought in, or for practice", () =>
      withStore(async (store) => {
        await store.countStock(counting(someDiodes(50)));
        await store.createJob(newJob("j1", { events: [fitting("e1")] }));
        await store.createJob(newJob("j2", { practice: { seed: 1 } }));
        await store.appendEvents("j1", [fitting("e2")], () => "no");
        await store.appendEvents("j2", [fitting("e1")], ACCEPT_ALL);
        await store.appendEvents("j1", [{ do: "undo", id: "u1", of: "e1" }], ACCEPT_ALL);
        expect(await counts(store)).toEqual([50]);
      }));

    it("never counts below none: two benches that fit the last one are told that the count was wrong", () =>
      withStore(async (store) => {
        await store.countStock(counting(someDiodes(1)));
        await store.createJob(newJob("j1"));
        await store.createJob(newJob("j2"));
        await store.appendEvents("j1", [fitting("e1")], ACCEPT_ALL);
        await store.appendEvents("j2", [fitting("e1")], ACCEPT_ALL);
        expect((await store.readStock()).lines()).toEqual([{ ...someDiodes(0), short: 1 }]);
      }));

    it("takes a part given up back as pulled, its kind from the board where nobody knew its type", () =>
      withStore(async (store) => {
        const board = { name: "drive", parts: { D1: { kind: "diode" } } };
        await store.createJob(newJob("j1", { header: { ...newJob("j1").header, board } }));
        const bought: KeptEvent = { do: "replace", id: "e1", part: "D1", with: "X 12" };
        const close: KeptEvent = { do: "close", id: "c1", verdict: "not-economic", shelved: ["D1"] };
        await store.appendEvents("j1", [bought, close], ACCEPT_ALL);
        expect((await store.readStock()).lines()).toMatchObject([
          { type: { name: "X 12", kind: "diode" }, count: 1, used: true, place: "pulled parts" },
        ]);
      }));
  });
}
