/**
 * What the page and the server say to each other of the meter on the wire.
 *
 * GET  /api/meter            -> MeterNow
 * POST /api/meter            MeterSetting -> MeterNow
 * POST /api/meter/wanted     WantedReading -> 204: what the card at hand wants measured
 * GET  /api/meter/drivers    -> DriverList
 *
 * Every change comes as `meter` in the stream, see `stream-api.ts`.
 */
import type { SigrokDriver } from "../instrument/sigrok/sigrok-drivers.ts";

export type { WantedReading } from "../instrument/instrument-reading.ts";
export { type MeterAnswer, meterAnswer } from "../instrument/meter-answer.ts";
export type { MeterNow } from "../instrument/meter-now.ts";
export { type MeterSetting, parseScpiAddress, parseSigrokDriver } from "../instrument/meter-setting.ts";

export interface DriverList {
  readonly drivers: readonly SigrokDriver[];
  /** why there are none */
  readonly problem: string | null;
}
