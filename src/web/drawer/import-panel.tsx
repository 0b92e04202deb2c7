/** A list taken in: first what would become of every row, then all of them or none. */
import { type ReactNode, useState } from "react";
import { said, saidCount } from "../../messages/said.ts";
import type { ImportRow, ImportView, KeptLine, RowFate } from "../../wire/stock-api.ts";
import { Away, api } from "../api.ts";
import { figure, say, sayWith } from "../say.ts";
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
  const [outcome, setOutcome] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const read = async (file: File) => {
    setTried(null);
    setOutcome(null);
    setProblem(null);
    if (engine === null) return;
    try {
      const text = await file.text();
      setProgress({ done: 0, of: 1 });
      const view = await engine.importView(text, lines, (done, of) => setProgress({ done, of }));
      setTried({ text, view });
    } catch (error) {
      setProblem(said`${file.name}: ${error instanceof Error ? error.message : String(error)}`);
    } finally {
      setProgress(null);
    }
  };
  const takeIn = ({ text }: Tried) =>
    api.stockImport(text).then(
      (answer) => {
        setTried(null);
        setOutcome(
          said`Taken in: ${answer.new} new, ${answer.changed} changed, ${answer.same} as they were.`,
        );
        onDone();
      },
      (error: Error) =>
        setProblem(
          error instanceof Away
            ? said`The bench computer does not answer: nothing was taken in. Try again when it does.`
            : error.message,
        ),
    );
  return { busy: engine === null || progress !== null, progress, tried, outcome, problem, read, takeIn };
}

export function ImportPanel({ lines, onDone, onAway }: ImportPanelProps) {
  const { busy, progress, tried, outcome, problem, read, takeIn } = useImport({ lines, onDone });
  return (
    <section aria-label={say`Take in a list`} className="import">
      <h2>{say`Take in a list`}</h2>
      <p className="aside">
        {say`A table with commas or semicolons (CSV), one line a type and place. Its first line names the columns: name, kind, count, place, price, supplier, used, donor, and any rating. A line that is there already is replaced by what the list says, and what it says of a type holds for every line of that type.`}
      </p>
      <label className="entry">
        {say`The file`}
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
          {say`Reading rows`}
          <progress value={progress.done} max={progress.of} />
        </label>
      )}
      {problem !== null && (
        <p role="alert" className="problem">
          {say(problem)}
        </p>
      )}
      {outcome !== null && <p role="status">{say(outcome)}</p>}
      {tried !== null && <DryRun view={tried.view} onTakeIn={() => takeIn(tried)} />}
      <button type="button" onClick={onAway}>
        {outcome === null ? say`Leave it` : say`Done`}
      </button>
    </section>
  );
}

const FATES: readonly RowFate[] = ["refused", "new", "changed", "same"];

function fateWords(fate: RowFate, count: ReactNode): ReactNode {
  switch (fate) {
    case "refused":
      return sayWith`${count} refused`;
    case "new":
      return sayWith`${count} new`;
    case "changed":
      return sayWith`${count} changed`;
    case "same":
      return sayWith`${count} as they were`;
  }
}

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
        {view.counts.refused > 0
          ? say`${view.rows.length} rows read. Nothing is taken in yet: put the refused rows right in the list, then choose it again.`
          : say`${view.rows.length} rows read. Nothing is taken in yet.`}
      </p>
      <fieldset className="filters" aria-label={say`What becomes of the rows`}>
        {FATES.map((one) => (
          <button
            type="button"
            key={one}
            aria-pressed={fate === one}
            onClick={() => {
              setFate(one);
              setShown(ROWS_SHOWN);
            }}
          >
            {fateWords(one, <span className="figure">{figure(view.counts[one])}</span>)}
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
        {going === 0 ? say`Nothing to take in` : say(saidCount(going, "Take in {0} row", "Take in {0} rows"))}
      </button>
      <ul className="import-rows">
        {rows.slice(0, most).map((row) => (
          <FateRow key={row.line} row={row} />
        ))}
      </ul>
      {rows.length > most && (
        <button type="button" onClick={() => setShown(shown + ROWS_SHOWN)}>
          {say`Show ${Math.min(ROWS_SHOWN, rows.length - most)} more`}
        </button>
      )}
    </>
  );
}

function FateRow({ row }: { readonly row: ImportRow }) {
  return (
    <li data-fate={row.fate}>
      <span className="figure">{say`line ${row.line}`}</span>{" "}
      <b>{row.name === "" ? say`no name` : <bdi>{row.name}</bdi>}</b>
      {row.reasons.length + row.changes.length > 0 && (
        <ul>
          {[...row.reasons, ...row.changes].map((words) => (
            <li key={words}>{say(words)}</li>
          ))}
        </ul>
      )}
    </li>
  );
}
