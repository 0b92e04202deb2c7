/** What was done before on boards of this number or family, without a word about whose they were. */

import type { JobEvent, Verdict } from "../bench/event.ts";
import { undoneEvents } from "../bench/fold.ts";
import { identityOf, identityOfContent } from "../board/board-identity.ts";
import { closedAs } from "./closed-as.ts";

export interface AskedBoard {
  readonly name: string;
  /** what it is known by, where that is not its name */
  readonly identity?: string;
  readonly family: string;
}

export interface EarlierJob {
  readonly id: string;
  /** RFC 3339; null where a file does not tell */
  readonly changedAt: string | null;
  readonly boardName: string;
  /** the same board, by whatever name; else only the same family */
  readonly sameBoard: boolean;
  readonly cause: string;
  readonly symptom: string;
  /** in the order of the log, undone ones left out: `replace F1` */
  readonly done: readonly string[];
  /** null while it is open */
  readonly verdict: Verdict | null;
  /** the board was brought again: the verdict was wrong, or something else failed */
  readonly cameBack: boolean;
}

/** Most jobs shown of one board. */
export const EARLIER_SHOWN = 50;

const WORK = new Set<JobEvent["do"]>(["replace", "clean", "resolder"]);

/** One job as a store or a file holds it: the header is parsed JSON that need not be a job at all. */
export interface StoredJob {
  readonly id: string;
  readonly header: Readonly<Record<string, unknown>>;
  readonly events: readonly JobEvent[];
  readonly changedAt: string | null;
}

/**
 * The id of the job whose board came back with this one; null where it is none, or came back for something that the repair has no part
 * in. A file is named by its path.
 */
export function comebackOf({ comebackOf: link }: StoredJob["header"]): string | null {
  if (typeof link !== "object" || link === null) return null;
  const fields = new Map<string, unknown>(Object.entries(link));
  const job = fields.get("job");
  if (typeof job !== "string" || job === "" || fields.get("reason") === "other") return null;
  return job.replace(/^.*[/\\]/, "").replace(/\.json$/, "");
}

const text = (value: unknown): string => (typeof value === "string" ? value : "");

function boardOf(header: StoredJob["header"]): AskedBoard {
  const { board } = header;
  if (typeof board !== "object" || board === null) return { name: "", family: "" };
  const fields = new Map<string, unknown>(Object.entries(board));
  return {
    name: text(fields.get("name")),
    identity: identityOfContent(board),
    family: text(fields.get("family")),
  };
}

/** Jobs on the board asked about, its own first, each group in the order given (latest change first, as stores list them). */
export function earlierJobs(asked: AskedBoard, jobs: readonly StoredJob[]): readonly EarlierJob[] {
  const cameBack = new Set(jobs.map(({ header }) => comebackOf(header)));
  const found = jobs.flatMap(({ id, header, events, changedAt }): EarlierJob[] => {
    const board = boardOf(header);
    const sameBoard = identityOf(board) === identityOf(asked);
    if (!sameBoard && (board.family === "" || board.family !== asked.family)) return [];
    const [cause, symptom] = [text(header.cause), text(header.symptom)];
    const verdict = closedAs(events);
    return [
      {
        id,
        changedAt,
        boardName: board.name,
        sameBoard,
        cause,
        symptom,
        done: workDone(events),
        verdict,
        cameBack: cameBack.has(id),
      },
    ];
  });
  return [...found.filter((job) => job.sameBoard), ...found.filter((job) => !job.sameBoard)].slice(
    0,
    EARLIER_SHOWN,
  );
}

function workDone(events: readonly JobEvent[]): string[] {
  const undone = undoneEvents(events);
  return events.flatMap((event, at) => {
    if (undone[at] === true || !WORK.has(event.do)) return [];
    const where =
      "part" in event && event.part !== undefined ? event.part : "stage" in event ? event.stage : "";
    return [`${event.do} ${where ?? ""}`.trim()];
  });
}
