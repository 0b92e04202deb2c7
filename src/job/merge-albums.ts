/**
 * Two albums of a board that were both made from a third, as one: by place, so that two who pin at once lose nothing. What only one of them
 * changed is as that one left it; where both changed the same thing, and differently, both are kept and a person says which holds.
 */
import {
  type AlbumConflict,
  type AlbumWay,
  type BoardAlbum,
  type BoardFace,
  type BoardPin,
  type BoardSide,
  EMPTY_ALBUM,
} from "./board-album.ts";
import { canonicalJson } from "./same-content.ts";

/** Two taps nearer together than this are the same pad: fractions of the picture, some millimetres of a board a hand wide. */
const SAME_PAD = 0.015;

/**
 * @param base - what both were made from; null where that is not known or there was nothing
 * @param first - as the bench computer has it
 * @param later - as it comes now
 */
export function mergeAlbums(base: BoardAlbum | null, first: BoardAlbum, later: BoardAlbum): BoardAlbum {
  const before = base ?? EMPTY_ALBUM;
  const sides = (["top", "bottom"] as const).map((side) => mergedSide(side, before, first, later));
  const open = openConflicts(before, first, later);
  const conflicts = [
    ...open,
    ...sides.flatMap((side) => side.conflicts).filter((one) => !open.some((other) => same(one, other))),
  ];
  return {
    faces: sides.flatMap(({ face }) => (face === null ? [] : [face])),
    pins: sides.flatMap(({ pins }) => pins),
    ...(conflicts.length === 0 ? {} : { conflicts }),
  };
}

interface Side {
  readonly face: BoardFace | null;
  readonly pins: readonly BoardPin[];
}

interface MergedSide extends Side {
  readonly conflicts: readonly AlbumConflict[];
}

const same = (a: unknown, b: unknown): boolean => canonicalJson(a) === canonicalJson(b);
const sideOf = ({ faces, pins }: BoardAlbum, side: BoardSide): Side => ({
  face: faces.find((face) => face.side === side) ?? null,
  pins: pins.filter((pin) => pin.side === side),
});

function mergedSide(side: BoardSide, ...albums: readonly [BoardAlbum, BoardAlbum, BoardAlbum]): MergedSide {
  const [before, first, later] = albums.map((album) => sideOf(album, side)) as [Side, Side, Side];
  const photos = [before, first, later].map(({ face }) => face?.picture ?? null);
  if (photos[1] === photos[2]) {
    // Without the photo that both pinned on nothing of what stood before lies there.
    const pinsBefore = photos[0] === photos[1] ? before.pins : [];
    const merged = mergedPins(side, pinsBefore, first.pins, later.pins);
    return { face: mergedFace(before.face, first.face, later.face), ...merged };
  }
  if (photos[1] === photos[0] && same(first.pins, before.pins)) return { ...later, conflicts: [] };
  if (photos[2] === photos[0] && same(later.pins, before.pins)) return { ...first, conflicts: [] };
  return { ...first, conflicts: [{ side, place: null, ways: [first, later] }] };
}

/** One photo, turned or marked by one or the other: the later word counts for each by itself. */
function mergedFace(
  before: BoardFace | null,
  first: BoardFace | null,
  later: BoardFace | null,
): BoardFace | null {
  if (first === null || later === null) return first;
  const turn = later.turn === before?.turn ? first.turn : later.turn;
  const revision = later.revision === before?.revision ? first.revision : later.revision;
  const { revision: _, ...face } = { ...first, turn };
  return revision === undefined ? face : { ...face, revision };
}

function mergedPins(
  side: BoardSide,
  before: readonly BoardPin[],
  first: readonly BoardPin[],
  later: readonly BoardPin[],
): Pick<MergedSide, "pins" | "conflicts"> {
  const places = [...new Set([...first, ...later].map(({ place }) => place))];
  const conflicts: AlbumConflict[] = [];
  const pins = places.flatMap((place) => {
    const at = (all: readonly BoardPin[]) => all.filter((pin) => pin.place === place);
    const [was, one, other] = [at(before), at(first), at(later)];
    if (same(other, was)) return one;
    if (same(one, was)) return other;
    if (alike(one, other)) return one;
    conflicts.push({ side, place, ways: [{ pins: one }, { pins: other }] });
    return bothOf(one, other);
  });
  return { pins, conflicts };
}

const samePad = (a: BoardPin, b: BoardPin): boolean => Math.hypot(a.x - b.x, a.y - b.y) < SAME_PAD;

/** The same pads, tapped by two hands. */
function alike(one: readonly BoardPin[], other: readonly BoardPin[]): boolean {
  return one.length === other.length && one.every((pin) => other.some((its) => samePad(pin, its)));
}

function bothOf(one: readonly BoardPin[], other: readonly BoardPin[]): readonly BoardPin[] {
  return [...one, ...other.filter((pin) => !one.some((its) => samePad(pin, its)))];
}

/** Open ones of either; one that stood before and that either has settled is settled. */
function openConflicts(before: BoardAlbum, first: BoardAlbum, later: BoardAlbum): readonly AlbumConflict[] {
  const [stood, one, other] = [before, first, later].map(({ conflicts = [] }) => conflicts) as [
    readonly AlbumConflict[],
    readonly AlbumConflict[],
    readonly AlbumConflict[],
  ];
  const among = (all: readonly AlbumConflict[], wanted: AlbumConflict) =>
    all.some((its) => same(its, wanted));
  return [...one, ...other.filter((its) => !among(one, its))].filter(
    (its) => !among(stood, its) || (among(one, its) && among(other, its)),
  );
}

/** The album once somebody has said of a conflict what holds: the first way, the second, or of a place both. */
export function settledAlbum(album: BoardAlbum, conflict: AlbumConflict, holds: 0 | 1 | "both"): BoardAlbum {
  const { conflicts = [], ...rest } = album;
  const left = conflicts.filter((one) => !same(one, conflict));
  const open = left.length === 0 ? {} : { conflicts: left };
  if (holds === "both") return { ...rest, ...open };
  const { face, pins } = conflict.ways[holds] satisfies AlbumWay;
  const { side, place } = conflict;
  const others = rest.pins.filter((pin) => pin.side !== side || (place !== null && pin.place !== place));
  if (place !== null) return { faces: rest.faces, pins: [...others, ...pins], ...open };
  // Pins made since on the photo that stays go on lying there.
  const stays = rest.faces.find((one) => one.side === side)?.picture === face?.picture;
  if (stays) return { ...rest, ...open };
  const faces = rest.faces.filter((one) => one.side !== side);
  return {
    faces: face === undefined || face === null ? faces : [...faces, face],
    pins: [...others, ...pins],
    ...open,
  };
}
