import { expect, it } from "vitest";
import { MemoryJobStore } from "../store/memory/memory-job-store.ts";
import { shopRoutes } from "./shop-routes.ts";

const post = (body: unknown): RequestInit => ({
  method: "POST",
  headers: { "content-type": "application/json" },
  body: JSON.stringify(body),
});

it("the shop's terms are one for every page: what one keeps the next one reads, and what is refused changes nothing", async () => {
  const routes = shopRoutes(new MemoryJobStore(() => "2026-01-01T00:00:00.000Z"));
  expect(await (await routes.request("/")).json()).toEqual({ name: "", terms: {} });
  const shop = { name: "Bench 4, Mill Lane", terms: { ratePerHour: 45, minimumMargin: 20 } };
  expect((await routes.request("/", post(shop))).status).toBe(200);
  expect(await (await routes.request("/")).json()).toEqual(shop);
  // one page says what the bench has while another has the terms open: neither takes back what the other said
  const equipped = await routes.request("/", post({ equipment: ["lamp-60"], warranty: "90 days" }));
  expect(await equipped.json()).toEqual({ ...shop, equipment: ["lamp-60"], warranty: "90 days" });
  const renamed = { ...shop, name: "Bench 5", equipment: ["lamp-60"], warranty: "90 days" };
  expect(await (await routes.request("/", post({ name: "Bench 5" }))).json()).toEqual(renamed);
  const refused = await routes.request("/", post({ name: "", terms: { ratePerHour: -1 } }));
  expect([refused.status, await refused.json()]).toEqual([
    422,
    { error: expect.stringMatching(/^terms\.ratePerHour: must be 0 or more/), said: expect.any(String) },
  ]);
  expect(await (await routes.request("/")).json()).toEqual(renamed);
});
