/** A circuit traced elsewhere, becoming a board: what it runs on, what nobody could guess, and what is left out. */
import { useEffect, useState } from "react";
import { said, saidCount } from "../../messages/said.ts";
import type { MappedPins, TraceAnswers, TracedFile } from "../../wire/own-board.ts";
import { keepOwnBoard, newBoardId } from "../board-keeper.ts";
import { go } from "../route.ts";
import { figure, say, sayWith } from "../say.ts";
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
    <section className="preview traced" aria-label={say`A traced circuit`}>
      <h2>{sayWith`Traced: ${<bdi>{fileName}</bdi>}`}</h2>
      {problem !== null && (
        <p role="alert" className="problem">
          {say(problem)}
        </p>
      )}
      {traced !== null && (
        <>
          <label className="entry">
            {say`What to call the board`}
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
            <p role="status">{say`No board yet: ${traced.problem ?? ""}`}</p>
          ) : (
            <p role="status">{say(madeWords(traced.parts, traced.unmapped.length))}</p>
          )}
          <button
            type="button"
            className="primary"
            disabled={traced.content === null}
            onClick={() => traced.content !== null && void keep(traced.content)}
          >
            {say`Keep this board`}
          </button>
        </>
      )}
      <button type="button" onClick={onDone}>
        {say`Leave it`}
      </button>
    </section>
  );
}

function madeWords(parts: number, leftOut: number): string {
  const made = saidCount(parts, "A board of {0} part", "A board of {0} parts");
  const open = saidCount(leftOut, "{0} name is still left out", "{0} names are still left out");
  return leftOut === 0 ? said`${made}.` : said`${made}; ${open}.`;
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
      (error: Error) => wanted && setProblem(said`${fileName}: ${error.message}`),
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
  if (notUnderstood.length === 0) return <p className="aside">{say`All of the file is understood.`}</p>;
  return (
    <details open={notUnderstood.length <= 8}>
      <summary>
        <span>
          {say`Not understood`}{" "}
          <small>{say(saidCount(notUnderstood.length, "{0} place", "{0} places"))}</small>
        </span>
      </summary>
      <ul aria-label={say`Not understood`}>
        {notUnderstood.map(({ line, text, why }) => (
          <li key={`${line} ${text} ${why}`}>
            {sayWith`line ${figure(line)}, ${<b>{text}</b>}: ${say(why)}`}
          </li>
        ))}
      </ul>
    </details>
  );
}
