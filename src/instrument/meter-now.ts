/** How the bench's meter stands at one moment. */
import type { InstrumentReading } from "./instrument-reading.ts";
import type { MeterSetting } from "./meter-setting.ts";
import type { Settling } from "./settling.ts";

export interface MeterNow {
  readonly setting: MeterSetting;
  /** how the instrument calls itself; null until it has said so */
  readonly name: string | null;
  /** what is wrong with the wire, in one line; null: nothing is */
  readonly trouble: string | null;
  readonly shown: {
    readonly reading: InstrumentReading;
    readonly settling: Settling;
    /** grows whenever the probes go to another pair of places */
    readonly touch: number;
  } | null;
}
