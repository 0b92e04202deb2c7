import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { BoardAlbum, BoardFace, BoardPin } from "./board-album.ts";
import { mergeAlbums, settledAlbum } from "./merge-albums.ts";

const FACE: BoardFace = { side: "top", picture: "p1", width: 40, height: 30, turn: 0 };
const pin = (place: string, x: number, y = 0.5): BoardPin => ({ place, side: "top", x, y });
const album = (...pins: readonly BoardPin[]): BoardAlbum => ({ faces: [FACE], pins });
const BASE = album(pin("GND", 0.1));

describe("two who pin at once, neither knowing of the other", () => {
  it("both have pinned what either has pinned, and taken off what either has taken off", () => {
    const first = album(pin("GND", 0.1), pin("V15", 0.3));
    const later = album(pin("Q1.c", 0.7));
    expect(mergeAlbums(BASE, first, later)).toEqual(album(pin("V15", 0.3), pin("Q1.c", 0.7)));
  });

  it("pinned the same pad where their taps lie within a pad of each other", () => {
    const merged = mergeAlbums(BASE, album(pin("V15", 0.3)), album(pin("V15", 0.305)));
    expect(merged).toEqual(album(pin("V15", 0.3)));
  });

  it("pinned one place in two spots: both are kept, and somebody is asked", () => {
    const merged = mergeAlbums(
      BASE,
      album(pin("GND", 0.1), pin("V15", 0.3)),
      album(pin("GND", 0.1), pin("V15", 0.6)),
    );
    expect(merged.pins).toEqual([pin("GND", 0.1), pin("V15", 0.3), pin("V15", 0.6)]);
    const conflict = {
      side: "top" as const,
      place: "V15",
      ways: [{ pins: [pin("V15", 0.3)] }, { pins: [pin("V15", 0.6)] }] as const,
    };
    expect(merged.conflicts).toEqual([conflict]);
    expect(settledAlbum(merged, conflict, 1)).toEqual(album(pin("GND", 0.1), pin("V15", 0.6)));
    expect(settledAlbum(merged, conflict, "both")).toEqual(album(...merged.pins));
  });

  it("moved a pin that the other took off: it is shown, not decided", () => {
    const merged = mergeAlbums(BASE, album(), album(pin("GND", 0.8)));
    expect(merged.conflicts).toEqual([
      { side: "top", place: "GND", ways: [{ pins: [] }, { pins: [pin("GND", 0.8)] }] },
    ]);
  });

  it("are asked no more once one of them has said which holds", () => {
    const both = mergeAlbums(BASE, album(pin("V15", 0.3)), album(pin("V15", 0.6)));
    const [conflict] = both.conflicts ?? [];
    if (conflict === undefined) throw new Error("no conflict");
    const settled = settledAlbum(both, conflict, 0);
    const pinnedMeanwhile = { ...both, pins: [...both.pins, pin("Q1.c", 0.9)] };
    const merged = mergeAlbums(both, settled, pinnedMeanwhile);
    expect(merged).toEqual(album(pin("V15", 0.3), pin("Q1.c", 0.9)));
  });

  it("turned the photo and wrote its revision: it is both", () => {
    const first = { ...BASE, faces: [{ ...FACE, turn: 90 as const }] };
    const later = { ...BASE, faces: [{ ...FACE, revision: "rev C" }] };
    expect(mergeAlbums(BASE, first, later).faces).toEqual([{ ...FACE, turn: 90, revision: "rev C" }]);
  });
});

describe("another photo of a side", () => {
  const other: BoardFace = { ...FACE, picture: "p2" };
  const retaken: BoardAlbum = { faces: [other], pins: [pin("V15", 0.2)] };

  it("holds where nobody had pinned on the old one meanwhile", () => {
    expect(mergeAlbums(BASE, BASE, retaken)).toEqual(retaken);
    expect(mergeAlbums(BASE, retaken, BASE)).toEqual(retaken);
  });

  it("and pins on the old one meanwhile: both are kept, and one is chosen with its pins", () => {
    const first = album(pin("GND", 0.1), pin("Q1.c", 0.7));
    const merged = mergeAlbums(BASE, first, retaken);
    expect(merged).toMatchObject({ faces: [FACE], pins: first.pins });
    const [conflict] = merged.conflicts ?? [];
    if (conflict === undefined) throw new Error("no conflict");
    expect(settledAlbum(merged, conflict, 1)).toEqual(retaken);
    expect(settledAlbum(merged, conflict, 0)).toEqual(first);
  });

  it("leaves the other side as it was", () => {
    const solder: BoardFace = { ...FACE, side: "bottom", picture: "p3" };
    const first = { faces: [FACE, solder], pins: BASE.pins };
    expect(mergeAlbums(BASE, first, retaken)).toEqual({ faces: [other, solder], pins: retaken.pins });
  });
});

it("whatever two do to an album, no spot that either left is lost", () => {
  const places = fc.constantFrom("GND", "V15", "Q1.c");
  const spot = fc.record({ place: places, at: fc.integer({ min: 0, max: 9 }) });
  const pins = fc
    .uniqueArray(spot, { maxLength: 6, selector: ({ place, at }) => `${place} ${at}` })
    .map((spots) => spots.map(({ place, at }) => pin(place, at / 10)));
  fc.assert(
    fc.property(pins, pins, pins, (before, one, other) => {
      const merged = mergeAlbums(album(...before), album(...one), album(...other));
      const has = (all: readonly BoardPin[], { place, x }: BoardPin) =>
        all.some((its) => its.place === place && its.x === x);
      for (const its of [...one, ...other])
        if (!has(before, its) || (has(one, its) && has(other, its)))
          expect(has(merged.pins, its), `${its.place} ${its.x}`).toBe(true);
    }),
    { seed: 20261127, numRuns: 400 },
  );
});
