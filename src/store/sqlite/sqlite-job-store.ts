/** Jobs kept in one SQLite file: rows in, rows out; every rule that SQL can hold stands in `schema.ts`. */

import { identityOf } from "../../board/board-identity.ts";
import type { AlbumStore, KeepsAlbums } from "../../job/board-album.ts";
import type { BoardStore, KeepsBoards } from "../../job/board-store.ts";
import { type AskedBoard, type EarlierJob, earlierJobs } from "../../job/earlier-jobs.ts";
import { jobLine } from "../../job/job-line.ts";
import type {
  AcceptLog,
  Clock,
  JobHeader,
  JobStore,
  JobSummary,
  KeptEvent,
  KeptJob,
  NewJob,
  Picture,
  PracticeInfo,
  Refusal,
  Written,
} from "../../job/job-store.ts";
import { NEW_SHOP, type Shop, type ShopStore } from "../../job/shop.ts";
import { movesOfJob } from "../../parts/stock/moves-of-job.ts";
import type { Stock } from "../../parts/stock/stock.ts";
import type { CountEvent } from "../../parts/stock/stock-event.ts";
import type { Count, StockStore } from "../../parts/stock/stock-store.ts";
import type { Parsed } from "../../units/outcome.ts";
import { sortNewEvents } from "../new-events.ts";
import { boardNameOf, createConflict, isSameJob, kindOnBoard, noSuchJob } from "../outcomes.ts";
import { BoardRows } from "./board-rows.ts";
import { inTransaction, type Row, type SqlConnection, type SqlValue } from "./connection.ts";
import { PictureRows } from "./picture-rows.ts";
import { migrate } from "./schema.ts";
import { StockRows } from "./stock-rows.ts";

export class SqliteJobStore implements JobStore, KeepsBoards, KeepsAlbums, StockStore, ShopStore {
  readonly #connection: SqlConnection;
  readonly #clock: Clock;
  readonly boards: BoardStore;
  readonly albums: AlbumStore;
  readonly #pictures: PictureRows;
  readonly #stock: StockRows;

  /** Takes over the connection and brings its schema up to date; throws where that cannot be done. */
  constructor(connection: SqlConnection, clock: Clock) {
    this.#connection = connection;
    this.#clock = clock;
    migrate(connection, clock);
    this.boards = new BoardRows(connection, clock);
    this.#pictures = new PictureRows(connection, clock);
    this.albums = this.#pictures;
    this.#stock = new StockRows(connection);
  }

