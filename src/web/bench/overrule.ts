/** Going on against a gate or a proposal: one tap with its reason, which the log keeps. */
import { plain, said } from "../../messages/said.ts";
import type { BenchView, CardView, Overruled } from "../../wire/bench-view.ts";
import { happened, type KeptEvent } from "../job-event.ts";

/** The reasons heard most often at a bench (from memory); told where they are tapped, kept in the log as they stand. */
export const REASONS: Readonly<Record<Overruled, readonly string[]>> = {
  proof: [
    said`Emptied it through my own resistor`,
    said`Proved it with another meter`,
    said`Its capacitors are off or shorted out`,
    said`I answer for it, for a reason of my own`,
  ],
  motor: [
    said`Read before this job, it is good`,
    said`It runs on another board`,
    said`I answer for it, for a reason of my own`,
  ],
  resistor: [said`It is meant to stay on for this run`, said`I answer for it, for a reason of my own`],
  proposal: [
    said`I cannot reach that place`,
    said`I do not have the part or tool`,
    said`Already done before this job`,
    said`It does not look safe to me`,
    said`I know this board`,
  ],
};

export function overrule(of: Overruled, why: string): KeptEvent {
  return happened({ do: "overrule", of, why: plain(why) });
}

/** What refusing the engine's proposal overrules: the gate that it serves, else the proposal alone. */
export function overruledBy({ safety, powered }: BenchView, card: CardView): Overruled {
  if (powered) return "proposal";
  if (card.gate !== null) return card.gate;
  const serves = card.action.do === "measure" || card.action.do === "clip";
  if (!safety.open && serves) return "proof";
  return safety.open && card.action.do === "unclip" ? "resistor" : "proposal";
}
