import { Hono } from "hono";
import { streamSSE } from "hono/streaming";
import type { BenchMeter } from "../hookup/bench-meter.ts";
import { BEAT_MS, type StreamNews } from "../wire/stream-api.ts";
import type { JobNews } from "./job-news.ts";

/** What happens here, told at once to every page that is open: `GET /api/stream`, server-sent events. */
export function streamRoutes(meter: BenchMeter, news: JobNews): Hono {
  const routes = new Hono();
  routes.get("/", (context) =>
    streamSSE(context, async (stream) => {
      const tell = <Name extends keyof StreamNews>(event: Name, data: StreamNews[Name]) =>
        void stream.writeSSE({ event, data: JSON.stringify(data) });
      const left = new Promise<void>((resolve) => stream.onAbort(resolve));
      const leave = [meter.watch((now) => tell("meter", now)), news.listen((added) => tell("log", added))];
      // A wire that was pulled says nothing; silence does.
      const beat = setInterval(() => tell("beat", {}), BEAT_MS);
      await left;
      clearInterval(beat);
      for (const go of leave) go();
    }),
  );
  return routes;
}
