/** Every line of stock, found by any of its words; a tap opens it for correction. */
import { useMemo, useState } from "react";
import { said, saidCount } from "../../messages/said.ts";
import type { KeptLine } from "../../wire/stock-api.ts";
import { kindWords } from "../kind-words.ts";
import { say, sayWith } from "../say.ts";
import { LineForm } from "./line-form.tsx";
import { lineKey, lineWords, onDonor, priceText } from "./line-words.ts";

interface StockListProps {
  readonly lines: readonly KeptLine[];
  onChanged(lines: readonly KeptLine[]): void;
  onAgain(): void;
}

type Which = "all" | "lying" | "donor" | "short";
const WHICH: readonly { readonly which: Which; readonly words: string }[] = [
  { which: "all", words: said`All` },
  { which: "lying", words: said`In the house` },
  { which: "donor", words: said`On donors` },
  { which: "short", words: said`Count again` },
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
        {say`Nothing is counted yet. Add what lies in the drawers part by part, or take in a list: one line a type and place, its first line naming the columns.`}
      </p>
    );
  return (
    <section aria-label={say`In stock`} className="stock">
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
          ? say(saidCount(lines.length, "{0} line", "{0} lines"))
          : say`${matches.length} of ${lines.length} lines`}
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
          {say`Show ${Math.min(ROWS_SHOWN, matches.length - shown)} more`}
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
        {say`Find`}
        <input
          type="search"
          autoComplete="off"
          placeholder={say`type, kind, place, donor`}
          value={typed}
          onChange={(event) => onTyped(event.target.value)}
        />
      </label>
      <fieldset className="filters" aria-label={say`Which lines`}>
        {WHICH.map((one) => (
          <button
            type="button"
            key={one.which}
            aria-pressed={which === one.which}
            onClick={() => onWhich(one.which)}
          >
            {say(one.words)}
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
        {line.count === null ? say`none` : say`${line.count} pc`}
      </span>
      <span className="stock-where">
        <Where line={line} />
      </span>
      <span className="figure stock-price">{priceText(line.price)}</span>
      {line.short > 0 && (
        <span className="stock-short">
          {say(
            saidCount(
              line.short,
              "{0} more was fitted than counted here: count again.",
              "{0} more were fitted than counted here: count again.",
            ),
          )}
        </span>
      )}
    </button>
  );
}

function Where({ line }: { readonly line: KeptLine }) {
  const kind = kindWords(line.type.kind);
  if (onDonor(line)) return sayWith`${kind}, still on ${<bdi>{line.donor}</bdi>}`;
  const place = line.place === null ? say`no place` : <bdi>{line.place}</bdi>;
  return line.used ? sayWith`${kind}, ${place}, pulled` : sayWith`${kind}, ${place}`;
}
