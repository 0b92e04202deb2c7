/** A list taken in: first what would become of every row, then all of them or none. */
import { useState } from "react";
import type { ImportRow, ImportView, KeptLine, RowFate } from "../../wire/stock-api.ts";
import { Away, api } from "../api.ts";
import { useEngine } from "../use-engine.ts";

interface ImportPanelProps {
  readonly lines: readonly KeptLine[];
  /** it was taken in */
  onDone(): void;
  onAway(): void;
}

interface Tried {
  readonly text: string;
  readonly view: ImportView;
}

/** Reads a list for its dry run, and takes it in. */
function useImport({ lines, onDone }: Pick<ImportPanelProps, "lines" | "onDone">) {
  const engine = useEngine();
  const [progress, setProgress] = useState<{ readonly done: number; readonly of: number } | null>(null);
  const [tried, setTried] = useState<Tried | null>(null);
  const [said, setSaid] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const read = async (file: File) => {
    setTried(null);
    setSaid(null);
    setProblem(null);
    if (engine === null) return;
    try {
      const text = await file.text();
      setProgress({ done: 0, of: 1 });
      const view = await engine.importView(text, lines, (done, of) => setProgress({ done, of }));
      setTried({ text, view });
    } catch (error) {
      setProblem(`${file.name}: ${error instanceof Error ? error.message : String(error)}`);
    } finally {
      setProgress(null);
    }
  };
  const takeIn = ({ text }: Tried) =>
    api.stockImport(text).then(
      (answer) => {
        setTried(null);
        setSaid(`Taken in: ${answer.new} new, ${answer.changed} changed, ${answer.same} as they were.`);
        onDone();
      },
      (error: Error) =>
        setProblem(
          error instanceof Away
            ? "The bench computer does not answer: nothing was taken in. Try again when it does."
            : error.message,
        ),
    );
  return { busy: engine === null || progress !== null, progress, tried, said, problem, read, takeIn };
}

export function ImportPanel({ lines, onDone, onAway }: ImportPanelProps) {
  const { busy, progress, tried, said, problem, read, takeIn } = useImport({ lines, onDone });
  return (
    <section aria-label="Take in a list" className="import">
      <h2>Take in a list</h2>
      <p className="aside">
        A table with commas or semicolons (CSV), one line a type and place. Its first line names the columns:
        name, kind, count, place, price, supplier, used, donor, and any rating. A line that is there already
        is replaced by what the list says, and what it says of a type holds for every line of that type.
      </p>
      <label className="entry">
        The file
        <input
          type="file"
          accept=".csv,text/csv"
          disabled={busy}
          onChange={(event) => {
            const [file] = event.target.files ?? [];
            if (file !== undefined) void read(file);
          }}
        />
      </label>
      {progress !== null && (
        <label className="entry">
          Reading rows
          <progress value={progress.done} max={progress.of} />
        </label>
      )}
      {problem !== null && (
        <p role="alert" className="problem">
          {problem}
        </p>
      )}
      {said !== null && <p role="status">{said}</p>}
      {tried !== null && <DryRun view={tried.view} onTakeIn={() => takeIn(tried)} />}
      <button type="button" onClick={onAway}>
        {said === null ? "Leave it" : "Done"}
      </button>
    </section>
  );
}

const FATES: Readonly<Record<RowFate, string>> = {
  refused: "refused",
  new: "new",
  changed: "changed",
  same: "as they were",
};
const ROWS_SHOWN = 100;

interface DryRunProps {
  readonly view: ImportView;
  onTakeIn(): Promise<void>;
}

/** Refused rows are all shown; of the others some at a time. */
function DryRun({ view, onTakeIn }: DryRunProps) {
  const [fate, setFate] = useState<RowFate>(view.counts.refused > 0 ? "refused" : "new");
  const [shown, setShown] = useState(ROWS_SHOWN);
  const [sending, setSending] = useState(false);
  const rows = view.rows.filter((row) => row.fate === fate);
  const most = fate === "refused" ? rows.length : shown;
  const going = view.counts.new + view.counts.changed;
  return (
    <>
      <p role="status">
        {view.rows.length} rows read. Nothing is taken in yet
        {view.counts.refused > 0 && ": put the refused rows right in the list, then choose it again"}.
      </p>
      <fieldset className="filters" aria-label="What becomes of the rows">
        {(Object.keys(FATES) as RowFate[]).map((one) => (
          <button
            type="button"
            key={one}
            aria-pressed={fate === one}
            onClick={() => {
              setFate(one);
              setShown(ROWS_SHOWN);
            }}
          >
            <span className="figure">{view.counts[one]}</span> {FATES[one]}
          </button>
        ))}
      </fieldset>
      <button
        type="button"
        className="primary tall"
        disabled={view.counts.refused > 0 || going === 0 || sending}
        onClick={() => {
          setSending(true);
          void onTakeIn().finally(() => setSending(false));
        }}
      >
        {going === 0 ? "Nothing to take in" : `Take in ${going} ${going === 1 ? "row" : "rows"}`}
      </button>
      <ul className="import-rows">
        {rows.slice(0, most).map((row) => (
          <FateRow key={row.line} row={row} />
        ))}
      </ul>
      {rows.length > most && (
        <button type="button" onClick={() => setShown(shown + ROWS_SHOWN)}>
          Show {Math.min(ROWS_SHOWN, rows.length - most)} more
        </button>
      )}
    </>
  );
}

function FateRow({ row }: { readonly row: ImportRow }) {
  return (
    <li data-fate={row.fate}>
      <span className="figure">line {row.line}</span> <b>{row.name === "" ? "no name" : row.name}</b>
      {row.reasons.length + row.changes.length > 0 && (
        <ul>
          {[...row.reasons, ...row.changes].map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      )}
    </li>
  );
}
