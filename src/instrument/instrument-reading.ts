/** What an instrument shows at one moment, whatever wire it came over. */
import type { MeasureMode } from "../bench/event.ts";

export interface InstrumentReading {
  /** the modes of a check that this display may answer; none: the instrument is set to something that no check asks for */
  readonly modes: readonly MeasureMode[];
  /** what the instrument is set to, in words */
  readonly setTo: string;
  /** in `unit` */
  readonly value: number | "OL" | "beep" | "silent";
  /** as a display writes it, without a prefix: `V`, `Ω`, `F`, `A`, `°C`, or whatever else it shows */
  readonly unit: string;
  /** why the figure is not to be taken as it stands: a frozen or relative display; null where nothing is against it */
  readonly doubt: string | null;
}

/** What a check wants of the instrument. */
export interface WantedReading {
  readonly mode: MeasureMode;
  /** ohms by four wires */
  readonly wires?: 4;
}
