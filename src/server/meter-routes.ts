import { Hono } from "hono";
import { MEASURE_MODES } from "../bench/words.ts";
import type { BenchMeter } from "../hookup/bench-meter.ts";
import { sigrokDrivers } from "../hookup/sigrok-process.ts";
import { readMeterSetting } from "../instrument/meter-setting.ts";
import type { DriverList, MeterNow, WantedReading } from "../wire/meter-api.ts";
import { problem } from "./answers.ts";
import { limitBody, readJson } from "./read-body.ts";

const MOST_BYTES = 2_000;

/** The meter on the wire, under `/api/meter`. */
export function meterRoutes(meter: BenchMeter): Hono {
  const routes = new Hono();
  routes.get("/", (context) => context.json<MeterNow>(meter.now));
  routes.post("/", limitBody(MOST_BYTES), async (context) => {
    const body = await readJson(context);
    if (!body.ok) return problem(context, body.problem, 400);
    const setting = readMeterSetting(body.value);
    if (!setting.ok) return problem(context, setting.problem, 422);
    meter.set(setting.value);
    return context.json<MeterNow>(meter.now);
  });
  routes.post("/wanted", limitBody(MOST_BYTES), async (context) => {
    const body = await readJson(context);
    if (!body.ok) return problem(context, body.problem, 400);
    const { mode, wires } = (body.value ?? {}) as Readonly<Record<string, unknown>>;
    const known = MEASURE_MODES.find((name) => name === mode);
    if (known === undefined)
      return problem(context, `meter: ${JSON.stringify(mode)} is no mode of a check`, 422);
    const wanted: WantedReading = wires === 4 ? { mode: known, wires } : { mode: known };
    meter.want(wanted);
    return context.body(null, 204);
  });
  routes.get("/drivers", async (context) => {
    const found = await sigrokDrivers();
    const answer: DriverList = found.ok
      ? { drivers: found.value, problem: null }
      : { drivers: [], problem: found.problem };
    return context.json(answer);
  });
  return routes;
}
