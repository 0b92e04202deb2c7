/** The server's calls, with its one-line problems as errors. */

import { said } from "../messages/said.ts";
import type {
  AlbumAnswer,
  AppendAnswer,
  BoardAnswer,
  BoardList,
  ComebacksAnswer,
  CreateJobAnswer,
  CreateJobRequest,
  EarlierList,
  ErrorAnswer,
  JobAnswer,
  JobList,
  NewAlbumVersion,
  NewBoardVersion,
  OwnBoardAnswer,
  OwnBoardList,
  WarrantyAnswer,
} from "../wire/job-api.ts";
import type { DriverList, MeterNow, MeterSetting, WantedReading } from "../wire/meter-api.ts";
import type { PdfRequest } from "../wire/paper-api.ts";
import type { ShopAnswer, ShopChange } from "../wire/shop-api.ts";
import type { GoneLine, ImportAnswer, StockAnswer, TypedLine } from "../wire/stock-api.ts";
import type { KeptEvent } from "./job-event.ts";

/** The server answered, and said no: trying the same again will not help. */
export class Refused extends Error {
  readonly status: number;

  constructor(problem: string, status: number) {
    super(problem);
    this.status = status;
  }
}
/** The server could not be reached: what was to be sent stays in this browser and is sent later. */
export class Away extends Error {}

const PATIENCE_MS = 8_000;
const SILENT = said`the bench computer does not answer`;

async function call<Answer>(path: string, request: RequestInit = {}): Promise<Answer> {
  let response: Response;
  try {
    response = await fetch(`/api${path}`, { ...request, signal: AbortSignal.timeout(PATIENCE_MS) });
  } catch {
    throw new Away(SILENT);
  }
  if (response.status === 204) return null as Answer;
  const json = response.headers.get("content-type")?.includes("json") === true;
  if (!json || response.status >= 500) throw new Away(said`the bench computer answered ${response.status}`);
  const body = (await response.json()) as Answer | ErrorAnswer;
  if (!response.ok)
    throw new Refused(problemIn(body as Partial<ErrorAnswer>, response.status), response.status);
  return body as Answer;
}

/** The server's line with its seams, where it has some: the page tells it in its own language. */
function problemIn({ said: told, error }: Partial<ErrorAnswer>, status: number): string {
  return told ?? error ?? said`refused (${status})`;
}

function post<Answer>(path: string, body: unknown): Promise<Answer> {
  return call(path, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(body),
  });
}

/** A file as the server gives it. */
async function fetchFile(path: string, body: unknown): Promise<Blob> {
  let response: Response;
  try {
    response = await fetch(`/api${path}`, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify(body),
      signal: AbortSignal.timeout(PATIENCE_MS),
    });
  } catch {
    throw new Away(SILENT);
  }
  if (!response.ok) throw new Refused(said`the bench computer answered ${response.status}`, response.status);
  return response.blob();
}

export const api = {
  jobs: () => call<JobList>("/jobs"),
  job: (id: string) => call<JobAnswer>(`/jobs/${id}`),
  create: (request: CreateJobRequest) => post<CreateJobAnswer>("/jobs", request),
  append: (id: string, events: readonly KeptEvent[]) => post<AppendAnswer>(`/jobs/${id}/events`, { events }),
  picture: (id: string, picture: string, data: Blob) =>
    call<unknown>(`/jobs/${id}/pictures/${picture}`, {
      method: "POST",
      headers: { "content-type": data.type },
      body: data,
    }),
  earlier: (board: { readonly name: string; readonly family: string; readonly identity: string }) =>
    call<EarlierList>(`/earlier?${new URLSearchParams(board)}`),
  comebacks: (id: string) => call<ComebacksAnswer>(`/jobs/${id}/comebacks`),
  warranty: (currency: string, comebackCost: number) =>
    call<WarrantyAnswer>(
      `/warranty?${new URLSearchParams({ currency, comebackCost: String(comebackCost) })}`,
    ),
  boards: () => call<BoardList>("/boards"),
  board: (id: string) => call<BoardAnswer>(`/boards/${id}`),
  ownBoards: () => call<OwnBoardList>("/own-boards"),
  ownBoard: (id: string) => call<OwnBoardAnswer>(`/own-boards/${id}`),
  keepBoard: (id: string, version: NewBoardVersion) =>
    post<AppendAnswer>(`/own-boards/${id}/versions`, version),
  shop: () => call<ShopAnswer>("/shop"),
  keepShop: (change: ShopChange) => post<ShopAnswer>("/shop", change),
  setMeter: (setting: MeterSetting) => post<MeterNow>("/meter", setting),
  meterWanted: (wanted: WantedReading) => post<null>("/meter/wanted", wanted),
  meterDrivers: () => call<DriverList>("/meter/drivers"),
  boardPicture: (id: string, data: Blob) =>
    call<unknown>(`/board-pictures/${id}`, {
      method: "POST",
      headers: { "content-type": data.type },
      body: data,
    }),
  album: (board: string) => call<AlbumAnswer>(`/albums?${new URLSearchParams({ board })}`),
  keepAlbum: (board: string, version: NewAlbumVersion) =>
    post<AppendAnswer>(`/albums?${new URLSearchParams({ board })}`, version),
  stock: () => call<StockAnswer>("/stock"),
  stockLine: (typed: TypedLine) => post<StockAnswer>("/stock/lines", typed),
  stockGone: (gone: GoneLine) => post<StockAnswer>("/stock/gone", gone),
  stockImport: (text: string) =>
    call<ImportAnswer>("/stock/import", {
      method: "POST",
      headers: { "content-type": "text/csv" },
      body: text,
    }),
  paperPdf: (request: PdfRequest) => fetchFile("/papers", request),
};
