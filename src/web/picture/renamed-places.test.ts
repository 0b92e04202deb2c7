import { expect, test } from "vitest";
import { renamedPlaces } from "./renamed-places.ts";

const pin = (place: string) => ({ place, side: "top" as const, x: 0.5, y: 0.25 });

test("pins of a renamed part stay where they were, those of one whose name only begins alike are left alone", () => {
  const album = { faces: [], pins: [pin("F1.1"), pin("F10.1"), pin("F1")] };
  expect(renamedPlaces(album, { of: "part", from: "F1", to: "FU1" }).pins.map(({ place }) => place)).toEqual([
    "FU1.1",
    "F10.1",
    "F1",
  ]);
  expect(renamedPlaces(album, { of: "net", from: "F1", to: "L" }).pins.map(({ place }) => place)).toEqual([
    "F1.1",
    "F10.1",
    "L",
  ]);
});

test("what waits for somebody to say which holds is renamed with the rest, and a name taken back is as it was", () => {
  const album = {
    faces: [],
    pins: [pin("VCC")],
    conflicts: [
      { side: "top" as const, place: "Q1.c", ways: [{ pins: [pin("Q1.c")] }, { pins: [] }] as const },
    ],
  };
  const there = renamedPlaces(album, { of: "part", from: "Q1", to: "T7" });
  expect(there.conflicts).toEqual([
    { side: "top", place: "T7.c", ways: [{ pins: [pin("T7.c")] }, { pins: [] }] },
  ]);
  expect(renamedPlaces(there, { of: "part", from: "T7", to: "Q1" })).toEqual(album);
});
