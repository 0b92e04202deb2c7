/** One reading for the check at hand off the meter on the wire, once the figure is at rest. */
import type { MeasureEvent } from "../../bench/event.ts";
import type { BenchMeter } from "../../hookup/bench-meter.ts";
import { meterAnswer } from "../../instrument/meter-answer.ts";
import type { Parsed } from "../../units/outcome.ts";

const PATIENCE_MS = 20_000;

export type WiredReading = Pick<MeasureEvent, "reading" | "settling" | "instrument">;

/** A problem says why nothing could be taken: the mode, the wire, or a figure that did not come to rest. */
export function wiredReading(
  meter: BenchMeter,
  check: Pick<MeasureEvent, "mode" | "wires">,
  beepOhms: number,
  patienceMs = PATIENCE_MS,
): Promise<Parsed<WiredReading>> {
  meter.want(check);
  return new Promise((resolve) => {
    let why = "the meter on the wire shows nothing";
    let leave: () => void = () => undefined;
    const end = (outcome: Parsed<WiredReading>) => {
      clearTimeout(late);
      // not while the watch is still being begun
      queueMicrotask(() => leave());
      resolve(outcome);
    };
    const late = setTimeout(() => end({ ok: false, problem: `${why} Type the reading.` }), patienceMs);
    leave = meter.watch(({ shown, trouble, name }) => {
      if (trouble !== null) why = trouble;
      if (shown === null) return;
      const answer = meterAnswer(shown.reading, shown.settling, check, beepOhms);
      if (answer.answers === "taken")
        end({
          ok: true,
          value: {
            reading: answer.taken.reading,
            ...(answer.taken.settling === undefined ? {} : { settling: answer.taken.settling }),
            instrument: name ?? "unnamed",
          },
        });
      else why = answer.why;
    });
  });
}
