/** When power has told nothing and nothing is left to measure: how improbable a part may be and still be changed. */
import { expect, test } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import type { Belief } from "../diagnosis/belief.ts";
import type { Predictor } from "../meter/prediction.ts";
import { propose } from "./propose.ts";
import { provenEmpty, scene, smallDriveBoard } from "./scene.fixture.ts";

const BOARD = smallDriveBoard();
const SUSPECTS = ["RG1", "RG2", "RG3", "RG4", "RG5", "RG6", "RP1", "RP2", "RP3", "RP4"];
/** Looked at, resoldered, and powered to no end with the lamp and without. */
const SPENT: readonly JobEvent[] = [
  ...provenEmpty(BOARD),
  ...SUSPECTS.flatMap((part): JobEvent[] => [
    { do: "look", part, finding: "clean" },
    { do: "resolder", part },
  ]),
  { do: "power", feed: "lamp", watts: 100, observed: "lamp-dark" },
  { do: "unpower" },
  ...provenEmpty(BOARD),
  { do: "power", feed: "mains", observed: "quiet" },
  { do: "unpower" },
  ...provenEmpty(BOARD),
];
const NO_READING = { solved: false, why: "nothing can be measured here" } as const;

/** What is proposed where each of ten resistors is open with this probability, and no check tells anything. */
function proposed(each: number) {
  const { input, belief, priors, predictor } = scene(BOARD, SPENT);
  const { predictorFor: _, ...withoutPlugs } = input;
  const mute: Predictor = {
    ...predictor,
    predict: () => NO_READING,
    withEach: (_check, _faults, candidates) => candidates.map(() => NO_READING),
  };
  const flat: Belief = {
    ...belief,
    explanations: SUSPECTS.map((part) => {
      const fault = priors.faults.findIndex(({ reportAs }) => reportAs === `${part}:open`);
      return {
        faults: [{ fault, since: -1 }],
        presentNow: [fault],
        probability: each,
        silent: new Float64Array(priors.faults.length),
        nothingBeside: 1,
        readingLogLikelihood: new Map(),
      };
    }),
    unexplained: [],
  };
  return propose(withoutPlugs, flat, priors, mute).action;
}

test("a part that is one in twenty is still tried, freed or changed; one in forty is left for the sake of the hour", () => {
  expect(["lift", "replace"]).toContain(proposed(0.05).do);
  expect(proposed(0.025)).toMatchObject({ do: "close" });
});
