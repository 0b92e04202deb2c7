import { describe, expect, it } from "vitest";
import { figuresOf, gapOf, isBroken, isWrong } from "./jobs-figures.ts";
import { jobsText } from "./jobs-text.ts";
import { trialOf } from "./trials.fixture.ts";

const GIVEN_UP = { verdict: "not-economic", income: 0, partsMoney: 0 } as const;

describe("figures of whole jobs", () => {
  it("the way to the all-knowing player is a ratio of mean profits", () => {
    // all-knowing 120 and 120, walk with inference 20 and 60, engine 100 and 80: (90 - 40) / (120 - 40)
    const best = { minutes: 20 };
    const one = trialOf(1, {
      "all-knowing": best,
      engine: { minutes: 60 },
      "walk with inference": { minutes: 220 },
    });
    const two = trialOf(2, {
      "all-knowing": best,
      engine: { minutes: 100 },
      "walk with inference": { minutes: 140 },
    });
    expect(one.outcomes.engine.profit).toBe(100);
    expect(figuresOf([one, two]).wayToAllKnowing.value).toBeCloseTo(50 / 80, 9);
  });

  it("on boards not worth repairing minutes and parts are held against the plain walk, on no other", () => {
    const lost = trialOf(1, {
      "all-knowing": { ...GIVEN_UP, minutes: 0 },
      engine: { ...GIVEN_UP, minutes: 15 },
      walk: { ...GIVEN_UP, minutes: 60, partsMoney: 40 },
    });
    const repaired = trialOf(2, { engine: { minutes: 500 } });
    const { unrepairable } = figuresOf([lost, repaired]);
    expect(unrepairable.boards).toBe(1);
    expect(unrepairable.minutes.value).toBeCloseTo(0.25, 9);
    expect(unrepairable.parts.value).toBe(0);
  });

  it("a weak board handed back is a wrong verdict, and not counted among the dead ones", () => {
    const weak = trialOf(1, { engine: { falselyRepaired: true, state: "weak", income: -30 } });
    const [engine] = figuresOf([weak, trialOf(2, {})]).players;
    expect(isWrong(weak, "engine")).toBe(true);
    expect(engine?.falseWeak.value).toBe(0.5);
    expect(engine?.falseDead.value).toBe(0);
    expect(gapOf(weak).falselyClosed).toBe(170);
  });

  it("giving up what nobody would repair is right; giving up what pays is wrong", () => {
    const both = trialOf(1, { engine: GIVEN_UP, "all-knowing": GIVEN_UP });
    const alone = trialOf(2, { engine: GIVEN_UP });
    expect(isWrong(both, "engine")).toBe(false);
    expect(isWrong(alone, "engine")).toBe(true);
  });

  it("the pieces of the gap add up", () => {
    const gap = gapOf(trialOf(1, { engine: { ...GIVEN_UP, minutes: 90 }, "all-knowing": { minutes: 12 } }));
    expect(gap.givenUp + gap.falselyClosed + gap.minutes + gap.parts).toBeCloseTo(gap.total, 9);
  });

  it("good parts replaced are counted apart where the board is not as its file says", () => {
    const good = { engine: { goodReplaced: ["R1", "R2"] } };
    const [engine] = figuresOf([trialOf(1, {}), trialOf(2, good, { differences: ["R3 missing"] })]).players;
    expect(engine?.goodReplacedAsFile.value).toBe(0);
    expect(engine?.goodReplacedOther.value).toBe(2);
  });

  it("a broken trial is named with its reason and not counted", () => {
    const broken = trialOf(7, { engine: { verdict: "broken", unanswered: ["no operating point"] } });
    expect(isBroken(broken)).toBe(true);
    const words = jobsText([trialOf(1, {}), broken]);
    expect(words).toMatch(/^1 boards/m);
    expect(words).toContain("broken, not counted: greenhouse-fan-drive 7: engine: no operating point");
  });

  it("readings of our own solver are never taken for the oracle's", () => {
    expect(jobsText([trialOf(1, {}, { readings: "own solver" })])).toContain("OUR OWN SOLVER");
    expect(jobsText([trialOf(1, {})])).not.toContain("OUR OWN SOLVER");
  });
});
