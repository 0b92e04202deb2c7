/** Boards kept as long as the process runs: for tests, and the plainest statement of the port. */
import {
  type BoardStore,
  type NewBoardVersion,
  type OwnBoard,
  type OwnBoardSummary,
  ownBoardSummary,
} from "../../job/board-store.ts";
import type { Clock, Refusal, Written } from "../../job/job-store.ts";
import { sameVersion, versionConflict } from "../outcomes.ts";

export class MemoryBoardStore implements BoardStore {
  /** in order of the last change */
  readonly #boards = new Map<string, OwnBoard>();
  readonly #clock: Clock;

  constructor(clock: Clock) {
    this.#clock = clock;
  }

  async listBoards(): Promise<readonly OwnBoardSummary[]> {
    return [...this.#boards.values()].reverse().flatMap((board) => ownBoardSummary(board) ?? []);
  }

  async readBoard(id: string): Promise<OwnBoard | null> {
    return structuredClone(this.#boards.get(id) ?? null);
  }

  async keepVersion(id: string, version: NewBoardVersion): Promise<Written | Refusal> {
    const versions = this.#boards.get(id)?.versions ?? [];
    const there = versions.find((kept) => kept.id === version.id);
    if (there !== undefined)
      return sameVersion(there, version)
        ? { ok: true, added: 0, length: versions.length }
        : versionConflict(version.id);
    const kept = { ...structuredClone(version), receivedAt: this.#clock() };
    this.#boards.delete(id);
    this.#boards.set(id, { id, versions: [...versions, kept] });
    return { ok: true, added: 1, length: versions.length + 1 };
  }
}
