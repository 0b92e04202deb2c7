/** Going on against a gate or a proposal: one tap with its reason, which the log keeps. */
import type { BenchView, CardView, Overruled } from "../../wire/bench-view.ts";
import { happened, type KeptEvent } from "../job-event.ts";

/** The reasons heard most often at a bench (from memory). */
export const REASONS: Readonly<Record<Overruled, readonly string[]>> = {
  proof: [
    "Emptied it through my own resistor",
    "Proved it with another meter",
    "Its capacitors are off or shorted out",
    "I answer for it, for a reason of my own",
  ],
  resistor: ["It is meant to stay on for this run", "I answer for it, for a reason of my own"],
  proposal: [
    "I cannot reach that place",
    "I do not have the part or tool",
    "Already done before this job",
    "It does not look safe to me",
    "I know this board",
  ],
};

export function overrule(of: Overruled, why: string): KeptEvent {
  return happened({ do: "overrule", of, why });
}

/** What refusing the engine's proposal overrules: the gate that it serves, else the proposal alone. */
export function overruledBy({ safety, powered }: BenchView, card: CardView): Overruled {
  if (powered) return "proposal";
  const serves = card.action.do === "measure" || card.action.do === "clip";
  if (!safety.open && serves) return "proof";
  return safety.open && card.action.do === "unclip" ? "resistor" : "proposal";
}
