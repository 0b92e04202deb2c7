/** Whether what the meter shows answers a check, and as which reading. */

import type { MeasureMode } from "../bench/event.ts";
import { MODE_WORDS } from "../bench/words.ts";
import { plain, said } from "../messages/said.ts";
import type { InstrumentReading, WantedReading } from "./instrument-reading.ts";
import type { Settling } from "./settling.ts";

/** What of the meter's goes into a `measure` event. */
export interface TakenReading {
  readonly reading: number | "OL" | "beep" | "silent";
  readonly settling?: "climbing";
}

export type MeterAnswer =
  /** may be taken as it stands; `why` a caution that goes with it */
  | { readonly answers: "taken"; readonly taken: TakenReading; readonly why: string | null }
  /** the right mode, and nothing to take yet */
  | { readonly answers: "not yet"; readonly why: string }
  /** the meter is set to something else */
  | { readonly answers: "wrong mode"; readonly why: string };

/** Below this a figure of volts may just as well be that of leads which touch nothing. */
const OPEN_LEADS_VOLTS = 0.5;

/** @param beepOhms - below this the job's meter beeps, above it is silent */
export function meterAnswer(
  shown: InstrumentReading,
  settling: Settling,
  wanted: WantedReading,
  beepOhms: number,
): MeterAnswer {
  const wrong = wrongMode(shown, wanted);
  if (wrong !== null) return { answers: "wrong mode", why: wrong };
  if (shown.doubt !== null)
    return { answers: "not yet", why: said`${shown.doubt}. Turn it off on the meter.` };
  const reading = inMode(shown.value, wanted.mode, beepOhms);
  if (typeof reading === "number" && reading < 0 && ["continuity", "ohms", "farads"].includes(wanted.mode))
    return {
      answers: "not yet",
      why: said`A negative figure here means that charge is left: discharge, wait, and measure again.`,
    };
  if (settling.state === "moving") return { answers: "not yet", why: said`Not at rest yet.` };
  if (settling.state === "climbing")
    return {
      answers: "taken",
      taken: { reading: inMode(settling.atTwoSeconds, wanted.mode, beepOhms), settling: "climbing" },
      why: said`Still climbing: this is the figure two seconds after touching.`,
    };
  const volts = wanted.mode === "dcv" || wanted.mode === "acv";
  const openLeads = volts && typeof reading === "number" && Math.abs(reading) < OPEN_LEADS_VOLTS;
  return {
    answers: "taken",
    taken: { reading },
    why: openLeads ? said`Free leads read this too: see that both probes make contact.` : null,
  };
}

function wrongMode(shown: InstrumentReading, { mode, wires }: WantedReading): string | null {
  const fourWires = plain(shown.setTo).includes("four wires");
  if (shown.modes.includes(mode) && (wires === 4 || !fourWires)) return null;
  return said`The meter is set to ${shown.setTo}. Turn it to ${MODE_WORDS[mode]}: nothing is taken from it until then.`;
}

/** Continuity is answered by its beep: ohms below the beep's limit beep, anything above is silent. */
function inMode(
  value: InstrumentReading["value"],
  mode: MeasureMode,
  beepOhms: number,
): InstrumentReading["value"] {
  if (mode !== "continuity" || value === "beep" || value === "silent") return value;
  return value === "OL" || value >= beepOhms ? "silent" : value;
}
