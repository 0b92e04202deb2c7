/** A board that somebody gave, as a file: shown with what it would change, and kept when that is wanted. */
import { useState } from "react";
import { boardFacts } from "../board-facts.ts";
import { keepOwnBoard, newBoardId, type OwnBoardLine, openOwnBoard } from "../board-keeper.ts";
import type { BroughtBoard } from "../engine-messages.ts";
import { keepPackedAlbum } from "../picture/packed-album.ts";
import { say, sayWith } from "../say.ts";
import { useEngine } from "../use-engine.ts";
import { TraceBoard } from "./trace-board.tsx";

interface Props {
  readonly boards: readonly OwnBoardLine[];
  onKept(): void;
}

interface Preview extends BroughtBoard {
  /** the board it would become a version of; null: a new one */
  readonly id: string | null;
}

export function BringBoard({ boards, onKept }: Props) {
  const engine = useEngine();
  const [preview, setPreview] = useState<Preview | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const [traced, setTraced] = useState<{ readonly fileName: string; readonly text: string } | null>(null);
  const read = async (file: File) => {
    if (engine === null) return;
    setPreview(null);
    setTraced(null);
    setProblem(null);
    try {
      const text = await file.text();
      if (!/^\s*\{/.test(text)) return setTraced({ fileName: file.name, text });
      const fresh = await engine.bring({ name: file.name, text, before: null });
      const same = boards.find(({ title }) => title === fresh.title);
      const there = same === undefined ? null : await openOwnBoard(same.id);
      const shown =
        there === null ? fresh : await engine.bring({ name: file.name, text, before: there.board });
      // what it is known by here stays, so that its pictures and jobs do
      const identity = there === null ? {} : { identity: boardFacts(there.board).identity };
      setPreview({ ...shown, content: { ...shown.content, ...identity }, id: there?.id ?? null });
      setProblem(null);
    } catch (error) {
      setProblem((error as Error).message);
    }
  };
  const keep = async ({ id, title, content, outcomes, pictures }: Preview) => {
    if (pictures !== null) await keepPackedAlbum(boardFacts(content).identity, pictures);
    await keepOwnBoard({ id: id ?? newBoardId(), title, board: content, outcomes });
    setPreview(null);
    onKept();
  };
  return (
    <section aria-label={say`Bring a board`} className="bring-board">
      <label className="entry">
        {say`A file of a board (packed or bare), or a circuit traced elsewhere: a KiCad netlist or schematic, a SPICE deck`}
        <input
          type="file"
          accept=".json,.net,.kicad_sch,.cir,.sp,.spice,.ckt,application/json,text/plain"
          onChange={(event) => {
            const [file] = event.target.files ?? [];
            if (file !== undefined) void read(file);
            event.target.value = "";
          }}
        />
      </label>
      {problem !== null && (
        <p role="alert" className="problem">
          {say(problem)}
        </p>
      )}
      {traced !== null && <TraceBoard key={traced.text} {...traced} onDone={() => setTraced(null)} />}
      {preview !== null && (
        <Brought preview={preview} onKeep={() => void keep(preview)} onLeave={() => setPreview(null)} />
      )}
    </section>
  );
}

interface BroughtProps {
  readonly preview: Preview;
  onKeep(): void;
  onLeave(): void;
}

function Brought({ preview: { id, title, changes }, onKeep, onLeave }: BroughtProps) {
  const named = <bdi>{title}</bdi>;
  return (
    <div className="preview" role="status">
      <h2>{id === null ? sayWith`New: ${named}` : sayWith`A new version of ${named}`}</h2>
      <ul>
        {changes.map((line) => (
          <li key={line}>{say(line)}</li>
        ))}
      </ul>
      <button type="button" className="primary" onClick={onKeep}>
        {id === null ? say`Keep this board` : say`Keep it as the new version`}
      </button>
      <button type="button" onClick={onLeave}>
        {say`Leave it`}
      </button>
    </div>
  );
}
