import type { StockPlace } from "../bench/event.ts";
import { FrozenMap } from "../units/frozen.ts";

/** A part that lies at hand for one place of the board: in a drawer, or on a donor board. */
export interface AtHand extends Lying {
  /** what will do as well, from elsewhere in the stock: for when the few of the first are used up by other places */
  readonly next?: Lying;
}

/** Some of one type, in one place. */
interface Lying {
  /** the type's name */
  readonly with?: string;
  /** left out: what the part usually costs */
  readonly price?: number;
  readonly used?: true;
  /** where it lies, as the stock has it */
  readonly from?: StockPlace;
  /** how many lie there now; places that name the same share them. Left out: as many as are wanted */
  readonly count?: number;
}

/** The few parts that places share: what tells them from others, and how many they are; null where they are not counted. */
export function lotOf({ with: name, used, from, count }: Lying): {
  readonly key: string;
  readonly count: number;
} | null {
  if (count === undefined) return null;
  return { key: JSON.stringify([name, used === true, from?.place, from?.donor]), count };
}

/** The job's money, as the job file gives it. Prices in the job's currency, before tax. */
export interface Terms {
  readonly currency: string;
  readonly ratePerHour: number;
  readonly agreedPrice: number;
  readonly newBoardPrice: number;
  /** the diagnosis fee: what is taken for a board given up */
  readonly feeIfNotRepaired: number;
  readonly comebackCost: number;
  /** what waiting for one part costs that has to be ordered */
  readonly waitCost: number;
  /** parts at hand, by the place's reference */
  readonly atHand: ReadonlyMap<string, AtHand>;
  /** false where `agreedPrice` is the shop's usual one and the customer has agreed none yet */
  readonly agreed: boolean;
  /** share put on what a part cost where it is billed: 0.25 is a quarter more */
  readonly partsMarkUp: number;
  /** margin that a repaired board must leave above one given up: counts in the quote and in when to stop */
  readonly minimumMargin: number;
  /** what a repaired board costs on the average in coming back */
  readonly warrantyCost: number;
  /** share of the net sum that a bill adds: 0.2 is 20 % */
  readonly taxRate: number;
  /** a board given up stays with the shop: what still remains of it counts in when to stop */
  readonly boardStays: boolean;
  /** what the board fetches for its parts where it is given up and stays */
  readonly carcassValue: number;
  /** what the seller of an exchange board gives for this one */
  readonly exchangeCredit: number;
}

/** What a repaired board leaves of its price once its share of the comebacks is set aside. */
export function earnedByRepair({ agreedPrice, warrantyCost }: Terms): number {
  return agreedPrice - warrantyCost;
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
  partsMarkUp: 0,
  minimumMargin: 0,
  warrantyCost: 0,
  taxRate: 0,
  boardStays: false,
  carcassValue: 0,
  exchangeCredit: 0,
};
