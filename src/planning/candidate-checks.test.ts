/** In ohms a meter opens some half a volt: across a junction the way it conducts a leak of two kilo-ohms hides behind the diode (common practice). */
import { expect, it } from "vitest";
import { powerSwitches } from "../board/power-switches.ts";
import { candidateChecks } from "./candidate-checks.ts";
import { provenEmpty, scene, smallDriveBoard } from "./scene.fixture.ts";

const board = smallDriveBoard();
const { input, belief } = scene(board, provenEmpty(board));
const checks = candidateChecks(board, input.bench, input.timeline, belief).map(({ check }) => check);

it("ohms across the off-line switch are taken the way its diode blocks", () => {
  const [part] = [...board.parts.values()].filter(({ kind }) => kind === "switcher");
  const [drain, source] = ["d", "s"].map((pin) => part?.pins.get(pin));
  const own = checks.filter(
    ({ mode, red, black }) => mode === "ohms" && [red, black].every((net) => net === drain || net === source),
  );
  expect(own).toEqual([{ mode: "ohms", red: drain, black: source }]);
});

it("no ohms are proposed the way the diode of a power switch conducts", () => {
  const forward = checks.filter(({ mode, red, black }) =>
    powerSwitches(board).some(({ high, low }) => mode === "ohms" && red === low && black === high),
  );
  expect(forward).toEqual([]);
});

it("dirt that is suspected between two nets that no part joins is measured between them", () => {
  const wet = scene(board, provenEmpty(board), { cause: "water" });
  const dirt = wet.belief.suspects
    .filter(({ part, probability }) => part.includes("~") && probability >= 0.002)
    .map(({ part }) => part);
  expect(dirt.length).toBeGreaterThan(0);
  const found = candidateChecks(board, wet.input.bench, wet.input.timeline, wet.belief);
  const asked = found.map(({ check }) => (check.mode === "ohms" ? `${check.red}~${check.black}` : ""));
  expect(asked).toContain(dirt[0]);
});
