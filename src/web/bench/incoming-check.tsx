/** The two minutes before a part goes in: what is looked at, and what the meter shows of it in the hand, which the cold re-check is held against. */
import { said } from "../../messages/said.ts";
import type { FitView, IncomingReadView } from "../../wire/fit-view.ts";
import { say } from "../say.ts";
import { MODE_WORDS } from "../words.ts";
import { Pairs } from "./pairs.tsx";
import type { PartFit } from "./use-part-fit.ts";

interface Props {
  readonly fit: PartFit;
  readonly view: FitView;
  readonly used: boolean;
}

export function IncomingCheck({ fit, view, used }: Props) {
  const { reads, incoming, baseline } = view;
  const read = reads.filter(({ reading }) => reading !== null).length;
  const type = (key: string, text: string) =>
    fit.type({ ...fit.typed, incoming: { ...fit.typed.incoming, [key]: text } });
  return (
    // of a pulled part it stands open: nobody goes past it by not looking
    <details className="incoming-check" open={used}>
      <summary>
        <span>
          {say`Two minutes before it goes in`} <small>{readWords(read, reads.length, used)}</small>
        </span>
      </summary>
      <div className="incoming-body">
        {used && read < reads.length && (
          <p role="note">{say`A pulled part is bad far oftener than a new one: read all of it in the hand before it goes in.`}</p>
        )}
        <Pairs
          pairs={incoming
            .filter(({ pulledOnly }) => used || !pulledOnly)
            .map((step) => ({
              head: step.do,
              text: step.expect,
              aside: step.source === null ? step.mark : said`${step.mark}: ${step.source}`,
            }))}
        />
        {reads.length > 0 && (
          <Reads reads={reads} textOf={(key) => fit.typed.incoming?.[key] ?? ""} onType={type} />
        )}
        <p className="aside">{say(baseline)}</p>
      </div>
    </details>
  );
}

function readWords(read: number, of: number, used: boolean): string {
  if (of === 0) return used ? say`looked at, a pulled part above all` : say`looked at`;
  return used ? say`${read} of ${of} read, a pulled part above all` : say`${read} of ${of} read`;
}

/** Onto the heatsink and only then into the solder: the order of the work. */
export function Mounting({ view: { mounting } }: { readonly view: FitView }) {
  if (mounting === null) return null;
  return (
    <details className="mounting">
      <summary>
        <span>
          {say`Onto its heatsink`} <small>{say(mounting.torque ?? said`torque by its data sheet`)}</small>
        </span>
      </summary>
      <ol className="incoming-body">
        {mounting.order.map((step) => (
          <li key={step}>{say(step)}</li>
        ))}
      </ol>
      {mounting.distance !== null && <p className="aside">{say`Distances: ${mounting.distance}.`}</p>}
    </details>
  );
}

interface ReadsProps {
  readonly reads: readonly IncomingReadView[];
  textOf(key: string): string;
  onType(key: string, text: string): void;
}

function Reads({ reads, textOf, onType }: ReadsProps) {
  return (
    <table className="fit-table incoming-reads">
      <caption>{say`What the meter shows, the part in the hand`}</caption>
      <thead>
        <tr>
          <th scope="col">{say`Red, black`}</th>
          <th scope="col">{say`A good one`}</th>
          <th scope="col">{say`This one`}</th>
        </tr>
      </thead>
      <tbody>
        {reads.map(({ key, mode, red, black, good, problem, fine }) => (
          <tr key={key} data-fine={fine}>
            <th scope="row">
              <span className="ref">
                {red}, {black}
              </span>
              {mode !== "diode" && <span className="aside"> {say(MODE_WORDS[mode] ?? mode)}</span>}
            </th>
            <td>{say(good ?? said`write it down`)}</td>
            <td>
              <input
                aria-label={say`${MODE_WORDS[mode] ?? mode}, red on ${red}, black on ${black}`}
                autoComplete="off"
                autoCapitalize="characters"
                value={textOf(key)}
                aria-invalid={problem !== null}
                onChange={(event) => onType(key, event.target.value)}
              />
              {problem !== null && <p role="alert">{say(problem)}</p>}
              {fine === false && (
                <p role="alert">{say`Not what a good one shows: read it again, or take another.`}</p>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
