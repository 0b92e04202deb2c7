/** An instrument on its wire, whatever the wire: what it tells, and what may be asked of it. */
import type { InstrumentReading, WantedReading } from "../instrument/instrument-reading.ts";

export interface Told {
  /** how it calls itself; a readings' log names it so */
  named(name: string): void;
  reading(reading: InstrumentReading): void;
  /** one line for a person: what is wrong with the wire or the meter, and what would mend it; null: nothing is */
  trouble(problem: string | null): void;
}

export interface MeterSource {
  /** from now on this is to be measured; a meter that is turned by hand cannot be told */
  want(wanted: WantedReading): void;
  stop(): void;
}
