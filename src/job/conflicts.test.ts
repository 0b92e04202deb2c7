import { describe, expect, it } from "vitest";
import { conflictsOf } from "./conflicts.ts";
import type { KeptEvent } from "./job-store.ts";

const diode = (id: string, reading: number): KeptEvent => ({
  id,
  do: "measure",
  mode: "diode",
  red: "PBUS",
  black: "NBUS",
  reading,
});
const why = (mine: KeptEvent, theirs: KeptEvent) => conflictsOf([mine], [theirs]).map((one) => one.why);

describe("two benches at one board that did not know of each other", () => {
  it("clash over one check that reads two ways, and agree where it reads the same", () => {
    expect(conflictsOf([diode("a", 0.47)], [diode("b", 0.02)])).toEqual([
      { mine: "a", theirs: "b", why: "reading" },
    ]);
    expect(why(diode("a", 0.47), diode("b", 0.47))).toEqual([]);
  });

  it("clash with two hands at one part, be it by one of its pins", () => {
    const off: KeptEvent = { id: "b", do: "remove", part: "Q1" };
    expect(why({ id: "a", do: "lift", place: "Q1.c" }, off)).toEqual(["part"]);
    expect(why({ id: "a", do: "lift", place: "Q2.c" }, off)).toEqual([]);
    expect(why({ id: "a", do: "look", part: "Q1", finding: "burnt" }, off)).toEqual([]);
  });

  it("clash where power came while a hand or a cold check was at the board", () => {
    const on: KeptEvent = { id: "b", do: "power", feed: "mains" };
    expect(why(diode("a", 0.47), on)).toEqual(["power"]);
    expect(why({ id: "a", do: "replace", part: "F1" }, on)).toEqual(["power"]);
    expect(why({ ...diode("a", 325), mode: "dcv" } as KeptEvent, on)).toEqual([]);
  });

  it("clash where one closed the job; words to each other never do", () => {
    const closed: KeptEvent = { id: "b", do: "close", verdict: "repaired" };
    expect(why(diode("a", 0.47), closed)).toEqual(["closed"]);
    expect(why({ id: "a", do: "note", text: "tea" }, closed)).toEqual([]);
  });
});
