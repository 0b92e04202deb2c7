/** What the shop is and what its bench has, under `/api/shop`: every page starts new jobs with the same. */
import { Hono } from "hono";
import { changedShop, type ShopStore } from "../job/shop.ts";
import type { ShopAnswer } from "../wire/shop-api.ts";
import { problem } from "./answers.ts";
import { limitBody, readJson } from "./read-body.ts";

const SHOP_BYTES = 20_000;

export function shopRoutes(store: ShopStore): Hono {
  const routes = new Hono();
  routes.get("/", async (context) => context.json((await store.readShop()) as ShopAnswer as never));
  routes.post("/", limitBody(SHOP_BYTES), async (context) => {
    const body = await readJson(context);
    if (!body.ok) return problem(context, body.problem, 400);
    const shop = changedShop(await store.readShop(), body.value);
    if (!shop.ok) return problem(context, shop.problem, 422);
    await store.keepShop(shop.value);
    return context.json(shop.value as ShopAnswer as never);
  });
  return routes;
}
