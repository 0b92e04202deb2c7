/** Every check of a job once: what a good board shows, what this one showed first, and last after parts were fitted. */
import type { BenchState } from "../bench/bench-state.ts";
import type { MeasureEvent } from "../bench/event.ts";
import type { Timeline, TimelineEntry } from "../bench/timeline.ts";
import { coldCheckOf } from "../diagnosis/cold-evidence.ts";
import { readingLogLikelihood, slipLogLikelihood } from "../diagnosis/reading-model.ts";
import type { MeterReading, Predictor } from "../meter/prediction.ts";
import type { PaperTable } from "./paper.ts";
import type { PaperWords } from "./paper-words.ts";

interface Taken {
  readonly event: MeasureEvent;
  readonly entry: TimelineEntry;
}

interface CheckTaken {
  before: Taken | null;
  after: Taken | null;
}

/** A good board's reading is at least this much likelier than a slip of the probe where it is called usual. */
const BEYOND_SLIP = Math.log(2);

function checksTaken({ entries }: Timeline): readonly CheckTaken[] {
  const fitted = entries.find(({ event }) => event.do === "replace")?.logIndex ?? Number.POSITIVE_INFINITY;
  const taken = new Map<string, CheckTaken>();
  for (const entry of entries) {
    const { event } = entry;
    if (event.do !== "measure") continue;
    const key = [event.mode, event.part ?? "", event.red ?? "", event.black ?? "", event.wires ?? 2].join(
      " ",
    );
    const known = taken.get(key) ?? { before: null, after: null };
    if (entry.logIndex > fitted) known.after = { event, entry };
    else known.before ??= { event, entry };
    taken.set(key, known);
  }
  return [...taken.values()];
}

/** Volts of a board without power, taken for the hands' sake. */
function provesDead({ event, entry }: Taken): boolean {
  return event.mode === "dcv" && !entry.before.powered;
}

/** What a good board would have shown; null for a check under power, and where the circuit does not settle. */
function goodAt(
  { event, entry }: Taken,
  predictorFor: (bench: BenchState) => Predictor,
): MeterReading | null {
  const check = coldCheckOf(event);
  if (check === null || entry.before.powered) return null;
  const predicted = predictorFor(entry.before).predict(check, []);
  return predicted.solved ? predicted : null;
}

/** Would a good board hardly show this? Asked as the diagnosis asks it: against a slip of the probe. */
function isOff({ event }: Taken, good: MeterReading, { meter }: Predictor): boolean {
  const check = coldCheckOf(event);
  if (check === null) return false;
  const fits = Math.max(...readingLogLikelihood(check.mode, [event.reading], good, meter, 0));
  return fits < slipLogLikelihood(check.mode, event.reading, meter) + BEYOND_SLIP;
}

/** @param changesOnly - only checks that were taken before and after, volts that prove a board dead left out */
export function readingsTable(
  timeline: Timeline,
  predictorFor: (bench: BenchState) => Predictor,
  words: PaperWords,
  changesOnly = false,
): PaperTable {
  const { say } = words.speak;
  const cell = (taken: Taken | null, good: MeterReading | null) => {
    if (taken === null) return "";
    const off = good !== null && isOff(taken, good, predictorFor(taken.entry.before));
    return `${words.reading(taken.event)}${off ? " *" : ""}`;
  };
  const rows = checksTaken(timeline)
    .filter(({ before, after }) => !changesOnly || (before !== null && after !== null && !provesDead(after)))
    .map((check) => {
      const { event, entry } = check.after ?? check.before ?? missing();
      const good = goodAt({ event, entry }, predictorFor);
      const places =
        event.part === undefined
          ? [event.red, event.black].map((place) => (place === undefined ? "" : words.place(place)))
          : [words.part(event.part), ""];
      return [
        say(`meter.${event.mode}`),
        ...places,
        good === null ? "" : words.predicted(event.mode, good.shown),
        cell(check.before, check.before === null ? null : goodAt(check.before, predictorFor)),
        cell(check.after, check.after === null ? null : goodAt(check.after, predictorFor)),
      ];
    });
  return {
    block: "table",
    head: [
      say("head.meter"),
      say("head.red"),
      say("head.black"),
      say("head.good"),
      say("head.before"),
      say("head.after"),
    ],
    rows,
    sums: 0,
    shares: [0.15, 0.19, 0.19, 0.15, 0.16, 0.16],
  };
}

function missing(): never {
  throw new Error("a check of the table was never taken");
}
