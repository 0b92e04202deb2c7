/**
 * The envelopes of requests. What is inside (job, events) is judged by the same parser that reads files, so that a job
 * posted and a job read from disk are refused in the same words.
 */
import { z } from "zod";
import { type NewAlbumVersion, REVISION_LENGTH } from "../job/board-album.ts";
import type { NewBoardVersion } from "../job/board-store.ts";
import type { Parsed } from "../units/outcome.ts";
import { type AppendRequest, type CreateJobRequest, ID_PATTERN } from "../wire/job-api.ts";
import type { GoneLine, TypedLine } from "../wire/stock-api.ts";

/** More than any outbox holds after a day without the server. */
const EVENTS_PER_POST = 2000;
const TITLE_LENGTH = 200;

const id = z.string().regex(ID_PATTERN, "an id is 1 to 64 of letters, digits, _ and -");
const step = z.strictObject({
  words: z.string(),
  minutes: z.number(),
  money: z.number(),
  why: z.string(),
  places: z.array(z.string()).max(100).optional(),
});
const practice = z.strictObject({
  seed: z.int().min(0),
  recorded: z
    .strictObject({
      faults: z.array(z.string()).max(100),
      broke: z
        .array(z.strictObject({ fault: z.string(), entry: z.int().min(0) }))
        .max(100)
        .optional(),
      recorded: z.array(z.looseObject({ do: z.string() })).max(EVENTS_PER_POST),
      proposed: z.array(step).max(EVENTS_PER_POST),
    })
    .optional(),
});

const createJobRequest = z.strictObject({
  id: id.optional(),
  title: z.string().trim().min(1).max(TITLE_LENGTH).optional(),
  practice: practice.nullable().optional(),
  job: z.looseObject({}),
});

const appendRequest = z.strictObject({
  events: z.array(z.looseObject({ id, do: z.string() })).max(EVENTS_PER_POST),
});

const boardVersion = z.strictObject({
  id,
  title: z.string().trim().min(1).max(TITLE_LENGTH),
  content: z.looseObject({}).nullable(),
  outcomes: z.looseObject({}).optional(),
});

export function parseBoardVersion(input: unknown): Parsed<NewBoardVersion> {
  return checked(boardVersion, input);
}

/** More than anybody pins on both sides of one board. */
const PINS_PER_BOARD = 2000;
const side = z.enum(["top", "bottom"]);
const pixels = z.int().min(1).max(10_000);
const fraction = z.number().min(0).max(1);

const place = z.string().min(1).max(TITLE_LENGTH);
const revision = z.string().trim().min(1).max(REVISION_LENGTH).optional();
const face = z.strictObject({
  side,
  picture: id,
  width: pixels,
  height: pixels,
  turn: z.literal([0, 90, 180, 270]),
  revision,
});
const pins = z.array(z.strictObject({ place, side, x: fraction, y: fraction, revision })).max(PINS_PER_BOARD);
const way = z.strictObject({ face: face.nullable().optional(), pins });

const albumVersion = z.strictObject({
  id,
  after: id.nullable().optional(),
  album: z.strictObject({
    faces: z
      .array(face)
      .refine((faces) => new Set(faces.map((one) => one.side)).size === faces.length, "one picture a side"),
    pins,
    conflicts: z
      .array(z.strictObject({ side, place: place.nullable(), ways: z.tuple([way, way]) }))
      .max(PINS_PER_BOARD)
      .optional(),
  }),
});

export function parseAlbumVersion(input: unknown): Parsed<NewAlbumVersion> {
  return checked(albumVersion, input);
}

const lineName = z.strictObject({
  name: z.string(),
  place: z.string().nullable(),
  used: z.boolean(),
  donor: z.string().nullable(),
});
const countWas = z.int().min(0).nullable();
const typedLine = z.strictObject({
  cells: z.record(z.string(), z.string().max(1000)),
  was: lineName.nullable(),
  countWas,
});
const goneLine = z.strictObject({ was: lineName, countWas });

export function parseTypedLine(input: unknown): Parsed<TypedLine> {
  return checked(typedLine, input);
}

export function parseGoneLine(input: unknown): Parsed<GoneLine> {
  return checked(goneLine, input);
}

export function parseCreateJob(input: unknown): Parsed<CreateJobRequest> {
  return checked(createJobRequest, input);
}

export function parseAppend(input: unknown): Parsed<AppendRequest> {
  return checked(appendRequest, input);
}

/** Whether an address names something an id could name. */
export function isId(text: string): boolean {
  return ID_PATTERN.test(text);
}

function checked<T>(shape: z.ZodType, input: unknown): Parsed<T> {
  const result = shape.safeParse(input);
  // The input itself is handed on, not zod's copy: a key such as `__proto__` must still be there for the job's parser.
  if (result.success) return { ok: true, value: input as T };
  const issue = result.error.issues[0];
  const where = issue?.path
    .map((step) => (typeof step === "number" ? `[${step}]` : `.${String(step)}`))
    .join("");
  return {
    ok: false,
    problem: `${where === undefined || where === "" ? "body" : where.replace(/^\./, "")}: ${issue?.message}`,
  };
}
