/** Changes of a board's album: each takes the album as it is and gives it as it shall be. */
import type { BoardAlbum, BoardFace, BoardPin, BoardSide } from "../../wire/job-api.ts";

/** A photo of a side; what was pinned on the one before it does not lie there on this one. */
export function withFace(album: BoardAlbum, face: BoardFace): BoardAlbum {
  return {
    ...album,
    faces: [...album.faces.filter(({ side }) => side !== face.side), face],
    pins: album.pins.filter(({ side }) => side !== face.side),
  };
}

function changedFace(album: BoardAlbum, side: BoardSide, change: (face: BoardFace) => BoardFace): BoardAlbum {
  return { ...album, faces: album.faces.map((face) => (face.side === side ? change(face) : face)) };
}

/** The side shown turned a quarter further clockwise; its pins stay on their spots. */
export function turnedFace(album: BoardAlbum, side: BoardSide): BoardAlbum {
  const quarter = { 0: 90, 90: 180, 180: 270, 270: 0 } as const;
  return changedFace(album, side, (face) => ({ ...face, turn: quarter[face.turn] }));
}

/** What is printed on the board of the photo; empty: not known. Pins keep the revision that they were made on. */
export function withRevision(album: BoardAlbum, side: BoardSide, revision: string): BoardAlbum {
  return changedFace(album, side, ({ revision: _, ...face }) =>
    revision === "" ? face : { ...face, revision },
  );
}

export function withPin(album: BoardAlbum, pin: BoardPin): BoardAlbum {
  const share = (value: number) => Number(Math.min(1, Math.max(0, value)).toFixed(4));
  return { ...album, pins: [...album.pins, { ...pin, x: share(pin.x), y: share(pin.y) }] };
}

/** Takes the place's last pin off. */
export function withoutLastPin(album: BoardAlbum, place: string): BoardAlbum {
  const last = album.pins.findLastIndex((pin) => pin.place === place);
  return { ...album, pins: album.pins.filter((_, index) => index !== last) };
}
