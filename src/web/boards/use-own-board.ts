/** A board of one's own being edited: each change is kept at once, and the last can be taken back. */
import { useEffect, useRef, useState } from "react";
import { said } from "../../messages/said.ts";
import type { BoardChange } from "../../wire/composer-view.ts";
import type { ReferenceChange } from "../../wire/own-board.ts";
import { boardFacts } from "../board-facts.ts";
import { keepOwnBoard, type OwnBoardKept, openOwnBoard } from "../board-keeper.ts";
import { Engine } from "../engine.ts";
import type { OwnBoardAnswer, ReviewList } from "../engine-messages.ts";
import { lessonsAtHand } from "../lessons.ts";
import { changeAlbum, openAlbum } from "../picture/album-keeper.ts";
import { type Renaming, renamedPlaces } from "../picture/renamed-places.ts";
import { useEngine } from "../use-engine.ts";

export interface EditedBoard {
  /** null: not open yet */
  readonly board: OwnBoardAnswer | null;
  readonly problem: string | null;
  readonly busy: boolean;
  readonly canUndo: boolean;
  /** true: the change is in */
  change(change: BoardChange | ReferenceChange): Promise<boolean>;
  undo(): Promise<void>;
  /** another version's content on top, as a new version; undo takes it back too */
  back(content: Readonly<Record<string, unknown>>): Promise<void>;
}

/** A state that can be gone back to, and the renaming that led away from it. */
interface Before {
  readonly answer: OwnBoardAnswer;
  readonly renaming: Renaming | null;
}

const since = (kept: readonly Before[], answer: OwnBoardAnswer, renaming: Renaming | null = null) => [
  ...kept,
  { answer, renaming },
];

function renamingOf(change: BoardChange | ReferenceChange): Renaming | null {
  if (change.do !== "rename-part" && change.do !== "rename-net") return null;
  return { of: change.do === "rename-part" ? "part" : "net", from: change.from, to: change.to.trim() };
}

/** Pins go by the names of parts and nets. */
async function renamePins({ content }: OwnBoardAnswer, renaming: Renaming | null): Promise<void> {
  if (renaming === null) return;
  const { identity } = boardFacts(content);
  const { pins } = await openAlbum(identity);
  // a board without pins gets no version of its album for nothing
  if (pins.length > 0) await changeAlbum(identity, (album) => renamedPlaces(album, renaming));
}

async function opened(
  id: string,
  engine: Engine,
): Promise<readonly [OwnBoardAnswer, OwnBoardKept["outcomes"]]> {
  const kept = await openOwnBoard(id);
  if (kept === null) throw new Error(said`This board is neither in this browser nor on the bench computer.`);
  return [await engine.ownBoard(kept.board, null, await lessonsAtHand()), kept.outcomes ?? {}];
}

/** Changes made faster than the engine works them in wait their turn: each is made on the board that the one before left. */
export function useOwnBoard(id: string): EditedBoard {
  const engine = useEngine();
  const [board, setBoard] = useState<OwnBoardAnswer | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const [waiting, setWaiting] = useState(0);
  const [canUndo, setCanUndo] = useState(false);
  const outcomes = useRef<OwnBoardKept["outcomes"]>({});
  const latest = useRef<OwnBoardAnswer | null>(null);
  const before = useRef<readonly Before[]>([]);
  const inTurn = useRef<Promise<unknown>>(Promise.resolve());
  useEffect(() => {
    if (engine === null) return;
    opened(id, engine).then(
      ([answer, counted]) => {
        outcomes.current = counted;
        latest.current = answer;
        setBoard(answer);
      },
      (error: Error) => setProblem(error.message),
    );
  }, [engine, id]);
  const take = async (next: OwnBoardAnswer, kept: readonly Before[]) => {
    await keepOwnBoard({ id, title: next.view.name, board: next.content, outcomes: outcomes.current });
    latest.current = next;
    before.current = kept;
    setBoard(next);
    setCanUndo(kept.length > 0);
    setProblem(null);
  };
  const turn = (work: (now: OwnBoardAnswer, engine: Engine) => Promise<void>): Promise<boolean> => {
    const done = inTurn.current.then(async () => {
      if (engine === null || latest.current === null) return false;
      setWaiting((count) => count + 1);
      try {
        await work(latest.current, engine);
        return true;
      } catch (error) {
        setProblem(said`Not changed: ${(error as Error).message}`);
        return false;
      } finally {
        setWaiting((count) => count - 1);
      }
    });
    inTurn.current = done;
    return done;
  };
  const change = (wanted: BoardChange | ReferenceChange) =>
    turn(async (now, engine) => {
      const next = await engine.ownBoard(now.content, wanted, await lessonsAtHand());
      const renaming = renamingOf(wanted);
      await take(next, since(before.current, now, renaming));
      await renamePins(next, renaming);
    });
  const undo = async () => {
    await turn(async () => {
      const last = before.current.at(-1);
      if (last === undefined) return;
      const { answer, renaming } = last;
      await take(answer, before.current.slice(0, -1));
      await renamePins(answer, renaming && { ...renaming, from: renaming.to, to: renaming.from });
    });
  };
  const back = async (content: Readonly<Record<string, unknown>>) => {
    await turn(async (now, engine) =>
      take(await engine.ownBoard(content, null, await lessonsAtHand()), since(before.current, now)),
    );
  };
  return { board, problem, busy: waiting > 0, canUndo, change, undo, back };
}

/** What no cold check tells apart on the board as it is, from a worker of its own; null while that is being worked out. */
export function useAlike(board: OwnBoardAnswer | null): readonly ReviewList[] | null {
  const [found, setFound] = useState<{ of: unknown; lists: readonly ReviewList[] } | null>(null);
  const wanted = useRef<unknown>(null);
  const content = board?.content ?? null;
  useEffect(() => {
    if (content === null) return;
    wanted.current = content;
    // A newer change stops the worker: nobody waits for what an older board would have said.
    const engine = new Engine();
    engine.alike(content).then(
      (lists) => wanted.current === content && setFound({ of: content, lists }),
      () => undefined,
    );
    return () => engine.stop();
  }, [content]);
  return found !== null && found.of === content ? found.lists : null;
}
