import { expect, it } from "vitest";
import { plain } from "../messages/said.ts";
import { boardVersions } from "./board-versions.ts";

const R1 = { kind: "resistor", pins: { "1": "A", "2": "B" }, value: { ohms: 100 } };
const FIRST = { name: "pump", parts: { R1 } };
const SECOND = { name: "pump", parts: { R1: { ...R1, value: { ohms: 120 } }, R2: R1 } };
const SEEN = { name: "pump", parts: { R1: { ...R1, assumed: true } } };
const at = (day: number) => `2026-03-0${day}T09:00:00.000Z`;
const KEPT = [
  { id: "a", receivedAt: at(1), content: FIRST },
  { id: "b", receivedAt: at(3), content: SECOND },
  { id: "c", receivedAt: at(5), content: FIRST },
  { id: "d", receivedAt: at(7), content: null },
];
const job = (id: string, day: number, board: object) => ({
  id,
  title: `job ${id}`,
  createdAt: at(day),
  board: board as Readonly<Record<string, unknown>>,
});

it("each job stands at the version that it was worked on, the latest alike of those that were there then", () => {
  const jobs = [
    job("early", 2, FIRST),
    job("marked", 6, SEEN),
    job("changed", 4, SECOND),
    job("foreign", 4, { ...SECOND, name: "pump", parts: {} }),
  ];
  const { versions, otherJobs } = boardVersions(KEPT, jobs);
  expect(versions.map(({ number, jobs: of }) => [number, of.map(({ id }) => id)])).toEqual([
    [4, []],
    [3, ["marked"]],
    [2, ["changed"]],
    [1, ["early"]],
  ]);
  expect(otherJobs).toEqual([{ id: "foreign", title: "job foreign" }]);
});

it("says what changed from one version to the next", () => {
  const { versions } = boardVersions(KEPT, []);
  expect(versions.map(({ changes }) => changes.map(plain))).toEqual([
    ["deleted"],
    ["parts that go: R2", 'R1: value {"ohms":120} -> {"ohms":100}'],
    ["new parts: R2", 'R1: value {"ohms":100} -> {"ohms":120}'],
    [],
  ]);
});
