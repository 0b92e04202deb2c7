import { Hono } from "hono";
import { BenchMeter } from "../hookup/bench-meter.ts";
import { acceptBoard } from "../job/accept-board.ts";
import type { KeepsAlbums } from "../job/board-album.ts";
import type { KeepsBoards } from "../job/board-store.ts";
import type { AcceptLog, JobStore, NewId } from "../job/job-store.ts";
import type { ShopStore } from "../job/shop.ts";
import { said } from "../messages/said.ts";
import type { StockStore } from "../parts/stock/stock-store.ts";
import type { BoardAnswer } from "../wire/job-api.ts";
import { albumRoutes } from "./album-routes.ts";
import { problem } from "./answers.ts";
import { boardRoutes } from "./board-routes.ts";
import { comebackRoutes } from "./comeback-routes.ts";
import { earlierRoutes } from "./earlier-routes.ts";
import { guard } from "./guard.ts";
import { JobNews } from "./job-news.ts";
import { jobRoutes } from "./job-routes.ts";
import { unkeptMeter } from "./kept-meter.ts";
import { addDoor, type LanDoor } from "./lan/lan-door.ts";
import { meterRoutes } from "./meter-routes.ts";
import { ownBoardRoutes } from "./own-board-routes.ts";
import { paperRoutes } from "./paper-routes.ts";
import { pictureRoutes } from "./picture-routes.ts";
import { shopRoutes } from "./shop-routes.ts";
import { staticFiles } from "./static-files.ts";
import { stockRoutes } from "./stock-routes.ts";
import { streamRoutes } from "./stream-routes.ts";

export interface AppParts {
  readonly store: JobStore & KeepsBoards & KeepsAlbums & StockStore & ShopStore;
  readonly acceptLog: AcceptLog;
  readonly newId: NewId;
  readonly boards: readonly BoardAnswer[];
  /** left out: none is on the wire until one is set */
  readonly meter?: BenchMeter;
  /** left out: the bench is not open to its network */
  readonly door?: LanDoor;
  /** folder of the built page */
  readonly webRoot: string;
  /** told of every failure that is ours, not the caller's */
  readonly report: (error: unknown) => void;
}

/** The whole server without a socket: a function from request to response. */
export function makeApp(parts: AppParts): Hono {
  const meter = parts.meter ?? new BenchMeter(unkeptMeter());
  const news = new JobNews();
  const app = new Hono();
  app.use(guard(parts.door));
  app.use("/api/*", async (context, next) => {
    await next();
    if (!context.res.headers.has("Cache-Control")) context.res.headers.set("Cache-Control", "no-store");
  });
  app.route("/api/jobs", jobRoutes(parts.store, parts.acceptLog, parts.newId, news));
  app.route("/api/jobs", pictureRoutes(parts.store));
  app.route("/api/earlier", earlierRoutes(parts.store));
  app.route("/api", comebackRoutes(parts.store));
  app.route("/api", albumRoutes(parts.store.albums));
  app.route("/api/boards", boardRoutes(parts.boards));
  app.route("/api/own-boards", ownBoardRoutes(parts.store.boards, acceptBoard));
  app.route("/api/shop", shopRoutes(parts.store));
  app.route(
    "/api/papers",
    paperRoutes(parts.store, () => new Date()),
  );
  app.route("/api/stock", stockRoutes(parts.store));
  app.route("/api/meter", meterRoutes(meter));
  app.route("/api/stream", streamRoutes(meter, news));
  app.all("/api/*", (context) =>
    problem(context, `there is nothing at ${context.req.method} ${context.req.path}`, 404),
  );
  if (parts.door !== undefined) addDoor(app, parts.door);
  app.get("/*", staticFiles(parts.webRoot));
  app.notFound((context) =>
    problem(context, `there is nothing at ${context.req.method} ${context.req.path}`, 404),
  );
  app.onError((error, context) => {
    parts.report(error);
    return problem(
      context,
      said`something went wrong here; nothing was changed by this request, please try again`,
      500,
    );
  });
  return app;
}
