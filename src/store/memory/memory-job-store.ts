/** A job store that forgets when the process ends: for tests, and the plainest statement of the port. */
import type { AlbumStore, KeepsAlbums } from "../../job/board-album.ts";
import type { BoardStore, KeepsBoards } from "../../job/board-store.ts";
import { type AskedBoard, type EarlierJob, earlierJobs } from "../../job/earlier-jobs.ts";
import { jobLine } from "../../job/job-line.ts";
import type {
  AcceptLog,
  Clock,
  JobStore,
  JobSummary,
  KeptEvent,
  KeptJob,
  NewJob,
  Picture,
  Refusal,
  Written,
} from "../../job/job-store.ts";
import { NEW_SHOP, type Shop, type ShopStore } from "../../job/shop.ts";
import { movesOfJob } from "../../parts/stock/moves-of-job.ts";
import { type Stock, StockFold } from "../../parts/stock/stock.ts";
import type { CountEvent } from "../../parts/stock/stock-event.ts";
import type { Count, StockStore } from "../../parts/stock/stock-store.ts";
import type { Parsed } from "../../units/outcome.ts";
import { sortNewEvents } from "../new-events.ts";
import {
  boardNameOf,
  createConflict,
  isSameJob,
  kindOnBoard,
  noSuchJob,
  pictureConflict,
  samePicture,
} from "../outcomes.ts";
import { MemoryAlbumStore } from "./memory-album-store.ts";
import { MemoryBoardStore } from "./memory-board-store.ts";

interface Entry {
  readonly born: NewJob;
  readonly createdAt: string;
  changedAt: string;
  /** order of the last change, for listing */
  changeNumber: number;
  events: KeptEvent[];
  pictures: Picture[];
}

export class MemoryJobStore implements JobStore, KeepsBoards, KeepsAlbums, StockStore, ShopStore {
  readonly #jobs = new Map<string, Entry>();
  readonly #clock: Clock;
  readonly boards: BoardStore;
  readonly albums: AlbumStore = new MemoryAlbumStore();
  readonly #stock = new StockFold();
  #shop: Shop = NEW_SHOP;
  #changes = 0;

  constructor(clock: Clock) {
    this.#clock = clock;
    this.boards = new MemoryBoardStore(clock);
  }

  async createJob(job: NewJob): Promise<Written | Refusal> {
    const there = this.#jobs.get(job.id);
    if (there !== undefined) {
      return isSameJob({ ...there.born, events: there.events }, job)
        ? { ok: true, added: 0, length: there.events.length }
        : createConflict(job.id);
    }
    const sorted = sortNewEvents([], job.events);
    if (!sorted.ok) return sorted;
    const now = this.#clock();
    this.#jobs.set(job.id, {
      born: structuredClone(job),
      createdAt: now,
      changedAt: now,
      changeNumber: ++this.#changes,
      events: structuredClone([...sorted.added]),
      pictures: [],
    });
    return { ok: true, added: 1, length: sorted.added.length };
  }

  async listJobs(): Promise<readonly JobSummary[]> {
    return [...this.#jobs.values()]
      .sort((a, b) => b.changeNumber - a.changeNumber)
      .map((entry) => ({
        id: entry.born.id,
        title: entry.born.title,
        practice: entry.born.practice,
        boardName: boardNameOf(entry.born.header),
        createdAt: entry.createdAt,
        changedAt: entry.changedAt,
        eventCount: entry.events.length,
        ...jobLine(entry.born.header, entry.events),
      }));
  }

  async earlierJobs(board: AskedBoard): Promise<readonly EarlierJob[]> {
    const jobs = [...this.#jobs.values()].filter(({ born }) => born.practice === null);
    return earlierJobs(
      board,
      jobs
        .sort((a, b) => b.changeNumber - a.changeNumber)
        .map(({ born, events, changedAt }) => ({ id: born.id, header: born.header, events, changedAt })),
    );
  }

  async readJob(id: string): Promise<KeptJob | null> {
    const entry = this.#jobs.get(id);
    if (entry === undefined) return null;
    return structuredClone({
      id,
      title: entry.born.title,
      practice: entry.born.practice,
      header: entry.born.header,
      createdAt: entry.createdAt,
      events: entry.events,
      pictures: entry.pictures.map(({ id: name, type, data }) => ({ id: name, type, bytes: data.length })),
    });
  }

  async appendEvents(
    job: string,
    events: readonly KeptEvent[],
    accept: AcceptLog,
  ): Promise<Written | Refusal> {
    const entry = this.#jobs.get(job);
    if (entry === undefined) return noSuchJob(job);
    const sorted = sortNewEvents(entry.events, events);
    if (!sorted.ok) return sorted;
    if (sorted.added.length === 0) return { ok: true, added: 0, length: entry.events.length };
    const whole = [...entry.events, ...structuredClone([...sorted.added])];
    const problem = accept(entry.born.header, whole, entry.events.length);
    if (problem !== null) return { ok: false, kind: "not-accepted", problem };
    // a practice board takes parts out of no real drawer
    if (entry.born.practice === null)
      for (const move of movesOfJob(job, whole, entry.events.length, kindOnBoard(entry.born.header)))
        this.#stock.add(move);
    entry.events = whole;
    this.#touch(entry);
    return { ok: true, added: sorted.added.length, length: whole.length };
  }

  async addPicture(job: string, picture: Picture): Promise<Written | Refusal> {
    const entry = this.#jobs.get(job);
    if (entry === undefined) return noSuchJob(job);
    const there = entry.pictures.find((kept) => kept.id === picture.id);
    if (there !== undefined) {
      return samePicture(there, picture)
        ? { ok: true, added: 0, length: entry.pictures.length }
        : pictureConflict(picture.id);
    }
    entry.pictures.push(structuredClone(picture));
    this.#touch(entry);
    return { ok: true, added: 1, length: entry.pictures.length };
  }

  async readPicture(job: string, id: string): Promise<Picture | null> {
    const kept = this.#jobs.get(job)?.pictures.find((picture) => picture.id === id);
    return kept === undefined ? null : structuredClone(kept);
  }

  async readStock(): Promise<Stock> {
    return this.#stock;
  }

  async countStock(count: Count): Promise<Parsed<CountEvent | null>> {
    const counted = count(this.#stock);
    if (counted.ok && counted.value !== null) this.#stock.add(structuredClone(counted.value));
    return counted;
  }

  async readShop(): Promise<Shop> {
    return structuredClone(this.#shop);
  }

  async keepShop(shop: Shop): Promise<void> {
    this.#shop = structuredClone(shop);
  }

  async close(): Promise<void> {
    this.#jobs.clear();
  }

  #touch(entry: Entry): void {
    entry.changedAt = this.#clock();
    entry.changeNumber = ++this.#changes;
  }
}
