/**
 * Signs of life: what somebody beside a powered board sees and hears without a meter. A status light is lit, the relay across an inrush
 * part clicks, a fan turns.
 */
import type { Board } from "../board/board.ts";
import { said } from "../messages/said.ts";
import { liveView } from "./live-view.ts";

export const SIGN_KINDS = ["light", "relay", "fan"] as const;
export type SignKind = (typeof SIGN_KINDS)[number];

/** A part that shows by itself whether it works. */
export interface Sign {
  readonly part: string;
  readonly kind: SignKind;
}

/**
 * How often a sign is noted as there, where the board as modelled gives it and where it does not. A light may blink a code or sit under
 * a cover, a click is missed in a loud shop, a fan may wait for warmth. From memory.
 */
export const SIGN_CHANCES: Readonly<Record<SignKind, { readonly given: number; readonly notGiven: number }>> =
  {
    light: { given: 0.93, notGiven: 0.02 },
    relay: { given: 0.93, notGiven: 0.03 },
    fan: { given: 0.93, notGiven: 0.01 },
  };

const SIGN_WORDS: Readonly<Record<SignKind, { readonly there: string; readonly missing: string }>> = {
  light: { there: said`lit`, missing: said`stays dark` },
  relay: { there: said`clicks`, missing: said`no click` },
  fan: { there: said`turns`, missing: said`stands still` },
};

/** What the sign did, without the name of its part. */
export function signWords(kind: SignKind, there: boolean): string {
  return there ? SIGN_WORDS[kind].there : SIGN_WORDS[kind].missing;
}

/** What the sign did, by the name of its part. */
export function signShown({ part, kind }: Sign, there: boolean): string {
  return said`${part}: ${signWords(kind, there)}`;
}

/** Is the part a fan on a rail of the board? Its role says so. */
export function isFan(part: { readonly kind: string; readonly role: string | null }): boolean {
  return part.kind === "ic" && part.role !== null && /\bfan\b/i.test(part.role);
}

/** The signs that a board can give, lights first. */
export function signsOf(board: Board): readonly Sign[] {
  const { bypasses } = liveView(board);
  const signs = [...board.parts.values()].flatMap((part): Sign[] => {
    if (part.kind === "led") return [{ part: part.ref, kind: "light" }];
    if (isFan(part)) return [{ part: part.ref, kind: "fan" }];
    return bypasses.has(part.ref) ? [{ part: part.ref, kind: "relay" }] : [];
  });
  return SIGN_KINDS.flatMap((kind) => signs.filter((sign) => sign.kind === kind));
}

/** P(noted as there, or as missing | given by the board or not). */
export function signChance(kind: SignKind, there: boolean, given: boolean): number {
  const { given: seen, notGiven } = SIGN_CHANCES[kind];
  const chance = given ? seen : notGiven;
  return there ? chance : 1 - chance;
}
