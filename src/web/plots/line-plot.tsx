/** Lines over a common axis, told apart by their dashes and by a letter at their end, with the same figures as a table. */
import { useId } from "react";
import { say } from "../say.ts";

export interface Line {
  readonly name: string;
  /** null: no value there, and the line stops */
  readonly points: readonly { readonly x: number; readonly y: number | null }[];
}

interface Props {
  readonly title: string;
  /** the plot in one sentence */
  readonly words: string;
  readonly lines: readonly Line[];
  readonly xName: string;
  readonly yTop: number;
  readonly yWords: (value: number) => string;
  readonly xWords: (value: number) => string;
  /** a mark of its own, such as the reading */
  readonly mark?: { readonly x: number; readonly y: number; readonly words: string } | null;
}

const [WIDTH, HEIGHT, LEFT, TOP, RIGHT, LOW] = [360, 190, 52, 10, 24, 26];
const DASHES = ["", "7 4", "2 4", "10 3 2 3", "4 2", "1 3", "12 4", "6 2 1 2"];
const LETTERS = "abcdefgh";

export function LinePlot({ title, words, lines, xName, yTop, yWords, xWords, mark = null }: Props) {
  const id = useId();
  const xs = [...new Set(lines.flatMap(({ points }) => points.map(({ x }) => x)))].sort((a, b) => a - b);
  const [first = 0, last = 1] = [xs[0], xs.at(-1)];
  const px = (x: number) => LEFT + ((x - first) / Math.max(1e-9, last - first)) * (WIDTH - LEFT - RIGHT);
  const py = (y: number) => TOP + (1 - Math.min(1, y / yTop)) * (HEIGHT - TOP - LOW);
  return (
    <figure className="line-plot">
      <figcaption id={id}>{title}</figcaption>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={words}>
        <path className="axes" d={`M${LEFT} ${TOP}V${HEIGHT - LOW}H${WIDTH - RIGHT}`} />
        {[0, 0.5, 1].map((share) => (
          <text key={share} x={LEFT - 6} y={py(share * yTop) + 4} textAnchor="end">
            {yWords(share * yTop)}
          </text>
        ))}
        <text x={LEFT} y={HEIGHT - 6}>
          {xWords(first)}
        </text>
        <text x={WIDTH - RIGHT} y={HEIGHT - 6} textAnchor="end">
          {xWords(last)}
        </text>
        {lines.map((line, index) => (
          <PlottedLine
            key={line.name}
            line={line}
            index={index}
            beside={lines.slice(0, index).filter((other) => endTogether(line, other, px, py)).length}
            px={px}
            py={py}
          />
        ))}
        {mark !== null && (
          <path
            className="plot-mark"
            d={`M${px(mark.x) - 6} ${py(mark.y)}h12M${px(mark.x)} ${py(mark.y) - 6}v12`}
          />
        )}
      </svg>
      <ul className="plot-key">
        {lines.map(({ name }, index) => (
          <li key={name}>
            <svg viewBox="0 0 30 8" aria-hidden="true">
              <path className="plot-line" data-line={index} d="M0 4H30" strokeDasharray={DASHES[index]} />
            </svg>
            {LETTERS[index]} {name}
          </li>
        ))}
        {mark !== null && <li>+ {mark.words}</li>}
      </ul>
      <PlotTable id={id} lines={lines} xs={xs} xName={xName} xWords={xWords} yWords={yWords} />
    </figure>
  );
}

interface TableProps extends Pick<Props, "lines" | "xName" | "xWords" | "yWords"> {
  /** of the plot's title */
  readonly id: string;
  readonly xs: readonly number[];
}

function PlotTable({ id, lines, xs, xName, xWords, yWords }: TableProps) {
  return (
    <details>
      <summary>{say`As a table`}</summary>
      <div className="plot-table">
        <table aria-labelledby={id}>
          <thead>
            <tr>
              <th scope="col">{xName}</th>
              {lines.map(({ name }) => (
                <th scope="col" key={name}>
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {xs.map((x) => (
              <tr key={x}>
                <th scope="row">{xWords(x)}</th>
                {lines.map(({ name, points }) => {
                  const y = points.find((point) => point.x === x)?.y ?? null;
                  return <td key={name}>{y === null ? "" : yWords(y)}</td>;
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}

interface LineProps {
  readonly line: Line;
  readonly index: number;
  /** how many lines before this one end where it ends: letters stand clear of each other */
  readonly beside: number;
  px(x: number): number;
  py(y: number): number;
}

/** A letter's size, in the drawing's units. */
const LETTER = 11;

function valuesOf({ points }: Line): readonly { readonly x: number; readonly y: number }[] {
  return points.flatMap(({ x, y }) => (y === null ? [] : [{ x, y }]));
}

function endTogether(one: Line, other: Line, px: LineProps["px"], py: LineProps["py"]): boolean {
  const [a, b] = [valuesOf(one).at(-1), valuesOf(other).at(-1)];
  if (a === undefined || b === undefined) return false;
  return Math.abs(px(a.x) - px(b.x)) < LETTER && Math.abs(py(a.y) - py(b.y)) < LETTER;
}

function PlottedLine({ line, index, beside, px, py }: LineProps) {
  const there = valuesOf(line);
  const end = there.at(-1);
  if (end === undefined) return null;
  const path = there
    .map(({ x, y }, step) => `${step === 0 ? "M" : "L"}${px(x).toFixed(1)} ${py(y).toFixed(1)}`)
    .join("");
  return (
    <g>
      <path className="plot-line" data-line={index} d={path} strokeDasharray={DASHES[index]} />
      <text
        className="plot-letter"
        x={px(end.x) + 5 + (beside % 2) * 9}
        y={py(end.y) + 4 + Math.floor(beside / 2) * LETTER}
      >
        {LETTERS[index]}
      </text>
    </g>
  );
}
