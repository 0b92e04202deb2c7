/**
 * What the page and the server say to each other of the shop, under `/api/shop`. Errors as in `job-api.ts`.
 *
 * GET  /api/shop   -> ShopAnswer
 * POST /api/shop   ShopChange -> ShopAnswer: what is named is kept in the place of what was there, the rest stays
 */
export type { Shop as ShopAnswer, ShopChange } from "../job/shop.ts";
