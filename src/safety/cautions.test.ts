import { expect, test } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { cautionsFor } from "./cautions.ts";

const board = (() => {
  const parsed = parseBoard(smallDrive());
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
})();

const said = (action: Parameters<typeof cautionsFor>[0]): string => cautionsFor(action, board).join(" ");

test("every step under mains danger defers to local codes and licensed practice", () => {
  for (const action of [
    { do: "power", feed: "mains" },
    { do: "unpower" },
    { do: "clip" },
    { do: "measure", mode: "dcv" },
  ] as const)
    expect(said(action)).toContain("Local codes");
});

test("the lamp's caution says what the lamp does not do", () => {
  expect(said({ do: "power", feed: "lamp" })).toContain("not the energy stored in the bus");
  expect(said({ do: "power", feed: "mains" })).not.toContain("lamp limits");
});

test("an insulation tester is warned of where ohms are measured on a populated board", () => {
  expect(said({ do: "measure", mode: "ohms" })).toContain("No insulation tester");
});

test("a part is replaced with the warning about pads and insulation; a look needs none", () => {
  expect(said({ do: "replace", part: "Q1" })).toContain("insulation pad");
  expect(said({ do: "replace", part: "RS1" })).not.toContain("insulation pad");
  expect(said({ do: "replace", part: "RS1" })).toContain("Pads lift");
  expect(said({ do: "look" })).toBe("");
});

test("a board that is handed back counts as charged until it has been proven empty once more", () => {
  expect(said({ do: "close" })).toContain("prove every capacitor empty once more");
});
