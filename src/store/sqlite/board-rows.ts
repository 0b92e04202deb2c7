/** Boards of one's own in the same file as the jobs: a row a version. */
import {
  type BoardStore,
  type NewBoardVersion,
  type OwnBoard,
  type OwnBoardSummary,
  ownBoardSummary,
} from "../../job/board-store.ts";
import type { Clock, Refusal, Written } from "../../job/job-store.ts";
import { sameVersion, versionConflict } from "../outcomes.ts";
import { inTransaction, type SqlConnection } from "./connection.ts";

export class BoardRows implements BoardStore {
  readonly #connection: SqlConnection;
  readonly #clock: Clock;

  constructor(connection: SqlConnection, clock: Clock) {
    this.#connection = connection;
    this.#clock = clock;
  }

  async listBoards(): Promise<readonly OwnBoardSummary[]> {
    const rows = this.#connection.all(
      "SELECT board FROM board_version GROUP BY board ORDER BY max(arrival) DESC",
      [],
    );
    return rows.flatMap(({ board }) => ownBoardSummary(this.#board(String(board))) ?? []);
  }

  async readBoard(id: string): Promise<OwnBoard | null> {
    const board = this.#board(id);
    return board.versions.length === 0 ? null : board;
  }

  async keepVersion(board: string, version: NewBoardVersion): Promise<Written | Refusal> {
    return inTransaction(this.#connection, () => {
      const { versions } = this.#board(board);
      const there = versions.find((kept) => kept.id === version.id);
      if (there !== undefined)
        return sameVersion(there, version)
          ? { ok: true, added: 0, length: versions.length }
          : versionConflict(version.id);
      this.#connection.run(
        "INSERT INTO board_version (board, id, title, content, outcomes, received_at) VALUES (?, ?, ?, ?, ?, ?)",
        [
          board,
          version.id,
          version.title,
          version.content === null ? null : JSON.stringify(version.content),
          JSON.stringify(version.outcomes ?? {}),
          this.#clock(),
        ],
      );
      return { ok: true, added: 1, length: versions.length + 1 };
    });
  }

  #board(id: string): OwnBoard {
    const rows = this.#connection.all(
      "SELECT id, title, content, outcomes, received_at FROM board_version WHERE board = ? ORDER BY arrival",
      [id],
    );
    const versions = rows.map((row) => ({
      id: String(row.id),
      title: String(row.title),
      content: row.content === null ? null : (JSON.parse(String(row.content)) as NewBoardVersion["content"]),
      outcomes: JSON.parse(String(row.outcomes)) as Readonly<Record<string, unknown>>,
      receivedAt: String(row.received_at),
    }));
    return { id, versions };
  }
}
