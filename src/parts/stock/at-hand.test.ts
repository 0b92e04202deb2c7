import { describe, expect, it } from "vitest";
import { parseBoard } from "../../board/parse-board.ts";
import { smallDrive } from "../../board/small-drive.fixture.ts";
import { readCatalogueText } from "../catalogue-text.ts";
import { atHandFor } from "./at-hand.ts";

const parsed = parseBoard(smallDrive());
if (!parsed.ok) throw new Error(parsed.problem);
const board = parsed.value;

function atHand(rows: string) {
  const read = readCatalogueText(
    `name,kind,volts,amps,hotAmps,ohms,copack,count,price,used,donor\n${rows}\n`,
  );
  if (!read.ok) throw new Error(read.problem);
  expect(read.value.refused).toEqual([]);
  return atHandFor(
    board,
    read.value.lines.map(({ stock }) => stock),
  );
}

describe("what lies at hand for a board", () => {
  it("is what its rules do not bar, the best of it for each place, with its price", () => {
    const found = atHand("K40,igbt,650V,40A,30A,,yes,3,2.6,,\nK60,igbt,500V,60A,40A,,yes,3,1,,");
    expect(found.Q1).toEqual({ with: "K40", price: 2.6, from: {}, count: 3 });
    expect(found.Q2).toEqual({ with: "K40", price: 2.6, from: {}, count: 3 });
    expect(Object.keys(found).every((ref) => board.parts.get(ref)?.kind === "igbt")).toBe(true);
  });

  it("names what will do as well, for when the few of the best are used up", () => {
    const found = atHand("K40,igbt,650V,40A,30A,,yes,1,2.6,,\nK45,igbt,650V,40A,30A,,yes,5,3.1,,");
    expect(found.Q1).toEqual({
      with: "K40",
      price: 2.6,
      from: {},
      count: 1,
      next: { with: "K45", price: 3.1, from: {}, count: 5 },
    });
  });

  it("is nothing that is merely known, or counted down to none", () => {
    expect(atHand("K40,igbt,650V,40A,30A,,yes,0,2.6,,\nK50,igbt,650V,40A,30A,,yes,,2.6,,")).toEqual({});
  });

  it("is no chip of another name: what it was is known only off a board of the very name", () => {
    expect(atHand("some chip,controller,,,,,,1,,,another drive").U3).toBeUndefined();
    expect(atHand(`its chip,controller,,,,,,1,9,,${board.name}`).U3).toEqual({
      with: "its chip",
      price: 9,
      used: true,
      from: { donor: board.name },
      count: 1,
    });
  });

  it("is no part of which nothing is known that its place asks for", () => {
    expect(atHand("blank,igbt,,,,,,3,1,,").Q1).toBeUndefined();
  });
});
