import { expect, it } from "vitest";
import { faultName } from "../board/fault.ts";
import { parseBoard } from "../board/parse-board.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { arrived } from "./arrival-knock-ons.ts";
import { knockOnsOf } from "./knock-ons.ts";
import { boardEffect } from "./power-effects.ts";
import { priorRows } from "./prior-rows.ts";
import { comesInAs } from "./symptom-effects.ts";
import { NOTHING_TOLD } from "./told.ts";

const parsed = parseBoard(SHIPPED.find(({ id }) => id === "greenhouse-fan-drive")?.board);
if (!parsed.ok) throw new Error(parsed.problem);
const board = parsed.value;

function told(symptom: "dead" | "no-output" | "starts-then-stops" | "trips-supply") {
  const rows = priorRows(board, "unknown", symptom, NOTHING_TOLD);
  const physical = knockOnsOf(board, rows);
  const row = (name: string) => rows.findIndex(({ fault }) => faultName(fault) === name);
  return { rows, physical, row, ...arrived(board, symptom, rows, physical) };
}

it("a drive that is alive has no shorted switch that took its partner or its fuse with it, and so hardly a shorted switch", () => {
  const { left, row, knockOns, rows } = told("no-output");
  const shorted = row("Q1.ce:short");
  expect(left[shorted]).toBeLessThan(0.4);
  const on = (site: string) => {
    const own = knockOns.filter(({ parent, child }) => parent === shorted && rows[child].site === site);
    const sum = (key: "rate" | "arrivalRate") => own.reduce((all, knock) => all + knock[key], 0);
    return { rate: sum("rate"), arrivalRate: sum("arrivalRate") };
  };
  for (const hides of ["Q2.ce", "F1"])
    expect(on(hides).arrivalRate, hides).toBeLessThan(0.5 * on(hides).rate);
  // a gate resistor that went with it is not seen from outside
  const gate = on("R10");
  expect(gate.rate).toBeGreaterThan(0);
  expect(gate.arrivalRate).toBeCloseTo(gate.rate, 12);
});

it("a dead board may have lost all of them", () => {
  const { left, row, knockOns } = told("dead");
  expect(left[row("Q1.ce:short")]).toBe(1);
  const own = knockOns.filter(({ parent }) => parent === row("Q1.ce:short"));
  expect(own.length).toBeGreaterThan(3);
  for (const knock of own) expect(knock.arrivalRate).toBeCloseTo(knock.rate, 12);
});

it("what is left of a fault, and what went with it, are what counting out all its courses gives", () => {
  const { rows, physical, left, knockOns } = told("starts-then-stops");
  let compared = 0;
  for (let parent = 0; parent < rows.length; parent++) {
    const own = physical.filter((knock) => knock.parent === parent);
    const sites = [...new Set(own.map(({ child }) => rows[child].site))];
    if (sites.length < 2 || sites.length > 10) continue;
    const alone = comesInAs(boardEffect(board, [rows[parent].fault]), "starts-then-stops");
    const likely = (child: number) => {
      const pair = boardEffect(board, [rows[parent].fault, rows[child].fault]);
      return Math.min(1, comesInAs(pair, "starts-then-stops") / alone);
    };
    // each junction ends whole or in one of its modes
    const ends = sites.map((site) => {
      const modes = own.filter(({ child }) => rows[child].site === site);
      const rate = modes.reduce((sum, knock) => sum + knock.rate, 0);
      const fails = modes.map(({ child, rate: r }) => ({
        child,
        chance: ((1 - Math.exp(-rate)) * r) / rate,
        words: likely(child),
      }));
      return [{ child: -1, chance: Math.exp(-rate), words: 1 }, ...fails];
    });
    let courses = [{ weight: 1, children: [] as number[] }];
    for (const end of ends)
      courses = courses.flatMap((course) =>
        end.map(({ child, chance, words }) => ({
          weight: course.weight * chance * words,
          children: [...course.children, child],
        })),
      );
    const all = courses.reduce((sum, { weight }) => sum + weight, 0);
    expect(left[parent]).toBeCloseTo(all, 9);
    for (const site of sites) {
      const failed = courses
        .filter(({ children }) => children.some((child) => child >= 0 && rows[child].site === site))
        .reduce((sum, { weight }) => sum + weight, 0);
      const given = knockOns
        .filter((knock) => knock.parent === parent && rows[knock.child].site === site)
        .reduce((sum, knock) => sum + knock.arrivalRate, 0);
      expect(1 - Math.exp(-given)).toBeCloseTo(failed / all, 9);
    }
    compared++;
  }
  expect(compared).toBeGreaterThan(20);
});

it("a board that trips the supply has hardly a fuse blown, whatever shorted: an open one trips nothing", () => {
  const { knockOns, rows } = told("trips-supply");
  const bridge = rows.findIndex(({ part, fault }) => part.startsWith("BR") && fault.mode === "short");
  const own = knockOns.filter(({ parent, child }) => parent === bridge && rows[child].site === "F1");
  const sum = (key: "rate" | "arrivalRate") => own.reduce((all, knock) => all + knock[key], 0);
  const [before, after] = [1 - Math.exp(-sum("rate")), 1 - Math.exp(-sum("arrivalRate"))];
  expect(before).toBeGreaterThan(0.3);
  // P(blown | trips) = P(trips | blown) P(blown) / P(trips): 0.03 of boards with an open line and 0.4 of those with a shorted bus do, three in a hundred customers say anything
  const [blown, whole] = [0.06 * before, 0.43 * (1 - before)];
  expect(after).toBeCloseTo(blown / (blown + whole), 2);
});
