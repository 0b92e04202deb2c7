/** What the check would read, row by row on one scale: a band for each case, and a line where the reading lies. */
import { said } from "../../messages/said.ts";
import type { StripRow, StripView } from "../../wire/bench-view.ts";
import { say, sayWith } from "../say.ts";
import { quantity, range } from "../words.ts";

/** Of the width; the rest is for what is over the limit. */
const SCALE_SHARE = 88;
const OVER = 95;
/** A band narrower than this is not seen, per cent. */
const LEAST_WIDTH = 1.2;
const UNITS = { V: "V", ohm: "Ω", F: "F" } as const;

/** Where a value is drawn, per cent of the width. */
export function stripPlace(
  { scale, from, to }: Pick<StripView, "scale" | "from" | "to">,
  value: number | null,
): number {
  if (value === null || value > to) return OVER;
  const held = Math.max(from, value);
  const share =
    scale === "linear" ? (held - from) / (to - from) : Math.log(held / from) / Math.log(to / from);
  return share * SCALE_SHARE;
}

export function StripPlot({ strip, title }: { readonly strip: StripView; readonly title: string }) {
  const unit = UNITS[strip.unit];
  const { reading } = strip;
  const at =
    reading === null ? null : ([stripPlace(strip, reading.low), stripPlace(strip, reading.high)] as const);
  return (
    <figure className="strip">
      <figcaption>{title}</figcaption>
      <ul>
        {strip.rows.map((row) => (
          <li key={row.words} data-good={row.good}>
            <span>{say(row.words)}</span>
            <span className="figure">
              {row.value === null ? "OL" : (range(row.low, row.high, unit) ?? "")}
            </span>
            <Track strip={strip} row={row} at={at} />
          </li>
        ))}
      </ul>
      <p className="strip-ends figure" aria-hidden="true">
        <span>{quantity(strip.from, unit)}</span>
        <span>{quantity(strip.to, unit)}</span>
        <span>OL</span>
      </p>
      {reading !== null && (
        <p className="strip-reading">
          {sayWith`The line is the reading, ${<b className="figure">{say(reading.words)}</b>}: ${fitsWords(strip)}`}
        </p>
      )}
    </figure>
  );
}

interface TrackProps {
  readonly strip: StripView;
  readonly row: StripRow;
  readonly at: readonly [number, number] | null;
}

function Track({ strip, row, at }: TrackProps) {
  const [left, right] =
    row.value === null ? [91, 99] : [stripPlace(strip, row.low), stripPlace(strip, row.high)];
  return (
    <svg className="track" viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
      <path className="track-base" d={`M0 5H${SCALE_SHARE}M90 0V10`} />
      <rect className="track-band" x={left} y="1.5" width={Math.max(LEAST_WIDTH, right - left)} height="7" />
      {at !== null && (
        <>
          {at[1] - at[0] > LEAST_WIDTH && (
            <rect className="track-span" x={at[0]} y="0" width={at[1] - at[0]} height="10" />
          )}
          <path className="track-reading" d={`M${at[0]} 0V10M${at[1]} 0V10`} />
        </>
      )}
    </svg>
  );
}

/** Which rows the reading lies in. */
function fitsWords({ rows, reading, to }: StripView): string {
  if (reading === null) return "";
  const over = reading.low === null || reading.low > to;
  const inside = rows.filter((row) =>
    over
      ? row.value === null
      : row.low !== null &&
        row.high !== null &&
        row.low <= (reading.high ?? to) &&
        row.high >= (reading.low ?? 0),
  );
  return inside.length === 0
    ? say`none of these reads so.`
    : say`as with ${inside.map(({ words }) => words).reduce((before, words) => said`${before}, or ${words}`)}.`;
}
