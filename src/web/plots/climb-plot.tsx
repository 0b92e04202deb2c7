/** A reading that climbs, against the way it would climb on a good board and with the main suspects. */
import type { StripView } from "../../wire/bench-view.ts";
import { forms, say } from "../say.ts";
import { quantity } from "../words.ts";
import { LinePlot } from "./line-plot.tsx";

interface Props {
  readonly climb: NonNullable<StripView["climb"]>;
  readonly unit: StripView["unit"];
  /** from here on the meter shows OL */
  readonly limit: number;
}

export function ClimbPlot({ climb, unit, limit }: Props) {
  const sign = unit === "ohm" ? "Ω" : unit;
  const values = climb.rows.flatMap(({ points }) => points.map(({ value }) => value));
  const top = Math.min(limit, Math.max(1e-12, ...values, climb.reading?.value ?? 0));
  const shown = (value: number) => (value >= limit ? "OL" : quantity(value, sign));
  const words = climb.rows.map(({ words: who, points }) => {
    const [start, end] = [points[0], points.at(-1)];
    return start === undefined || end === undefined
      ? say`${who}: no answer`
      : say`${who} from ${shown(start.value)} to ${shown(end.value)} in ${`${end.seconds} s`}`;
  });
  return (
    <LinePlot
      title={say`How it climbs`}
      words={say`The reading climbs: ${forms().list(words)}.`}
      lines={climb.rows.map(({ words: name, points }) => ({
        name: say(name),
        // the first seconds matter most: the square root spreads them
        points: points.map(({ seconds, value }) => ({ x: Math.sqrt(seconds), y: value })),
      }))}
      xName={say`after`}
      xWords={(x) => forms().shown(`${Number((x * x).toFixed(2))} s`)}
      yTop={top}
      yWords={shown}
      mark={
        climb.reading === null
          ? null
          : {
              x: Math.sqrt(climb.reading.seconds),
              y: climb.reading.value,
              words: say`the reading after two seconds`,
            }
      }
    />
  );
}
