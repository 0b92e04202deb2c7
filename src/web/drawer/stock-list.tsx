/** Every line of stock, found by any of its words; a tap opens it for correction. */
import { useMemo, useState } from "react";
import type { KeptLine } from "../../wire/stock-api.ts";
import { LineForm } from "./line-form.tsx";
import { lineKey, lineWords, onDonor, priceText } from "./line-words.ts";

interface StockListProps {
  readonly lines: readonly KeptLine[];
  onChanged(lines: readonly KeptLine[]): void;
  onAgain(): void;
}

type Which = "all" | "lying" | "donor" | "short";
const WHICH: readonly { readonly which: Which; readonly words: string }[] = [
  { which: "all", words: "All" },
  { which: "lying", words: "In the house" },
  { which: "donor", words: "On donors" },
  { which: "short", words: "Count again" },
];
const ROWS_SHOWN = 60;

function belongs(line: KeptLine, which: Which): boolean {
  if (which === "lying") return (line.count ?? 0) > 0 && !onDonor(line);
  if (which === "donor") return onDonor(line);
  return which === "all" || line.short > 0;
}

export function StockList({ lines, onChanged, onAgain }: StockListProps) {
  const [typed, setTyped] = useState("");
  const [which, setWhich] = useState<Which>("all");
  const [shown, setShown] = useState(ROWS_SHOWN);
  const [open, setOpen] = useState<string | null>(null);
  const searched = useMemo(
    () => lines.map((line) => ({ line, text: lineWords(line).toLowerCase() })),
    [lines],
  );
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  const matches = searched
    .filter(({ line, text }) => belongs(line, which) && words.every((word) => text.includes(word)))
    .map(({ line }) => line);
  if (lines.length === 0)
    return (
      <p className="aside">
        Nothing is counted yet. Add what lies in the drawers part by part, or take in a list: one line a type
        and place, its first line naming the columns.
      </p>
    );
  return (
    <section aria-label="In stock" className="stock">
      <Finders
        typed={typed}
        which={which}
        onTyped={(text) => {
          setTyped(text);
          setShown(ROWS_SHOWN);
        }}
        onWhich={setWhich}
      />
      <p role="status" className="aside">
        {matches.length === lines.length
          ? `${lines.length} ${lines.length === 1 ? "line" : "lines"}`
          : `${matches.length} of ${lines.length} lines`}
      </p>
      <ul className="stock-rows">
        {matches.slice(0, shown).map((line) => {
          const key = lineKey(line);
          return (
            <li key={key}>
              <StockRow line={line} open={open === key} onOpen={() => setOpen(open === key ? null : key)} />
              {open === key && (
                <LineForm
                  line={line}
                  onDone={(now) => {
                    setOpen(null);
                    onChanged(now);
                  }}
                  onAway={() => setOpen(null)}
                  onAgain={onAgain}
                />
              )}
            </li>
          );
        })}
      </ul>
      {matches.length > shown && (
        <button type="button" onClick={() => setShown(shown + ROWS_SHOWN)}>
          Show {Math.min(ROWS_SHOWN, matches.length - shown)} more
        </button>
      )}
    </section>
  );
}

interface FindersProps {
  readonly typed: string;
  readonly which: Which;
  onTyped(text: string): void;
  onWhich(which: Which): void;
}

function Finders({ typed, which, onTyped, onWhich }: FindersProps) {
  return (
    <>
      <label className="entry">
        Find
        <input
          type="search"
          autoComplete="off"
          placeholder="type, kind, place, donor"
          value={typed}
          onChange={(event) => onTyped(event.target.value)}
        />
      </label>
      <fieldset className="filters" aria-label="Which lines">
        {WHICH.map((one) => (
          <button
            type="button"
            key={one.which}
            aria-pressed={which === one.which}
            onClick={() => onWhich(one.which)}
          >
            {one.words}
          </button>
        ))}
      </fieldset>
    </>
  );
}

interface StockRowProps {
  readonly line: KeptLine;
  readonly open: boolean;
  onOpen(): void;
}

function StockRow({ line, open, onOpen }: StockRowProps) {
  return (
    <button type="button" className="stock-row" aria-expanded={open} onClick={onOpen}>
      <span className="ref">{line.type.name}</span>
      <span className="figure stock-count" data-none={(line.count ?? 0) === 0}>
        {line.count === null ? "none" : `${line.count} pc`}
      </span>
      <span className="stock-where">
        {line.type.kind}, {onDonor(line) ? `still on ${line.donor}` : (line.place ?? "no place")}
        {line.used && !onDonor(line) && ", pulled"}
      </span>
      <span className="figure stock-price">{priceText(line.price)}</span>
      {line.short > 0 && (
        <span className="stock-short">
          {line.short} more {line.short === 1 ? "was" : "were"} fitted than counted here: count again.
        </span>
      )}
    </button>
  );
}
