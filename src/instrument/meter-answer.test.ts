import { describe, expect, it } from "vitest";
import { plain } from "../messages/said.ts";
import type { InstrumentReading } from "./instrument-reading.ts";
import { meterAnswer } from "./meter-answer.ts";
import { parseSigrokLine } from "./sigrok/sigrok-line.ts";

const BEEP_OHMS = 40;
const REST = { state: "settled" } as const;

function shown(line: string): InstrumentReading {
  const parsed = parseSigrokLine(line);
  if (parsed === null) throw new Error(`no figure in ${line}`);
  return parsed.reading;
}

describe("what the meter shows, beside the check", () => {
  it("answers a check of its own mode", () => {
    const answer = meterAnswer(shown("P1: 471.230 mV DC DIODE"), REST, { mode: "diode" }, BEEP_OHMS);
    expect(answer).toEqual({ answers: "taken", taken: { reading: 0.47123 }, why: null });
  });

  it("in another mode gives nothing, and says how the meter is set and what it should be", () => {
    const answer = meterAnswer(shown("P1: 1.234 k\u2126 AUTO"), REST, { mode: "diode" }, BEEP_OHMS);
    expect(answer.answers).toBe("wrong mode");
    expect(plain(answer.why ?? "")).toMatch(/set to ohms\. Turn it to diode mode/);
    const volts = meterAnswer(shown("P1: 230.1 V AC"), REST, { mode: "dcv" }, BEEP_OHMS);
    expect(plain(volts.why ?? "")).toMatch(/set to AC volts\. Turn it to DC volts/);
  });

  it("held or relative is not taken", () => {
    for (const flag of ["HOLD", "REL", "MAX"]) {
      const held = meterAnswer(shown(`P1: 0.4710 V DC DIODE ${flag}`), REST, { mode: "diode" }, BEEP_OHMS);
      expect(held.answers).toBe("not yet");
      expect(held.why).toContain(flag);
    }
  });

  it("in ohms answers continuity: under the beep's limit its figure, above it silence", () => {
    const wanted = { mode: "continuity" } as const;
    const taken = (line: string) => meterAnswer(shown(line), REST, wanted, BEEP_OHMS);
    expect(taken("P1: 320.000 m\u2126")).toMatchObject({ taken: { reading: 0.32 } });
    expect(taken("P1: 55.0 \u2126")).toMatchObject({ taken: { reading: "silent" } });
    expect(taken("P1: inf \u00b5\u2126")).toMatchObject({ taken: { reading: "silent" } });
    expect(taken("P1: 1.0000")).toMatchObject({ taken: { reading: "beep" } });
  });

  it("below nought in ohms is charge that is left, and no reading", () => {
    const answer = meterAnswer(shown("P1: -12.0 \u2126"), REST, { mode: "ohms" }, BEEP_OHMS);
    expect(answer).toMatchObject({ answers: "not yet", why: expect.stringMatching(/discharge/) });
  });

  it("still climbing goes with that word and the figure at two seconds", () => {
    const climbing = { state: "climbing", atTwoSeconds: 0.31 } as const;
    expect(meterAnswer(shown("P1: 0.52 V DC DIODE"), climbing, { mode: "diode" }, BEEP_OHMS)).toMatchObject({
      taken: { reading: 0.31, settling: "climbing" },
    });
  });

  it("of next to no volts warns that leads which touch nothing read the same", () => {
    const dead = meterAnswer(shown("P1: 1.200 mV DC"), REST, { mode: "dcv" }, BEEP_OHMS);
    expect(dead).toMatchObject({ answers: "taken", why: expect.stringMatching(/both probes make contact/) });
    expect(meterAnswer(shown("P1: 325.1 V DC"), REST, { mode: "dcv" }, BEEP_OHMS)).toMatchObject({
      why: null,
    });
  });

  it("by four wires answers a check by four wires alone", () => {
    const four = shown("P1: 12.0 m\u2126 4-WIRE");
    expect(meterAnswer(four, REST, { mode: "ohms", wires: 4 }, BEEP_OHMS).answers).toBe("taken");
    expect(meterAnswer(four, REST, { mode: "ohms" }, BEEP_OHMS).answers).toBe("wrong mode");
  });
});
