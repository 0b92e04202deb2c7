import { expect, it } from "vitest";
import { foldLog } from "../bench/fold.ts";
import { faultName } from "../board/fault.ts";
import { AssessmentSession } from "../job/assess.ts";
import { foundFaults } from "../job/found-faults.ts";
import type { Job } from "../job/job.ts";
import { RECTIFIER, rectifierJob } from "../job/rectifier-job.fixture.ts";
import { plain } from "../messages/said.ts";
import { faultsAfter } from "../practice/hidden-course.ts";
import { caseJob } from "./case-bench.ts";
import { caseText, readCase, teachingCase } from "./teaching-case.ts";

const PROVEN = { do: "measure", mode: "dcv", red: "C1.plus", black: "C1.minus", reading: 0.4 };
const OPEN_FUSE = { do: "measure", mode: "continuity", red: "L", black: "LF", reading: "silent" };
const GOOD_BUS = [
  { do: "measure", mode: "diode", red: "NBUS", black: "PBUS", reading: 0.9 },
  { do: "measure", mode: "diode", red: "PBUS", black: "NBUS", reading: "OL" },
];
const FUSE = { do: "replace", part: "F1" };
const POWER = { do: "power", feed: "mains", observed: ["smoke", "fuse-blew"] };
const AFTER = [
  { do: "unpower" },
  { ...PROVEN, reading: 0.2 },
  { do: "measure", mode: "ohms", red: "PBUS", black: "NBUS", reading: 0.3 },
  { do: "lift", place: "C1.plus" },
  { do: "measure", mode: "ohms", red: "C1.plus", black: "C1.minus", reading: 0.3 },
  { do: "replace", part: "C1" },
  FUSE,
  { do: "close", verdict: "repaired" },
];
const NOTE = { do: "note", text: "the customer waited" };
const WORKED = [NOTE, PROVEN, OPEN_FUSE, ...GOOD_BUS, FUSE, POWER, ...AFTER];

it("a part that read well before power and shorted after it broke at that power-up, the open fuse came in", () => {
  const found = foundFaults(rectifierJob(WORKED));
  if (!found.ok) throw new Error(found.problem);
  const when = found.value.map(({ fault, since }) => ({ fault, since }));
  expect(when).toHaveLength(2);
  expect(when).toContainEqual({ fault: "F1:open", since: -1 });
  expect(when).toContainEqual({ fault: "C1:short", since: 6 });
});

it("in the case it breaks when power is applied as recorded, and not before, nor where the board was left otherwise", () => {
  const job = rectifierJob(WORKED);
  const header = { format: "faultwright-job/1", board: RECTIFIER, cause: "surge", symptom: "dead" };
  const made = teachingCase(job, header, "A rectifier");
  if (!made.ok) throw new Error(made.problem);
  // the note is not in the bare log: the power-up is its entry 5
  expect(made.value).toMatchObject({ faults: ["F1:open"], broke: [{ fault: "C1:short", entry: 5 }] });
  // a file holds plain English
  expect(readCase(JSON.parse(caseText(made.value)))).toEqual(JSON.parse(plain(JSON.stringify(made))));

  const present = (log: readonly object[]) => {
    const apprentice = rectifierJob(log);
    const practice = caseJob(apprentice, new AssessmentSession().priors(apprentice), 1, made.value);
    if (!practice.ok) throw new Error(practice.problem);
    return faultsAfter(practice.value, timelineOf(apprentice)).map(({ fault }) => faultName(fault));
  };
  expect(present([PROVEN])).toEqual(["F1:open"]);
  expect(present([PROVEN, FUSE])).toEqual([]);
  expect(present([PROVEN, FUSE, POWER])).toContain("C1:short");
  // through a lamp the recorded board was never powered: whatever breaks then is not what was recorded
  expect(present([PROVEN, FUSE, { do: "power", feed: "lamp", watts: 60, observed: "quiet" }])).toEqual([]);
});

function timelineOf({ board, absent, log }: Job) {
  const folded = foldLog(board, absent, log);
  if (!folded.ok) throw new Error(folded.problem);
  return folded.value;
}
