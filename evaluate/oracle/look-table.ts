/** What the eye finds on the oracle's parts: its own chances. Which sights go with which faults is common practice, the chances are from memory. */
import type { Finding } from "../../src/bench/event.ts";
import type { PartKind } from "../../src/board/board.ts";
import type { FaultMode } from "../../src/board/fault.ts";
import type { Cause } from "../../src/priors/cause.ts";

export interface LookRow {
  readonly kinds: readonly PartKind[];
  readonly modes: readonly FaultMode[];
  readonly finds: Readonly<Partial<Record<Finding, number>>>;
}

/** The first row that fits a fault counts. */
export const LOOKS: readonly LookRow[] = [
  { kinds: ["fuse"], modes: ["open"], finds: { burnt: 0.5 } },
  { kinds: ["varistor"], modes: ["short", "open"], finds: { cracked: 0.45, burnt: 0.25 } },
  { kinds: ["varistor"], modes: ["leaky"], finds: { burnt: 0.15 } },
  { kinds: ["capacitor"], modes: ["drift", "leaky"], finds: { bulged: 0.3, corroded: 0.04 } },
  { kinds: ["capacitor"], modes: ["short", "open"], finds: { bulged: 0.2, cracked: 0.12, burnt: 0.08 } },
  { kinds: ["resistor", "ntc", "ptc"], modes: ["open", "drift"], finds: { burnt: 0.35, cracked: 0.12 } },
  { kinds: ["igbt", "mosfet", "module"], modes: ["short", "open"], finds: { burnt: 0.2, cracked: 0.2 } },
  { kinds: ["switcher"], modes: ["short", "open"], finds: { cracked: 0.25, burnt: 0.15 } },
  {
    kinds: ["ic", "controller", "regulator", "opto", "shuntref"],
    modes: ["short", "open", "leaky"],
    finds: { burnt: 0.08, cracked: 0.05 },
  },
  {
    kinds: ["bridge", "diode", "zener", "bjt"],
    modes: ["short", "open"],
    finds: { burnt: 0.12, cracked: 0.06 },
  },
  {
    kinds: ["inductor", "choke", "transformer", "relay", "link"],
    modes: ["open", "leaky"],
    finds: { cracked: 0.25, burnt: 0.08, corroded: 0.06 },
  },
];

/** Dirt that bridges two nets of the part. */
export const DIRT_FINDS: Readonly<Partial<Record<Finding, number>>> = {
  corroded: 0.35,
  wet: 0.15,
  other: 0.15,
};

/** On a part that is whole, by cause. */
export const STRAY_FINDS: Readonly<Record<Cause, Readonly<Partial<Record<Finding, number>>>>> = {
  water: { corroded: 0.2, wet: 0.06 },
  surge: { burnt: 0.02 },
  overload: { burnt: 0.02 },
  age: { bulged: 0.02, corroded: 0.02 },
  insects: { other: 0.08, corroded: 0.02 },
  impact: { cracked: 0.04, "lifted-pad": 0.02 },
  unknown: { corroded: 0.02, burnt: 0.01 },
};
