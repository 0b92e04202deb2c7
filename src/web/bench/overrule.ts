/** Going on against a gate or a proposal: one tap with its reason, which the log keeps. */
import { plain } from "../../messages/said.ts";
import type { BenchView, CardView, Overruled } from "../../wire/bench-view.ts";
import { happened, type KeptEvent } from "../job-event.ts";

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
