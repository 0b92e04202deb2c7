import { type Context, Hono } from "hono";
import { said } from "../messages/said.ts";
import { allRows, catalogueText, readCatalogueText } from "../parts/catalogue-text.ts";
import { importCount } from "../parts/stock/import-count.ts";
import { stockLine } from "../parts/stock/stock.ts";
import type { Count, StockStore } from "../parts/stock/stock-store.ts";
import { goneCount, typedCount } from "../parts/stock/typed-count.ts";
import type { Parsed } from "../units/outcome.ts";
import { CATALOGUE_BYTES, type ImportAnswer, type StockAnswer } from "../wire/stock-api.ts";
import { problem } from "./answers.ts";
import { limitBody, readJson } from "./read-body.ts";
import { parseGoneLine, parseTypedLine } from "./request-shapes.ts";

const LINE_BYTES = 20_000;

/** The shop's stock, under `/api/stock`. */
export function stockRoutes(store: StockStore): Hono {
  const routes = new Hono();
  routes.get("/", (context) => stockAnswer(context, store));
  routes.get("/file", async (context) => {
    const lines = (await store.readStock()).lines();
    return context.body(catalogueText(lines.map(stockLine)), 200, {
      "Content-Type": "text/csv; charset=utf-8",
      "Content-Disposition": 'attachment; filename="parts-drawer.csv"',
    });
  });
  routes.post("/import", limitBody(CATALOGUE_BYTES), (context) => importFile(context, store));
  routes.post("/lines", limitBody(LINE_BYTES), (context) =>
    countTyped(context, store, parseTypedLine, (typed) => (stock) => typedCount(stock, typed)),
  );
  routes.post("/gone", limitBody(LINE_BYTES), (context) =>
    countTyped(context, store, parseGoneLine, (gone) => (stock) => goneCount(stock, gone)),
  );
  return routes;
}

async function stockAnswer(context: Context, store: StockStore): Promise<Response> {
  const answer: StockAnswer = { lines: (await store.readStock()).lines() };
  // Typed through unknown: a type's ratings are deep enough to exhaust the type of a JSON answer.
  return context.json(answer as never);
}

async function importFile(context: Context, store: StockStore): Promise<Response> {
  // A content type of its own keeps out plain forms of foreign pages.
  const type = context.req.header("content-type") ?? "";
  if (!/^text\/csv\s*(;|$)/i.test(type))
    return problem(context, `content-type: "${type}" is not text/csv`, 400);
  const text = await context.req.text();
  let answer: ImportAnswer = { rows: 0, new: 0, changed: 0, same: 0 };
  const counted = await store.countStock((stock) => {
    const kept = stock.lines();
    const read = readCatalogueText(
      text,
      kept.map((line) => line.type),
    );
    if (!read.ok) return read;
    const lines = allRows(read.value);
    if (!lines.ok) return lines;
    const { rows, count } = importCount(kept, lines.value);
    const of = (fate: (typeof rows)[number]["fate"]) => rows.filter((one) => one.fate === fate).length;
    answer = { rows: read.value.rows, new: of("new"), changed: of("changed"), same: of("same") };
    return { ok: true, value: count };
  });
  if (!counted.ok) return problem(context, said`${counted.problem}; nothing was imported`, 422);
  return context.json<ImportAnswer>(answer);
}

async function countTyped<T>(
  context: Context,
  store: StockStore,
  parse: (input: unknown) => Parsed<T>,
  count: (typed: T) => Count,
): Promise<Response> {
  const body = await readJson(context);
  if (!body.ok) return problem(context, body.problem, 400);
  const request = parse(body.value);
  if (!request.ok) return problem(context, request.problem, 400);
  const counted = await store.countStock(count(request.value));
  return counted.ok ? stockAnswer(context, store) : problem(context, counted.problem, 422);
}
