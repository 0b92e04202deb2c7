/** Changes of a board's album: each takes the album as it is and gives it as it shall be. */
import type { BoardAlbum, BoardFace, BoardPin, BoardSide } from "../../wire/job-api.ts";

/** A photo of a side; what was pinned on the one before it does not lie there on this one. */
export function withFace({ faces, pins }: BoardAlbum, face: BoardFace): BoardAlbum {
  return {
    faces: [...faces.filter(({ side }) => side !== face.side), face],
    pins: pins.filter(({ side }) => side !== face.side),
  };
}

/** The side shown turned a quarter further clockwise; its pins stay on their spots. */
export function turnedFace({ faces, pins }: BoardAlbum, side: BoardSide): BoardAlbum {
  const quarter = { 0: 90, 90: 180, 180: 270, 270: 0 } as const;
  return {
    faces: faces.map((face) => (face.side === side ? { ...face, turn: quarter[face.turn] } : face)),
    pins,
  };
}

export function withPin({ faces, pins }: BoardAlbum, pin: BoardPin): BoardAlbum {
  const share = (value: number) => Number(Math.min(1, Math.max(0, value)).toFixed(4));
  return { faces, pins: [...pins, { ...pin, x: share(pin.x), y: share(pin.y) }] };
}

/** Takes the place's last pin off. */
export function withoutLastPin({ faces, pins }: BoardAlbum, place: string): BoardAlbum {
  const last = pins.findLastIndex((pin) => pin.place === place);
  return { faces, pins: pins.filter((_, index) => index !== last) };
}
