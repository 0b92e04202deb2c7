/** Pins follow the names on the board: a part or net that is called otherwise keeps the spots it was pinned at. */
import type { BoardAlbum, BoardPin } from "../../wire/job-api.ts";

export interface Renaming {
  readonly of: "part" | "net";
  readonly from: string;
  readonly to: string;
}

export function renamedPlaces(album: BoardAlbum, { of, from, to }: Renaming): BoardAlbum {
  const moved = (place: string): string => {
    if (of === "net") return place === from ? to : place;
    return place.startsWith(`${from}.`) ? `${to}${place.slice(from.length)}` : place;
  };
  const pinsOf = (pins: readonly BoardPin[]) => pins.map((pin) => ({ ...pin, place: moved(pin.place) }));
  const { pins, conflicts } = album;
  return {
    ...album,
    pins: pinsOf(pins),
    ...(conflicts === undefined
      ? {}
      : {
          conflicts: conflicts.map((conflict) => ({
            ...conflict,
            place: conflict.place === null ? null : moved(conflict.place),
            ways: [
              { ...conflict.ways[0], pins: pinsOf(conflict.ways[0].pins) },
              { ...conflict.ways[1], pins: pinsOf(conflict.ways[1].pins) },
            ] as const,
          })),
        }),
  };
}