  async createJob(job: NewJob): Promise<Written | Refusal> {
    return inTransaction(this.#connection, () => {
      const there = this.#jobRow(job.id);
      if (there !== null) {
        const events = this.#events(job.id);
        return isSameJob({ ...headOf(there), events }, job)
          ? { ok: true, added: 0, length: events.length }
          : createConflict(job.id);
      }
      const sorted = sortNewEvents([], job.events);
      if (!sorted.ok) return sorted;
      const now = this.#clock();
      this.#connection.run(
        "INSERT INTO job (id, title, practice, board_name, header, created_at) VALUES (?, ?, ?, ?, ?, ?)",
        [
          job.id,
          job.title,
          job.practice === null ? null : JSON.stringify(job.practice),
          boardNameOf(job.header),
          JSON.stringify(job.header),
          now,
        ],
      );
      this.#insertEvents(job.id, sorted.added, now);
      return { ok: true, added: 1, length: sorted.added.length };
    });
  }

  async listJobs(): Promise<readonly JobSummary[]> {
    const rows = this.#connection.all(
      `SELECT job.id, title, practice, board_name, created_at,
         json_extract(header, '$.customer') AS customer, json_extract(header, '$.unit') AS unit,
         (SELECT count(*) FROM event WHERE event.job = job.id) AS event_count,
         max(created_at,
           coalesce((SELECT max(received_at) FROM event WHERE event.job = job.id), ''),
           coalesce((SELECT max(received_at) FROM picture_of_job WHERE picture_of_job.job = job.id), '')) AS changed_at
       FROM job
       ORDER BY changed_at DESC, job.rowid DESC`,
      [],
    );
    const logs = this.#tellingLogs();
    return rows.map((row) => ({
      id: text(row.id),
      title: text(row.title),
      practice: practiceOf(row.practice),
      boardName: text(row.board_name),
      createdAt: text(row.created_at),
      changedAt: text(row.changed_at),
      eventCount: Number(row.event_count),
      ...jobLine({ customer: row.customer, unit: row.unit }, logs.get(text(row.id)) ?? []),
    }));
  }

  async earlierJobs(board: AskedBoard): Promise<readonly EarlierJob[]> {
    const rows = this.#connection.all(
      `SELECT job.id, header,
         max(created_at, coalesce((SELECT max(received_at) FROM event WHERE event.job = job.id), '')) AS changed_at
       FROM job
       WHERE practice IS NULL
         AND (coalesce(json_extract(header, '$.board.identity'), board_name) = ? OR json_extract(header, '$.board.family') = ?)
       ORDER BY changed_at DESC, job.rowid DESC`,
      [identityOf(board), board.family],
    );
    const jobs = rows.map((row) => ({
      id: text(row.id),
      header: JSON.parse(text(row.header)) as JobHeader,
      events: this.#events(text(row.id)),
      changedAt: text(row.changed_at),
    }));
    return earlierJobs(board, jobs);
  }

  /** What a list tells of each job: closes, undos and new parts, and of jobs that were ever put aside the whole log. */
  #tellingLogs(): ReadonlyMap<string, readonly KeptEvent[]> {
    const rows = this.#connection.all(
      `SELECT job, body FROM event
       WHERE json_extract(body, '$.do') IN ('close', 'undo', 'replace')
         OR job IN (SELECT job FROM event WHERE json_extract(body, '$.do') = 'wait')
       ORDER BY job, arrival`,
      [],
    );
    const logs = new Map<string, KeptEvent[]>();
    for (const row of rows) {
      const log = logs.get(text(row.job)) ?? [];
      logs.set(text(row.job), log);
      log.push(JSON.parse(text(row.body)) as KeptEvent);
    }
    return logs;
  }

  async readJob(id: string): Promise<KeptJob | null> {
    const row = this.#jobRow(id);
    if (row === null) return null;
    return {
      id,
      ...headOf(row),
      createdAt: text(row.created_at),
      events: this.#events(id),
      pictures: this.#pictures.ofJob(id),
    };
  }

  async appendEvents(
    job: string,
    events: readonly KeptEvent[],
    accept: AcceptLog,
  ): Promise<Written | Refusal> {
    return inTransaction(this.#connection, () => {
      const row = this.#jobRow(job);
      if (row === null) return noSuchJob(job);
      const log = this.#events(job);
      const sorted = sortNewEvents(log, events);
      if (!sorted.ok) return sorted;
      if (sorted.added.length > 0) {
        const { header, practice } = headOf(row);
        const whole = [...log, ...sorted.added];
        const problem = accept(header, whole, log.length);
        if (problem !== null) return { ok: false, kind: "not-accepted", problem };
        const now = this.#clock();
        this.#insertEvents(job, sorted.added, now);
        // a practice board takes parts out of no real drawer
        if (practice === null)
          this.#stock.insert(movesOfJob(job, whole, log.length, kindOnBoard(header)), now);
      }
      return { ok: true, added: sorted.added.length, length: log.length + sorted.added.length };
    });
  }

  async addPicture(job: string, picture: Picture): Promise<Written | Refusal> {
    return inTransaction(this.#connection, () =>
      this.#jobRow(job) === null ? noSuchJob(job) : this.#pictures.addToJob(job, picture),
    );
  }

  async readPicture(job: string, id: string): Promise<Picture | null> {
    return this.#pictures.oneOfJob(job, id);
  }

  async readStock(): Promise<Stock> {
    return this.#stock.read();
  }

  async countStock(count: Count): Promise<Parsed<CountEvent | null>> {
    return inTransaction(this.#connection, () => {
      const counted = count(this.#stock.read());
      if (counted.ok && counted.value !== null) this.#stock.insert([counted.value], this.#clock());
      return counted;
    });
  }

  async readShop(): Promise<Shop> {
    const [last] = this.#connection.all("SELECT body FROM shop ORDER BY arrival DESC LIMIT 1", []);
    return last === undefined ? NEW_SHOP : (JSON.parse(text(last.body)) as Shop);
  }

  async keepShop(shop: Shop): Promise<void> {
    this.#connection.run("INSERT INTO shop (body, received_at) VALUES (?, ?)", [
      JSON.stringify(shop),
      this.#clock(),
    ]);
  }

  async close(): Promise<void> {
    this.#connection.close();
  }

  #jobRow(id: string): Row | null {
    return (
      this.#connection.all("SELECT title, practice, header, created_at FROM job WHERE id = ?", [id])[0] ??
      null
    );
  }

  #events(job: string): KeptEvent[] {
    const rows = this.#connection.all("SELECT body FROM event WHERE job = ? ORDER BY arrival", [job]);
    return rows.map((row) => JSON.parse(text(row.body)) as KeptEvent);
  }

  #insertEvents(job: string, events: readonly KeptEvent[], now: string): void {
    for (const event of events) {
      this.#connection.run("INSERT INTO event (job, id, body, received_at) VALUES (?, ?, ?, ?)", [
        job,
        event.id,
        JSON.stringify(event),
        now,
      ]);
    }
  }
}

function headOf(row: Row): { title: string; practice: PracticeInfo | null; header: JobHeader } {
  return {
    title: text(row.title),
    practice: practiceOf(row.practice),
    header: JSON.parse(text(row.header)) as JobHeader,
  };
}

function practiceOf(value: SqlValue | undefined): PracticeInfo | null {
  return typeof value === "string" ? (JSON.parse(value) as PracticeInfo) : null;
}

/** A column that the schema says is text. */
function text(value: SqlValue | undefined): string {
  if (typeof value !== "string") throw new Error(`the database holds ${typeof value} where text belongs`);
  return value;
}
