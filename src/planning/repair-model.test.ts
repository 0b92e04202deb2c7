import { expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { DEFAULT_TERMS } from "../money/terms.ts";
import { priorTable } from "../priors/prior-table.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { prior } from "./one-fault.fixture.ts";
import { repairModel } from "./repair-model.ts";

const parsed = parseBoard(SHIPPED.find(({ id }) => id === "small-frequency-drive")?.board);
if (!parsed.ok) throw new Error(parsed.problem);
const board = parsed.value;
const BARE = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: false };

function groupsOf(dead: readonly (readonly string[])[]) {
  const priors = [prior("M1", "up", "short")];
  const list = dead.map((names) => ({
    core: 0,
    beside: -1,
    unlisted: false,
    weight: 1 / dead.length,
    dead: names,
  }));
  const hypotheses = { priors, cores: [{ present: [], faults: [] }], list, remainder: 0 };
  return repairModel(hypotheses, board, BARE, DEFAULT_TERMS, priorTable(board, "water", "dead"), 1);
}

it("dirt between several inputs of a module is one cleaning, so that a module and any of it are one repair", () => {
  const model = groupsOf([
    ["IN_up~IN_vp", "M1"],
    ["IN_vp~IN_wp", "M1"],
  ]);
  expect(model.groups).toHaveLength(1);
  expect(model.cures).toHaveLength(2);
});

it("dirt at another part is a cleaning of its own", () => {
  expect(groupsOf([["IN_up~IN_vp"], ["CCOM~V24"]]).cures).toHaveLength(2);
});
