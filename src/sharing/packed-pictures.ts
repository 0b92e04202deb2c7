/** Pictures of a board inside the file that gives it away, with the places pinned on them: put in only where somebody chose to. */
import { type BoardFace, type BoardPin, type BoardSide, REVISION_LENGTH } from "../job/board-album.ts";
import type { PictureType } from "../job/job-store.ts";
import { said, saidCount } from "../messages/said.ts";
import { Fields, type Problems } from "../units/fields.ts";

/** A side's picture, its bytes in base64. */
export interface PackedFace extends Omit<BoardFace, "picture"> {
  readonly type: PictureType;
  readonly data: string;
}

export interface PackedPictures {
  readonly faces: readonly PackedFace[];
  readonly pins: readonly BoardPin[];
}

const SIDES: readonly BoardSide[] = ["top", "bottom"];
const TYPES: readonly PictureType[] = ["image/jpeg", "image/png"];
const TURNS = [0, 90, 180, 270] as const;
/** As much as a server takes, in base64. */
const MOST_LETTERS = (5_000_000 * 4) / 3;
const MOST_PIXELS = 10_000;

/** `places`: nets and pins of the board in the same file, the only ones that a pin may name. */
export function readPictures(
  fields: Fields,
  places: ReadonlySet<string>,
  problems: Problems,
): PackedPictures {
  fields.only(["faces", "pins"], said`pictures`);
  fields.require("faces", "pins");
  const below = (list: string) =>
    fields.list(list).map((input, index) => new Fields(problems, `${fields.path}.${list}[${index}]`, input));
  const faces = below("faces").map(readFace);
  if (new Set(faces.map(({ side }) => side)).size < faces.length)
    fields.complain("faces", said`at most one picture a side`);
  return { faces, pins: below("pins").map((pin) => readPin(pin, places)) };
}

function readFace(face: Fields): PackedFace {
  face.only(["side", "width", "height", "turn", "type", "data", "revision"], said`a picture`);
  face.require("side", "width", "height", "turn", "type", "data");
  const turn = TURNS.find((known) => known === face.raw("turn"));
  if (turn === undefined) face.complain("turn", said`expected 0, 90, 180 or 270 degrees`);
  const data = face.text("data") ?? "";
  if (data.length > MOST_LETTERS || !/^[A-Za-z0-9+/]+={0,2}$/.test(data))
    face.complain("data", said`expected a picture of at most 5 MB in base64`);
  const pixels = (key: string) => face.number(key, { least: 1, most: MOST_PIXELS }) ?? 1;
  return {
    side: face.word("side", SIDES) ?? "top",
    width: pixels("width"),
    height: pixels("height"),
    turn: turn ?? 0,
    type: face.word("type", TYPES) ?? "image/jpeg",
    data,
    ...readRevision(face),
  };
}

function readPin(pin: Fields, places: ReadonlySet<string>): BoardPin {
  pin.only(["place", "side", "x", "y", "revision"], said`a pinned place`);
  pin.require("place", "side", "x", "y");
  const place = pin.text("place") ?? "";
  if (!places.has(place)) pin.complain("place", said`this board has no such net or pin`);
  const share = (key: string) => pin.number(key, { least: 0, most: 1 }) ?? 0;
  return {
    place,
    side: pin.word("side", SIDES) ?? "top",
    x: share("x"),
    y: share("y"),
    ...readRevision(pin),
  };
}

function readRevision(fields: Fields): { readonly revision?: string } {
  if (!fields.has("revision")) return {};
  const revision = fields.text("revision") ?? "";
  if (revision.trim() === "" || revision.length > REVISION_LENGTH)
    fields.complain("revision", said`expected 1 to ${REVISION_LENGTH} letters`);
  return { revision };
}

/** One line for the preview of a file. */
export function picturesInWords({ faces, pins }: PackedPictures): string {
  return saidCount(
    faces.length,
    "with a picture of the board, {1} places pinned",
    "with {0} pictures of the board, {1} places pinned",
    pins.length,
  );
}
