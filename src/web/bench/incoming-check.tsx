/** The two minutes before a part goes in: what is looked at, and what the meter shows of it in the hand, which the cold re-check is held against. */
import type { FitView, IncomingReadView } from "../../wire/fit-view.ts";
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
    <details className="incoming-check">
      <summary>
        <span>
          Two minutes before it goes in{" "}
          <small>
            {reads.length === 0 ? "looked at" : `${read} of ${reads.length} read`}
            {used && ", a pulled part above all"}
          </small>
        </span>
      </summary>
      <div className="incoming-body">
        <Pairs
          pairs={incoming
            .filter(({ pulledOnly }) => used || !pulledOnly)
            .map((step) => ({
              head: step.do,
              text: step.expect,
              aside: step.source === null ? step.mark : `${step.mark}: ${step.source}`,
            }))}
        />
        {reads.length > 0 && (
          <Reads reads={reads} textOf={(key) => fit.typed.incoming?.[key] ?? ""} onType={type} />
        )}
        <p className="aside">{baseline}</p>
      </div>
    </details>
  );
}

/** Onto the heatsink and only then into the solder: the order of the work. */
export function Mounting({ view: { mounting } }: { readonly view: FitView }) {
  if (mounting === null) return null;
  return (
    <details className="mounting">
      <summary>
        <span>
          Onto its heatsink <small>{mounting.torque ?? "torque by its data sheet"}</small>
        </span>
      </summary>
      <ol className="incoming-body">
        {mounting.order.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
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
      <caption>What the meter shows, the part in the hand</caption>
      <thead>
        <tr>
          <th scope="col">Red, black</th>
          <th scope="col">A good one</th>
          <th scope="col">This one</th>
        </tr>
      </thead>
      <tbody>
        {reads.map(({ key, mode, red, black, good, problem, fine }) => (
          <tr key={key} data-fine={fine}>
            <th scope="row">
              <span className="ref">
                {red}, {black}
              </span>
              {mode !== "diode" && <span className="aside"> {MODE_WORDS[mode] ?? mode}</span>}
            </th>
            <td>{good ?? "write it down"}</td>
            <td>
              <input
                aria-label={`${MODE_WORDS[mode] ?? mode}, red on ${red}, black on ${black}`}
                autoComplete="off"
                autoCapitalize="characters"
                value={textOf(key)}
                aria-invalid={problem !== null}
                onChange={(event) => onType(key, event.target.value)}
              />
              {problem !== null && <p role="alert">{problem}</p>}
              {fine === false && (
                <p role="alert">Not what a good one shows: read it again, or take another.</p>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
