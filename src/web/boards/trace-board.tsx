/** A circuit traced elsewhere, becoming a board: what it runs on, what nobody could guess, and what is left out. */
import { useEffect, useState } from "react";
import type { MappedPins, TraceAnswers, TracedFile } from "../../wire/own-board.ts";
import { keepOwnBoard, newBoardId } from "../board-keeper.ts";
import { go } from "../route.ts";
import { useEngine } from "../use-engine.ts";
import { MappingTable } from "./mapping-table.tsx";
import { SupplyFields, type SupplyTyped, supplyOf, UNTYPED } from "./supply-fields.tsx";

interface Props {
  readonly fileName: string;
  readonly text: string;
  onDone(): void;
}

export function TraceBoard({ fileName, text, onDone }: Props) {
  const { name, setName, supply, setSupply, mapped, setMapped, asked, traced, problem } = useTrace(
    fileName,
    text,
  );
  const keep = async (content: Readonly<Record<string, unknown>>) => {
    const id = newBoardId();
    await keepOwnBoard({ id, title: String(content.name), board: content, outcomes: {} });
    go(`#/boards/${id}`);
  };
  return (
    <section className="preview traced" aria-label="A traced circuit">
      <h2>Traced: {fileName}</h2>
      {problem !== null && (
        <p role="alert" className="problem">
          {problem}
        </p>
      )}
      {traced !== null && (
        <>
          <label className="entry">
            What to call the board
            <input value={name} autoComplete="off" onChange={(event) => setName(event.target.value)} />
          </label>
          <SupplyFields nets={traced.nets} typed={supply} onTyped={setSupply} />
          <MappingTable
            asked={[...asked.values()]}
            open={traced.unmapped}
            kinds={traced.kinds}
            mapped={mapped}
            onMapped={setMapped}
          />
          <LeftOut traced={traced} />
          {traced.content === null ? (
            <p role="status">No board yet: {traced.problem}</p>
          ) : (
            <p role="status">
              A board of {traced.parts} parts
              {traced.unmapped.length > 0 && `; ${traced.unmapped.length} names are still left out`}.
            </p>
          )}
          <button
            type="button"
            className="primary"
            disabled={traced.content === null}
            onClick={() => traced.content !== null && void keep(traced.content)}
          >
            Keep this board
          </button>
        </>
      )}
      <button type="button" onClick={onDone}>
        Leave it
      </button>
    </section>
  );
}

/** The file read again with every answer. */
function useTrace(fileName: string, text: string) {
  const engine = useEngine();
  const [name, setName] = useState(fileName.replace(/\.[A-Za-z_]+$/, ""));
  const [supply, setSupply] = useState<SupplyTyped>(UNTYPED);
  const [mapped, setMapped] = useState<Readonly<Record<string, MappedPins | null>>>({});
  const [asked, setAsked] = useState<Asked>(NOTHING);
  const [traced, setTraced] = useState<TracedFile | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  useEffect(() => {
    if (engine === null) return;
    let wanted = true;
    const answers: TraceAnswers = { name: name.trim(), supply: supplyOf(supply), zero: supply.zero, mapped };
    engine.trace(text, answers).then(
      (found) => {
        if (!wanted) return;
        setTraced(found);
        setAsked((before) => moreAsked(before, found.unmapped));
        setProblem(null);
      },
      (error: Error) => wanted && setProblem(`${fileName}: ${error.message}`),
    );
    return () => {
      wanted = false;
    };
  }, [engine, text, fileName, name, supply, mapped]);
  return { name, setName, supply, setSupply, mapped, setMapped, asked, traced, problem };
}

type Asked = ReadonlyMap<string, TracedFile["unmapped"][number]>;
const NOTHING: Asked = new Map();

/** Once asked about, a name stays in the table, so that its answer can be changed. */
function moreAsked(before: Asked, unmapped: TracedFile["unmapped"]): Asked {
  const fresh = unmapped.filter(({ name }) => !before.has(name));
  return fresh.length === 0 ? before : new Map([...before, ...fresh.map((one) => [one.name, one] as const)]);
}

function LeftOut({ traced: { notUnderstood } }: { readonly traced: TracedFile }) {
  if (notUnderstood.length === 0) return <p className="aside">All of the file is understood.</p>;
  return (
    <details open={notUnderstood.length <= 8}>
      <summary>
        <span>
          Not understood <small>{notUnderstood.length} places</small>
        </span>
      </summary>
      <ul aria-label="Not understood">
        {notUnderstood.map(({ line, text, why }) => (
          <li key={`${line} ${text} ${why}`}>
            line {line}, <b>{text}</b>: {why}
          </li>
        ))}
      </ul>
    </details>
  );
}
