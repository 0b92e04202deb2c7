/**
 * What the page and the server say to each other of the shop, under `/api/shop`. Errors as in `job-api.ts`.
 *
 * GET  /api/shop   -> ShopAnswer
 * POST /api/shop   ShopAnswer -> ShopAnswer: kept in the place of what was there
 */
export type { Shop as ShopAnswer } from "../job/shop.ts";
