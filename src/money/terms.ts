import { FrozenMap } from "../units/frozen.ts";

/** A part that lies at hand for one place of the board: in a drawer, or on a donor board. */
export interface AtHand {
  /** the type's name */
  readonly with?: string;
  /** left out: what the part usually costs */
  readonly price?: number;
  readonly used?: true;
}

/** The job's money, as the job file gives it. Prices in the job's currency. */
export interface Terms {
  readonly currency: string;
  readonly ratePerHour: number;
  readonly agreedPrice: number;
  readonly newBoardPrice: number;
  readonly feeIfNotRepaired: number;
  readonly comebackCost: number;
  /** what waiting for one part costs that has to be ordered */
  readonly waitCost: number;
  /** parts at hand, by the place's reference */
  readonly atHand: ReadonlyMap<string, AtHand>;
  /** false where `agreedPrice` is the shop's usual one and the customer has agreed none yet */
  readonly agreed: boolean;
}

/** The job file format's defaults, also the shop's usual terms until it sets its own. */
export const DEFAULT_TERMS: Terms = {
  currency: "EUR",
  ratePerHour: 30,
  agreedPrice: 140,
  newBoardPrice: 260,
  feeIfNotRepaired: 0,
  comebackCost: 30,
  waitCost: 0,
  atHand: new FrozenMap<string, AtHand>([]),
  agreed: false,
};
