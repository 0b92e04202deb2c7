import type { PartKind } from "../board/board.ts";

/**
 * Share of the opens of a part that are a cracked joint, which resoldering closes: the diagnosis believes it and the practice
 * bench behaves so. All from memory. A fuse or a switch opens by itself; what is heavy, hot or pulled at cracks its joint.
 */
const JOINT_SHARES: Readonly<Partial<Record<PartKind, number>>> = {
  fuse: 0.03,
  bridge: 0.3,
  module: 0.3,
  igbt: 0.2,
  mosfet: 0.2,
  relay: 0.5,
  transformer: 0.6,
  inductor: 0.6,
  choke: 0.6,
  ntc: 0.5,
  ptc: 0.5,
  capacitor: 0.4,
  link: 0.6,
};
const USUAL = 0.25;

/** The share for a part of this kind. */
export function jointShare(kind: PartKind | undefined): number {
  return (kind === undefined ? undefined : JOINT_SHARES[kind]) ?? USUAL;
}
